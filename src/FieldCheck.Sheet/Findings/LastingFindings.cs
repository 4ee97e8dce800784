using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of cases that add no creep because nobody wrote that they last.</summary>
internal static class LastingFindings
{
    /// <summary>Cases that come and go by their nature; of others it is a guess.</summary>
    private static readonly string[] Passing = ["wind", "earthquake"];

    internal static IEnumerable<Message> Of(BuiltBeam beam, BeamDocument document, BeamChecks checks)
    {
        if (!checks.All.Concat(checks.WithoutFinalLimit).Any(check => check.Figures.Terms.Any(term => term is { Symbol: CheckSymbol.CreepFactor, Value: > 0 })))
        {
            yield break;
        }

        string[] cases =
        [
            .. Enumerable.Range(0, beam.Model.Cases.Length)
                .Where(index => Counts(beam, index) && IsTakenAsPassing(document, beam.Model.Cases[index].Name))
                .Select(index => TextSafety.ForTerminal(beam.Model.Cases[index].Name)),
        ];
        if (cases.Length > 0)
        {
            yield return new Message(
                Severity.Note,
                MessageCodes.NotLasting,
                $"{string.Join(", ", cases)}: taken as not lasting, so without creep in the final deflection; lasting in "
                    + "[limits] says otherwise.");
        }
    }

    /// <summary>The greatest final deflections for their length that no limit is written for, of the bays and of the overhangs.</summary>
    internal static IEnumerable<Message> WithoutLimit(BuiltBeam beam, BeamChecks checks) =>
        from kind in checks.WithoutFinalLimit.GroupBy(check => check.Figures.Kind)
        let most = kind.MaxBy(check => check.Figures.Utilisation)
        let several = kind.Count() > 1 ? ", the most of all for its length" : ""
        let key = kind.Key == CheckKind.FinalDeflection ? "deflection_final" : "deflection_final_overhang"
        select new Message(
            Severity.Note,
            MessageCodes.NoFinalLimit,
            $"{char.ToUpperInvariant(most.What[0])}{most.What[1..]}: {(most.Figures.IsBound ? "at most " : "")}{most.Have(beam.Display)} with "
                + $"what lasting loads add in time{several}. No limit for it is written ({key} in [limits]), and it is not judged.");

    private static bool Counts(BuiltBeam beam, int index) =>
        (!beam.Model.Cases[index].Loads.IsEmpty || beam.Rolling.Any(rolling => rolling.Case == index))
        && beam.Model.Combinations.Any(one => one.Basis == CombinationBasis.Service && one.Factors[index] != 0);

    private static bool IsTakenAsPassing(BeamDocument document, string name) =>
        !Passing.Contains(name)
        && document.Limits!.Lasting.All(share => share.Name != name)
        && LimitRows.LastingOf(name, document.Limits, document) == 0;
}
