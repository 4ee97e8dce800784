using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>How a beam can move, and the way out, in words.</summary>
internal static class MotionWords
{
    /// <summary>What a beam that stands is said to do; more where it does not with some loads away or one rolling.</summary>
    /// <param name="calculation">Of a beam that stands.</param>
    /// <param name="behind">What follows where it may tip.</param>
    internal static string Standing(Calculation calculation, string behind = "")
    {
        string standing = Has(MessageCodes.Tips)
            ? $"STANDS with all loads on and nothing rolling, but tips or has no answer otherwise{behind}"
            : "STANDS";
        return Has(MessageCodes.TipsWithin)
            ? $"{standing}{(Has(MessageCodes.Tips) ? ";" : " at the figures typed, but")} tips or has no answer within what was measured"
            : standing;

        bool Has(string code) => calculation.Messages.Any(message => message.Code == code);
    }

    /// <summary>CAN MOVE, or NOT JUDGED where no answer can be given; null for a beam that stands.</summary>
    internal static string? Verdict(BeamOutcome outcome) => outcome switch
    {
        BeamOutcome.Stands => null,
        BeamOutcome.Undecided => "NOT JUDGED",
        _ => "CAN MOVE",
    };

    /// <summary>One sentence for each motion, its way out behind it; none for a beam that cannot move.</summary>
    internal static ImmutableArray<string> Of(BuiltBeam beam, BeamOutcome outcome) => outcome switch
    {
        BeamOutcome.CanMove moving => [.. moving.Motions.Select(motion => Motion(beam, motion)).Distinct()],
        BeamOutcome.Tips tips => [Tipping(beam, tips)],
        _ => [],
    };

    private static string Motion(BuiltBeam beam, FreeMotion motion)
    {
        if (beam.Supports.IsEmpty)
        {
            return "it has no support: add two, or one that is fixed";
        }

        if (motion.Parts.IsEmpty)
        {
            return "nothing holds it lengthways: " + PinWayOut(beam);
        }

        string along = motion.SlidesAlong ? ", sliding lengthways" : "";
        string moves = BeamWords.List([.. motion.Parts.Select(part => Part(beam, part))]);
        return moves + along + ": " + WayOut(beam, motion);
    }

    private static string Tipping(BuiltBeam beam, BeamOutcome.Tips tips)
    {
        string lifted = BeamWords.List([.. tips.LiftedOff.Select(index => beam.Supports[index].Label)]);
        string go = tips.LiftedOff.Length == 1 ? "lets go" : "let go";
        IEnumerable<MovingPart> parts = tips.Motions.SelectMany(motion => motion.Parts).Distinct();
        string[] moves = [.. parts.Select(part => Part(beam, part))];
        string then = moves.Length == 0 ? "nothing is left to hold it" : BeamWords.List(moves);
        return $"it tips under {TypedLetters.Name(beam, tips.Combination.Name)}: {lifted} {go}, and {then}: "
            + $"make {lifted} hold both ways, or move a support or the load";
    }

    private static string Part(BuiltBeam beam, MovingPart part)
    {
        string name = part.From == 0 && part.To == beam.Model.Length
            ? "the whole beam"
            : $"the part from {End(beam, part.From)} to {End(beam, part.To)}";
        return part.Centre is double centre ? $"{name} turns about {End(beam, centre)}" : $"{name} moves up or down";
    }

    private static string End(BuiltBeam beam, double position)
    {
        BeamWords words = new(beam);
        if (beam.Model.Hinges.Contains(position))
        {
            return $"the hinge at {words.Say(position, QuantityKind.Length)}";
        }

        string place = words.Place(position);
        return place == words.Say(position, QuantityKind.Length) ? $"x = {place}" : place;
    }

    private static string WayOut(BuiltBeam beam, FreeMotion motion)
    {
        bool isWhole = motion.Parts.Length == 1 && motion.Parts[0].From == 0 && motion.Parts[0].To == beam.Model.Length;
        if (!isWhole)
        {
            return "add a support under it, or take a hinge out";
        }

        if (motion.Parts[0].Centre is null)
        {
            return "add a support that holds it up";
        }

        NamedSupport? only = beam.Supports.Length == 1 ? beam.Supports[0] : null;
        return only is null ? "add a support" : $"add a support, or make {only.Label} fixed";
    }

    private static string PinWayOut(BuiltBeam beam)
    {
        string[] free =
        [
            .. beam.Supports
                .Where(support => support.Support is { Along: Restraint.None, SurfaceSlope: 0 })
                .Where(support => support.Support.Across is Restraint.Rigid)
                .Select(support => support.Label),
        ];
        return free.Length == 0 ? "add a pin" : $"make {BeamWords.List(free, "or")} a pin";
    }
}
