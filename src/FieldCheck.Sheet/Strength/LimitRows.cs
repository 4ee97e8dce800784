using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Strength;

/// <summary>How far a beam may deflect, from its sheet.</summary>
internal static class LimitRows
{
    /// <summary>The case that lasts where nothing else is said, beside that of the own weight.</summary>
    private const string Dead = "dead";

    /// <summary>The limits; null where none is written.</summary>
    internal static DeflectionLimits? Of(BeamModel model, BeamDocument document)
    {
        if (document.Limits is not LimitsEntry limits)
        {
            return null;
        }

        DeflectionLimits read = new()
        {
            BayRatio = Ratio(limits.Deflection),
            OverhangRatio = Ratio(limits.DeflectionOverhang),
            Absolute = Row.Number(limits.DeflectionAbsolute, new Wanted.Measure(QuantityKind.Length)),
            FinalBayRatio = Ratio(limits.DeflectionFinal),
            FinalOverhangRatio = Ratio(limits.DeflectionFinalOverhang),
            Cases =
            [
                .. from figure in limits.DeflectionCases
                   let index = IndexOf(model, figure.Name)
                   where index is not null
                   select new CaseDeflectionLimit(index.Value, Ratio(figure.Text)!.Value),
            ],
            Lasting = [.. model.Cases.Select(one => LastingOf(one.Name, limits, document))],
        };
        return read is { BayRatio: null, OverhangRatio: null, Absolute: null, FinalBayRatio: null, FinalOverhangRatio: null }
            && read.Cases.IsEmpty
                ? null
                : read;
    }

    /// <summary>Index of a case in the model; null where nothing on the beam belongs to it.</summary>
    internal static int? IndexOf(BeamModel model, string name)
    {
        for (int index = 0; index < model.Cases.Length; index++)
        {
            if (model.Cases[index].Name == name)
            {
                return index;
            }
        }

        return null;
    }

    /// <summary>Share of a case that lasts [–]: as written, else 1 of what stands for good and 0 of all others.</summary>
    internal static double LastingOf(string name, LimitsEntry limits, BeamDocument document)
    {
        string? written = limits.Lasting.FirstOrDefault(share => share.Name == name)?.Text;
        return Row.Number(written, Fields.Lasting.Wanted)
            ?? (name == Dead || name == document.SelfWeight?.Case ? 1 : 0);
    }

    private static double? Ratio(string? text) => Row.Number(text, new Wanted.ShareOfSpan());
}
