using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>The nodes and bays of a stretch of the beam, with the stiffness of each.</summary>
internal sealed class ThreeMomentGroup
{
    private readonly Lazy<HandNumber> _comparison;

    private ThreeMomentGroup(HandBeam beam, double from, double to, ImmutableArray<int> supports)
    {
        Beam = beam;
        From = from;
        To = to;
        ImmutableArray<double> numbered = HandPlaces.Of(beam.Model);
        Nodes =
        [
            .. ThreeMomentPlaces.Nodes(beam.Model, supports)
                .Select(x => Node(numbered.IndexOf(x), x, supports.FirstOrDefault(IsAt(x), -1))),
        ];
        HashSet<(HandLoadTerm, bool)> rules = [];
        Bays = [.. Nodes.Zip(Nodes.Skip(1), (left, right) => new ThreeMomentBay(beam.Writer, rules, left, right))];
        _comparison = new(() => Rigidity(Bays[0]));
        foreach (ThreeMomentBay bay in Bays)
        {
            SetStiffness(bay);
        }
    }

    internal HandBeam Beam { get; }

    internal HandWriter Writer => Beam.Writer;

    internal double From { get; }

    internal double To { get; }

    internal ImmutableArray<ThreeMomentNode> Nodes { get; }

    internal ImmutableArray<ThreeMomentBay> Bays { get; }

    /// <summary>The rigidity of comparison: that of the first bay.</summary>
    internal HandNumber Comparison => _comparison.Value;

    internal static ThreeMomentGroup Of(HandBeam beam, double from, double to) => new(
        beam,
        from,
        to,
        ThreeMomentPlaces.HoldingSupports(beam.Model, beam.Touching, from, to, i => beam.Vertical[i] is not null));

    /// <summary>The length that stands for a spring in turning, or for shear: 6 EI over something.</summary>
    internal HandFormula SixTimesOver(HandFormula divisor) => (HandFormula)6 * Comparison / divisor;

    private Func<int, bool> IsAt(double x) => i => i >= 0 && Beam.Model.Supports[i].Position == x;

    private ThreeMomentNode Node(int index, double x, int support)
    {
        HandNumber place = Beam.Writer.Place(x);
        int hinge = Beam.Model.Hinges.IndexOf(x);
        bool isInside = x > From && x < To;
        if (support < 0)
        {
            return new ThreeMomentNode(index, place) { Hinge = hinge >= 0 ? hinge : null };
        }

        Support held = Beam.Model.Supports[support];
        HandNumber turn = HandNumber.Given(held.ImposedRotation, HandUnit.Ratio, new(HandRole.ImposedTurn, support));
        HandNumber settled = HandNumber.Given(held.Settlement, HandUnit.OfLength, new(HandRole.Settlement, support));
        return new ThreeMomentNode(index, place)
        {
            Support = support,
            Hinge = hinge >= 0 && isInside ? hinge : null,
            IsHeldAcross = held.Across is not Restraint.None && Beam.Vertical[support] is null,
            IsClamped = held.Rotation is Restraint.Rigid,
            ImposedTurn = held.Rotation is Restraint.Rigid && held.ImposedRotation != 0 ? turn : null,
            TurnStiffness = held.Rotation is Restraint.Spring turning
                ? HandNumber.Given(turning.Stiffness, HandUnit.OfMoment, new(HandRole.TurnStiffness, support))
                : null,
            Stiffness = held.Across is Restraint.Spring across
                ? HandNumber.Given(across.Stiffness, HandUnit.OfIntensity, new(HandRole.Stiffness, support))
                : null,
            Settlement = held.Settlement != 0 ? settled : null,
        };
    }

    private void SetStiffness(ThreeMomentBay bay)
    {
        if (SpanOf(bay).FlexuralRigidity != SpanOf(Bays[0]).FlexuralRigidity)
        {
            HandNumber comparison = Comparison;
            bay.Ratio = Writer.Find((HandFormula)comparison / Rigidity(bay), bay.Name(HandRole.RigidityRatio));
            bay.Reduced = Writer.Find((HandFormula)bay.Ratio * bay.Length, bay.Name(HandRole.ReducedLength));
        }

        if (SpanOf(bay).ShearRigidity is double shear)
        {
            HandNumber rigidity = Writer.Find(
                new HandFormula.Given(shear, HandUnit.OfForce), bay.Name(HandRole.ShearRigidity));
            bay.ShearLength = Writer.Find(
                SixTimesOver((HandFormula)rigidity * bay.Length), bay.Name(HandRole.ShearLength));
        }
    }

    private HandNumber Rigidity(ThreeMomentBay bay)
    {
        HandUnit unit = Beam.Model.HasAbsoluteStiffness ? HandUnit.OfRigidity : HandUnit.Ratio;
        return Writer.Find(
            new HandFormula.Given(SpanOf(bay).FlexuralRigidity, unit), bay.Name(HandRole.Rigidity));
    }

    private Span SpanOf(ThreeMomentBay bay)
    {
        double middle = (bay.Left.Place.Value + bay.Right.Place.Value) / 2;
        ImmutableArray<double> joints = Beam.Model.JointPositions;
        return Beam.Model.Spans.Where((_, i) => joints[i] <= middle && middle <= joints[i + 1]).First();
    }
}
