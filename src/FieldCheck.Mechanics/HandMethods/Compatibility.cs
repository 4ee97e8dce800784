using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// What can be said by hand of reactions that these methods cannot find: where every support must come to lie, and that
/// they balance the loads.
/// </summary>
internal sealed class Compatibility
{
    private readonly BeamModel _model;
    private readonly HandWriter _writer;
    private readonly ImmutableArray<GivenReaction> _reactions;
    private readonly ImmutableArray<bool> _touching;

    private Compatibility(
        HandWriter writer, BeamModel model, ImmutableArray<GivenReaction> reactions, ImmutableArray<bool> touching)
    {
        _model = model;
        _writer = writer;
        _reactions = reactions;
        _touching = touching;
    }

    /// <summary>Writes loads, the given reactions with the movements that go with them, proof, shear and moment.</summary>
    internal static void Write(
        HandWriter writer,
        BeamModel model,
        ImmutableArray<double> factors,
        ImmutableArray<GivenReaction> reactions,
        ImmutableArray<bool> touching,
        double? about)
    {
        writer.Begin(new HandStep.Loads());
        LoadForces loads = LoadForces.Of(writer, model, factors, model.Hinges, []);
        HandBeam beam = new(model, touching, writer, loads);
        new Compatibility(writer, model, reactions, touching).Write(beam);
        HandProof.Write(beam, about, isAboutUsed: true);
        writer.Begin(new HandStep.Reactions());
        writer.Say(new HandRemark.Reactions());
        SectionForces.Write(beam);
    }

    private void Write(HandBeam beam)
    {
        _writer.Begin(new HandStep.Compatibility());
        _writer.Say(new HandRemark.OutOfReach(Obstacle()));
        for (int i = 0; i < _model.Supports.Length; i++)
        {
            if (_touching[i])
            {
                Write(beam, i);
            }
        }
    }

    private HandObstacle Obstacle() => _model.Supports.Any(support => support.SurfaceSlope != 0) && _model.HasAbsoluteStiffness
        ? HandObstacle.SlopesTied
        : HandObstacle.StiffnessUnknown;

    private void Write(HandBeam beam, int index)
    {
        Support support = _model.Supports[index];
        GivenReaction given = _reactions[index];
        if (support.Along is not Restraint.None)
        {
            beam.Horizontal[index] = Given(given.Horizontal, HandUnit.OfForce, HandRole.Horizontal, index);
        }

        if (support.Across is not Restraint.None)
        {
            HandNumber vertical = Given(given.Vertical, HandUnit.OfForce, HandRole.Vertical, index);
            beam.Vertical[index] = vertical;
            SayMovement(beam, support, index, vertical);
        }

        if (support.Rotation is not Restraint.None)
        {
            HandNumber couple = Given(given.Couple, HandUnit.OfMoment, HandRole.Couple, index);
            beam.Couple[index] = couple;
            SayTurn(support, index, couple);
        }
    }

    private HandNumber Given(double value, HandUnit unit, HandRole role, int index) =>
        _writer.Find(new HandFormula.Given(value, unit), new HandName(role, index));

    private void SayMovement(HandBeam beam, Support support, int index, HandNumber vertical)
    {
        if (support.SurfaceSlope != 0)
        {
            AlongStatics.WorkSlopeFromVertical(beam, index);
        }

        HandMovement how = support switch
        {
            { SurfaceSlope: not 0 } => HandMovement.AlongItsSurface,
            { Across: Restraint.Spring } => HandMovement.ByItsSpring,
            { Settlement: not 0 } => HandMovement.AsItSettles,
            _ => HandMovement.None,
        };
        _writer.Say(new HandRemark.Moves(index, how));
        HandFormula settlement = HandNumber.Given(support.Settlement, HandUnit.OfLength);
        if (support.Across is Restraint.Spring spring)
        {
            HandFormula yields = (HandFormula)(beam.Normal[index] ?? vertical)
                / HandNumber.Given(spring.Stiffness, HandUnit.OfForce / HandUnit.OfLength);
            _writer.Find(support.Settlement == 0 ? yields : yields + settlement, new HandName(HandRole.Movement, index));
        }
        else if (support.Settlement != 0)
        {
            _writer.Find(settlement, new HandName(HandRole.Movement, index));
        }
    }

    private void SayTurn(Support support, int index, HandNumber couple)
    {
        if (support.Rotation is Restraint.Spring spring)
        {
            _writer.Say(new HandRemark.TurnsBy(index));
            _writer.Find(
                (HandFormula)couple / HandNumber.Given(spring.Stiffness, HandUnit.OfMoment),
                new HandName(HandRole.Turn, index));
        }
    }
}
