using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Document;

/// <summary>What a cell asks for. Closed set: the cases are the nested records.</summary>
public abstract record Wanted
{
    private Wanted()
    {
    }

    /// <summary>Any text.</summary>
    public sealed record FreeText : Wanted;

    /// <summary>One of a few words.</summary>
    /// <param name="Words">The words.</param>
    public sealed record OneOf(params string[] Words) : Wanted;

    /// <summary>A quantity.</summary>
    /// <param name="Kind">Of this kind.</param>
    public sealed record Measure(QuantityKind Kind) : Wanted;

    /// <summary>A length, or the one word that stands for none.</summary>
    /// <param name="Word">The word.</param>
    public sealed record LengthOr(string Word) : Wanted;

    /// <summary>A place on the beam.</summary>
    public sealed record PlaceOnBeam : Wanted;

    /// <summary>A support's label: a new one, or one that stands in the beam.</summary>
    public sealed record SupportLabel : Wanted;

    /// <summary>A name that stands elsewhere in the beam or the catalogue.</summary>
    /// <param name="Of">What it names: "section", "material", "case", "combination", "shape" or "grade".</param>
    public sealed record Name(string Of) : Wanted;

    /// <summary>A whole number, written bare in the file.</summary>
    /// <param name="Least">The least that may stand.</param>
    public sealed record Whole(int Least) : Wanted;

    /// <summary>A number without unit, written bare in the file.</summary>
    public sealed record BareNumber : Wanted;

    /// <summary>true or false, written bare in the file.</summary>
    public sealed record Truth : Wanted;

    /// <summary>A share of the span, as "L/360".</summary>
    public sealed record ShareOfSpan : Wanted;

    /// <summary>A share or a quantity.</summary>
    /// <param name="Kind">The quantity's kind.</param>
    public sealed record ShareOr(QuantityKind Kind) : Wanted;

    /// <summary>Two lengths, as "24 in x 24 in".</summary>
    public sealed record TwoLengths : Wanted;
}
