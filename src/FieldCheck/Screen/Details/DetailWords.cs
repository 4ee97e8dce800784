using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Details;

/// <summary>
/// What is told of a key without a column: what is wrong with it, what it was read as, or what it asks for.
/// </summary>
internal static class DetailWords
{
    internal static Notice Of(ScreenState state, Overlay.Details details)
    {
        DetailLine line = DetailLines.At(state.Document, details);
        string name = line.Words;
        Problem? problem = state.Settled.Problems.FirstOrDefault(problem => problem.Key == line.Key);
        if (details.Draft is null && problem is not null)
        {
            return new Notice($"{name}: {problem.Text}", line.Text is null ? Role.Text : Role.Warn);
        }

        Wanted? wanted = DocumentCells.Find(state.Document, line.Key)?.Wanted ?? OfNewRow(line.Key);
        return (details.Draft?.Text ?? line.Text) is string text
            && ReadBackOf(state.Document, wanted, text) is string readBack
                ? new Notice($"{name}: {readBack}")
                : new Notice($"{name}: {Asked(wanted)}", Role.Faint);
    }

    // The first key of a row that typing there begins: the beam has no such cell yet.
    private static Wanted? OfNewRow(string key) => key.Split('[', '.')[0] switch
    {
        "hinge" => Fields.Hinge.First(field => field.Key == "at").Wanted,
        "pattern" => Fields.Pattern.First(field => field.Key == "case").Wanted,
        _ => null,
    };

    /// <summary>What a text typed for a key was read as; null where there is nothing to say.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="wanted">What the key asks for.</param>
    /// <param name="text">The text.</param>
    internal static string? ReadBackOf(BeamDocument document, Wanted? wanted, string text) =>
        wanted is Wanted.Measure measure && QuantityReader.Read(text, measure.Kind) is Reading<Quantity>.Accepted read
            ? ReadBack.Say(text, read.Value, measure.Kind, new DisplayUnits(document.Units))
            : null;

    /// <summary>What a key asks for.</summary>
    /// <param name="wanted">The same for the program; null: any text.</param>
    internal static string Asked(Wanted? wanted) => wanted switch
    {
        Wanted.OneOf words => string.Join(", ", words.Words),
        Wanted.Measure measure => measure.Kind switch
        {
            QuantityKind.Length => "a length",
            QuantityKind.Angle => "an angle, as 30 deg",
            QuantityKind.RotationalStiffness => "a moment per turn, as 500 kNm/rad",
            QuantityKind.Pressure => "a pressure or stress, as 11 GPa",
            QuantityKind.Inertia => "a second moment of area, as 8000 cm4",
            QuantityKind.Area => "an area, as 28.5 cm2",
            QuantityKind.SectionModulus => "a section modulus, as 194 cm3",
            QuantityKind.UnitWeight => "a mass or weight per volume, as 420 kg/m3",
            QuantityKind.ForcePerLength => "a weight per length, as 0.22 kN/m",
            _ => "a figure with its unit",
        },
        Wanted.LengthOr other => $"a length, or {other.Word}",
        Wanted.PlaceOnBeam => "a place: 2.4, joint 1, A + 4 ft",
        Wanted.Whole => "a whole number",
        Wanted.BareNumber => "a number",
        Wanted.Truth => "true or false",
        Wanted.ShareOfSpan => "a share of the span, as L/360",
        Wanted.ShareOr => "a share, as 2 %, or a force",
        Wanted.TwoLengths => "two lengths, as 24 in x 24 in",
        Wanted.Name named => $"the name of a {named.Of}",
        _ => "any text",
    };
}
