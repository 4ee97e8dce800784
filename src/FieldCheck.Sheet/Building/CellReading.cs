using System.Diagnostics;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads a cell's text by what its key asks for.</summary>
internal static class CellReading
{
    /// <summary>Nothing on a beam is larger in SI, nor smaller than the inverse: products stay finite.</summary>
    private const double Largest = 1e30;

    /// <summary>The largest whole number that a cell can hold: a file has at most so many rows.</summary>
    private const int LargestCount = 10_000;

    private static readonly Reading<double?> Sound = new Reading<double?>.Accepted(null);

    /// <returns>The number in SI, null where the cell holds no number; or why it does not read.</returns>
    internal static Reading<double?> Read(string text, Wanted wanted) => wanted switch
    {
        Wanted.FreeText => FreeTextReader.Read(text).Then(_ => Sound),
        Wanted.SupportLabel => LabelReader.Read(text).Then(_ => Sound),
        Wanted.Name => SoundIf(!string.IsNullOrWhiteSpace(text), () => ProblemText.EmptyName),
        Wanted.OneOf of => SoundIf(of.Words.Contains(text), () => ProblemText.NotOneOf(text, of.Words)),
        Wanted.Truth => SoundIf(text is "true" or "false", () => ProblemText.NotTrueOrFalse),
        Wanted.PlaceOnBeam => PlaceReader.Read(text).Then(_ => Sound),
        Wanted.TwoLengths => PadSizeReader.Read(text).Then(_ => Sound),
        Wanted.Measure of => Measure(text, of.Kind),
        Wanted.LengthOr of => text == of.Word ? Sound : Measure(text, QuantityKind.Length),
        Wanted.ShareOr of => QuantityReader.Read(text, QuantityKind.Share, of.Kind).Then(Sensible),
        Wanted.Whole of => WholeNumberReader.Read(text, of.Least, LargestCount).Then(number => Sensible(number)),
        Wanted.BareNumber => NumberReader.Read(text).Then(Sensible),
        Wanted.ShareOfSpan => DeflectionLimitReader.Read(text).Then(Sensible),
        _ => throw new UnreachableException(),
    };

    private static Reading<double?> Measure(string text, QuantityKind kind) =>
        QuantityReader.Read(text, kind).Then(Sensible);

    private static Reading<double?> Sensible(Quantity quantity) => Sensible(quantity.Value);

    private static Reading<double?> Sensible(double value) =>
        value == 0 || Math.Abs(value) is >= 1 / Largest and <= Largest
            ? new Reading<double?>.Accepted(value)
            : new Reading<double?>.Refused(ProblemText.Huge, 0);

    private static Reading<double?> SoundIf(bool holds, Func<string> why) =>
        holds ? Sound : new Reading<double?>.Refused(why(), 0);
}
