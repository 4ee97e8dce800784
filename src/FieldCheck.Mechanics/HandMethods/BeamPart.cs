using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>The stretch of a beam between two neighbouring hinges or ends: it turns as one.</summary>
/// <remarks>What stands exactly at a hinge belongs to the part on its left; a couple to the side that it names.</remarks>
/// <param name="Beam">The beam being worked.</param>
/// <param name="Index">Which part, counted from 0.</param>
internal sealed record BeamPart(HandBeam Beam, int Index)
{
    private ImmutableArray<double> Hinges => Beam.Model.Hinges;

    internal bool IsFirst => Index == 0;

    internal bool IsLast => Index == Hinges.Length;

    /// <summary>Its left end [m].</summary>
    internal double From => IsFirst ? 0 : Hinges[Index - 1];

    /// <summary>Its right end [m].</summary>
    internal double To => IsLast ? Beam.Model.Length : Hinges[Index];

    /// <summary>What acts across it and is known, and what is not; loads last.</summary>
    internal ImmutableArray<PartAction> Actions => [.. SupportActions(), .. HingeActions(), .. LoadActions()];

    /// <summary>Names of what is not known across it.</summary>
    internal ImmutableArray<PartAction> Unknowns =>
        [.. SupportActions().Concat(HingeActions()).Where(action => action.Number is null)];

    internal static ImmutableArray<BeamPart> All(HandBeam beam) =>
        [.. Enumerable.Range(0, beam.Model.Hinges.Length + 1).Select(index => new BeamPart(beam, index))];

    private bool Holds(double position) => position <= To && (IsFirst ? position >= From : position > From);

    private IEnumerable<PartAction> SupportActions()
    {
        for (int i = 0; i < Beam.Model.Supports.Length; i++)
        {
            Support support = Beam.Model.Supports[i];
            if (!Holds(support.Position))
            {
                continue;
            }

            HandNumber place = Beam.Writer.Place(support.Position);
            if (Beam.HoldsAcross(i))
            {
                yield return PartAction.Force(new HandName(HandRole.Vertical, i), Beam.Vertical[i], true, place);
            }

            if (Beam.HoldsTurn(i))
            {
                yield return PartAction.Turn(new HandName(HandRole.Couple, i), Beam.Couple[i], place);
            }
        }
    }

    private IEnumerable<PartAction> HingeActions()
    {
        if (!IsFirst)
        {
            yield return Hinge(Index - 1, isAtLeftEnd: true);
        }

        if (!IsLast)
        {
            yield return Hinge(Index, isAtLeftEnd: false);
        }
    }

    // Not yet found, it is taken as lifting the part that is asked: that part is then worked first.
    private PartAction Hinge(int hinge, bool isAtLeftEnd)
    {
        HandNumber? force = Beam.HingeForce[hinge];
        bool isUp = force is null || Beam.HingeLiftsLeft[hinge] == !isAtLeftEnd;
        return PartAction.Force(
            new HandName(HandRole.HingeForce, hinge), force, isUp, Beam.Writer.Place(Hinges[hinge]));
    }

    private IEnumerable<PartAction> LoadActions()
    {
        foreach (HandForce force in Beam.Loads.Forces)
        {
            if (force.IsAcross && Holds(force.Spread is null ? force.Place.Value : force.To.Value))
            {
                yield return PartAction.Load(force);
            }
        }

        foreach (HandCouple couple in Beam.Loads.Couples)
        {
            double at = couple.Place.Value;
            bool isAtHinge = Hinges.Contains(at);
            bool holds = isAtHinge ? couple.Side == Side.Left ? at == To : at == From : Holds(at);
            if (holds)
            {
                yield return PartAction.Load(couple);
            }
        }
    }
}
