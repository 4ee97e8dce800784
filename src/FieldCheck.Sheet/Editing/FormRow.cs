using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>A whole row of the form, of whichever block. Closed set: the cases are the nested records.</summary>
public abstract record FormRow
{
    private FormRow()
    {
    }

    /// <summary>A span.</summary>
    /// <param name="Entry">What stands in it.</param>
    public sealed record Span(SpanEntry Entry) : FormRow;

    /// <summary>A support.</summary>
    /// <param name="Entry">What stands in it.</param>
    public sealed record Support(SupportEntry Entry) : FormRow;

    /// <summary>A load.</summary>
    /// <param name="Entry">What stands in it.</param>
    public sealed record Load(LoadEntry Entry) : FormRow;

    /// <summary>What is stated of a support.</summary>
    /// <param name="Entry">What stands in it.</param>
    public sealed record Stated(StatedEntry Entry) : FormRow;

    /// <summary>A combination.</summary>
    /// <param name="Entry">What stands in it.</param>
    public sealed record Combination(CombinationEntry Entry) : FormRow;

    /// <summary>A rolling load.</summary>
    /// <param name="Entry">What stands in it.</param>
    public sealed record Rolling(RollingEntry Entry) : FormRow;

    /// <summary>A row with nothing in it but, for a support, a kind: a pin where it is the first.</summary>
    /// <param name="document">The beam that it is for.</param>
    /// <param name="block">The block that it is for; a case is no row, it comes and goes with its loads.</param>
    public static FormRow Blank(BeamDocument document, FormBlock block) => block switch
    {
        FormBlock.Spans => new Span(new SpanEntry()),
        FormBlock.Supports => new Support(new SupportEntry { Kind = document.Supports.Count == 0 ? "pin" : "roller" }),
        FormBlock.Stated => new Stated(new StatedEntry()),
        FormBlock.Combinations => new Combination(new CombinationEntry()),
        FormBlock.Rolling => new Rolling(new RollingEntry()),
        _ => new Load(new LoadEntry()),
    };

    /// <summary>The row that stands in a beam.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="block">The block.</param>
    /// <param name="row">The row, counted from 0.</param>
    public static FormRow At(BeamDocument document, FormBlock block, int row) => block switch
    {
        FormBlock.Spans => new Span(document.Spans[row]),
        FormBlock.Supports => new Support(document.Supports[row]),
        FormBlock.Stated => new Stated(StatedRows.EntryAt(document, row)),
        FormBlock.Combinations => new Combination(document.Combinations[row]),
        FormBlock.Rolling => new Rolling(document.Rolling[row]),
        _ => new Load(document.Loads[row]),
    };
}
