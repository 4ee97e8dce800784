using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Moments of forces and couples about a point, term by term: force times arm, with its sense.</summary>
internal static class MomentSum
{
    /// <summary>Writes the term of every known force and couple.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="actions">The forces and couples; unknown ones are passed over.</param>
    /// <param name="about">The point.</param>
    /// <returns>The terms, positive counter-clockwise.</returns>
    internal static ImmutableArray<HandFormula> Terms(
        HandWriter writer, IEnumerable<PartAction> actions, HandNumber about)
    {
        PartAction[] known = [.. actions.Where(action => action.Number is not null)];
        HandActor[] through =
            [.. known.Where(action => HasNoArm(action, about)).Select(action => action.Actor)];
        if (through.Length > 0)
        {
            writer.Say(new HandRemark.PassesThrough([.. through]));
        }

        return [.. known.Where(action => !HasNoArm(action, about)).Select(action => Term(writer, action, about))];
    }

    /// <summary>Writes how an unknown turns about a point.</summary>
    /// <returns>Its coefficient in the sum, positive counter-clockwise; null: it passes through the point.</returns>
    internal static HandFormula? Coefficient(HandWriter writer, PartAction unknown, HandNumber about)
    {
        if (HasNoArm(unknown, about))
        {
            writer.Add(new HandLine.Turns(unknown.Name, null, HandSense.None));
            return null;
        }

        HandNumber? arm = unknown.IsCouple ? null : Arm(about, unknown.Place);
        bool isCounterClockwise = TurnsCounterClockwise(unknown, about);
        writer.Add(new HandLine.Turns(unknown.Name, arm, SenseOf(isCounterClockwise)));
        HandFormula size = arm is null ? HandNumber.One : arm;
        return isCounterClockwise ? size : -size;
    }

    // The line that says how the unknown turns works its arm out.
    private static HandNumber Arm(HandNumber about, HandNumber place)
    {
        HandNumber distance = HandNumber.Distance(about, place);
        return distance.IsInline ? new HandNumber(distance.Formula) : distance;
    }

    private static bool HasNoArm(PartAction action, HandNumber about) =>
        !action.IsCouple && action.Place.Value == about.Value;

    private static HandFormula Term(HandWriter writer, PartAction action, HandNumber about)
    {
        HandNumber number = action.Number!;
        bool isNegative = number.Value < 0;
        bool isCounterClockwise = TurnsCounterClockwise(action, about) != isNegative;
        HandFormula size = isNegative ? new HandFormula.Size(number) : number;
        HandFormula turning = action.IsCouple ? size : size * HandNumber.Distance(about, action.Place);
        HandNumber term = writer.Find(turning, action.Actor, SenseOf(isCounterClockwise));
        return isCounterClockwise ? term : -(HandFormula)term;
    }

    /// <summary>True: positive, it turns counter-clockwise about the point.</summary>
    private static bool TurnsCounterClockwise(PartAction action, HandNumber about) =>
        action.IsCouple || action.Place.Value > about.Value ? action.IsPositive : !action.IsPositive;

    private static HandSense SenseOf(bool isCounterClockwise) =>
        isCounterClockwise ? HandSense.CounterClockwise : HandSense.Clockwise;
}
