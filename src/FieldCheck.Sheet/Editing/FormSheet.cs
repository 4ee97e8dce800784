using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>A beam as the form edits it.</summary>
/// <param name="Document">The beam as typed.</param>
/// <param name="BareSizes">
/// Loads, counted from 0 and increasing, whose force was typed as a number without unit. Given an end as well, such a
/// size could be the whole load or the load on each length, so it is asked about.
/// </param>
public sealed record FormSheet(BeamDocument Document, Rows<int> BareSizes)
{
    /// <summary>A beam just opened.</summary>
    /// <param name="document">The beam as typed.</param>
    public FormSheet(BeamDocument document)
        : this(document, [])
    {
    }

    /// <summary>A beam with nothing measured yet: one span, a pin at its left end and a roller at its right.</summary>
    public static FormSheet Empty { get; } = new(new BeamDocument
    {
        Spans = [new SpanEntry()],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1" },
        ],
    });

    /// <summary>
    /// How many rows of the beam a block shows, own weight and the empty row not counted; of what is stated, those of
    /// supports of which nothing is stated count too.
    /// </summary>
    /// <param name="block">The block.</param>
    public int RowsOf(FormBlock block) => block switch
    {
        FormBlock.Spans => Document.Spans.Count,
        FormBlock.Supports => Document.Supports.Count,
        FormBlock.Stated => StatedRows.Of(Document).Length,
        FormBlock.Cases => CaseRows.Of(Document).Length,
        FormBlock.Combinations => Document.Combinations.Count,
        FormBlock.Rolling => Document.Rolling.Count,
        _ when StickCells.Has(block) => StickRows.CountOf(Document, block),
        _ => Document.Loads.Count,
    };
}
