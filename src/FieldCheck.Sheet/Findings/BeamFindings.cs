using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of the beam as a whole: what was taken for granted and what was left out.</summary>
internal static class BeamFindings
{
    internal static IEnumerable<Message> OfOutcome(BuiltBeam beam, BeamOutcome outcome)
    {
        if (outcome is BeamOutcome.Undecided undecided)
        {
            yield return new Message(Severity.Fault, MessageCodes.Undecided, Why(undecided));
        }

        if (outcome is BeamOutcome.Stands { IsHeldAlong: false })
        {
            yield return Note(
                MessageCodes.NotHeldLengthways, "Nothing holds the beam lengthways, and no load asks for it.");
        }

        if (outcome is BeamOutcome.Stands { IsNearlyMovable: true })
        {
            yield return new Message(
                Severity.Caution,
                MessageCodes.NearlyMovable,
                "The supports barely hold the beam: its reactions are far greater than its loads.");
        }

        if (beam.UniformStiffnessAssumed)
        {
            yield return Note(
                MessageCodes.UniformStiffnessAssumed,
                "No stiffness is given and statics alone does not do: the beam was taken as uniform along its length.");
        }

        if (beam.OneModulusAssumed)
        {
            yield return Note(
                MessageCodes.OneModulusAssumed,
                "No modulus is given: the inertias were taken as if all of the beam had the same one.");
        }

        if (beam.UniformAreaAssumed)
        {
            yield return Note(
                MessageCodes.UniformAreaAssumed,
                "Not every area is given: forces along the beam were shared out as if its area were uniform.");
        }
    }

    internal static IEnumerable<Message> OfLoads(BuiltBeam beam)
    {
        if (beam.Loads.IsEmpty && beam.Rolling.IsEmpty)
        {
            yield return Note(MessageCodes.NoLoads, "No load stands on the beam.");
        }

        if (RollingTogether(beam) is { Length: > 0 } together)
        {
            yield return new Message(
                Severity.Caution,
                MessageCodes.OneRolls,
                $"{together}: only one of them at a time is on the beam. Where two may be on it together, "
                    + "make them one rolling load, as far apart as they may come.");
        }

        foreach (IGrouping<CombinationBasis, Combination> basis in beam.Model.Combinations.GroupBy(one => one.Basis))
        {
            for (int index = 0; index < beam.Model.Cases.Length; index++)
            {
                if (HasLoads(beam, index) && basis.All(combination => combination.Factors[index] == 0))
                {
                    yield return LeftOut(beam.Model.Cases[index].Name, basis.Key);
                }
            }
        }
    }

    /// <summary>Cases that may be away, and that the one combination of all loads counts against the others.</summary>
    internal static IEnumerable<Message> OfRelief(BeamDocument document, BuiltBeam beam)
    {
        if (document.Combinations.Count > 0)
        {
            return [];
        }

        double[] down = [.. beam.Model.Cases.Select(one => one.Loads.Sum(DownOf))];
        ImmutableArray<bool> mayBeAway = LiveCases.Of(document, beam.Model);
        return
        [
            .. Enumerable.Range(0, down.Length)
                .Where(i => mayBeAway[i] && !beam.PatternCases.Contains(i) && down[i] * (down.Sum() - down[i]) < 0)
                .Select(i => new Message(
                    Severity.Caution,
                    MessageCodes.RelievingCase,
                    $"Case {TextSafety.ForTerminal(beam.Model.Cases[i].Name)} acts against the other loads and is counted whole "
                        + "beside them: what comes of the beam without it was not looked at. Combinations say what may be away.")),
        ];
    }

    /// <summary>What a load weighs across the beam [N].</summary>
    private static double DownOf(Load load) => load switch
    {
        Load.Point point => point.Down,
        Load.Distributed { ActsAlong: false } spread => (spread.StartIntensity + spread.EndIntensity) / 2 * (spread.To - spread.From),
        _ => 0,
    };

    /// <summary>Grades whose strength nothing asks for.</summary>
    internal static IEnumerable<Message> OfGrades(BeamDocument document) => document.Limits?.Rules is not null
        ? []
        : document.Materials
            .Where(material => material.Grade is not null && AskedFor.Strengths(material).IsEmpty)
            .Select(material => Note(
                MessageCodes.StrengthNotJudged,
                $"The strength of {TextSafety.ForTerminal(material.Grade!)} was not judged: "
                    + "no rules and no allowable or design stress are written."));

    /// <summary>Sections with flanges that are laid flat: the wrong way up is an error easily made.</summary>
    internal static IEnumerable<Message> OfSticks(BuiltBeam beam) => beam.Sticks
        .Where(stick => stick.Section is { IsFlat: true, Shape: SectionShape.I or SectionShape.Channel })
        .Select(stick => stick.SectionName!)
        .Distinct()
        .Select(name => Note(
            MessageCodes.WeakAxis,
            $"Section {TextSafety.ForTerminal(name)} lies flat: it is bent about its weak axis."));

    /// <summary>What rolls in the first combination that holds several rolling loads, and which that is; empty where none does.</summary>
    private static string RollingTogether(BuiltBeam beam)
    {
        foreach (Combination combination in beam.Model.Combinations)
        {
            string[] labels = [.. beam.Rolling.Where(one => combination.Factors[one.Case] != 0).Select(one => one.Label)];
            if (labels.Length > 1)
            {
                string under = beam.Model.Combinations.Length > 1 ? $" under {combination.Name}" : "";
                return TextSafety.ForTerminal($"{string.Join(", ", labels[..^1])} and {labels[^1]} roll{under}");
            }
        }

        return "";
    }

    /// <summary>Loads, own weight or a rolling load; a pattern alone is none.</summary>
    private static bool HasLoads(BuiltBeam beam, int index) =>
        !beam.Model.Cases[index].Loads.IsEmpty || beam.Rolling.Any(rolling => rolling.Case == index);

    private static Message LeftOut(string name, CombinationBasis basis) => new(
        Severity.Caution,
        MessageCodes.CaseLeftOut,
        $"Case {TextSafety.ForTerminal(name)} stands in no {basis.ToString().ToLowerInvariant()} combination: "
            + "its loads are left out of them.");

    private static string Why(BeamOutcome.Undecided undecided) => undecided.Reason switch
    {
        UndecidedReason.ContactContradictsItself =>
            "No answer: a support's rotational stiffness both lifts it off and presses it back. "
            + "Leave out what it acts, or its rotational stiffness.",
        _ => "No answer: stiffnesses or lengths of this beam differ too widely. Are their units right?",
    };

    private static Message Note(string code, string text) => new(Severity.Note, code, text);
}
