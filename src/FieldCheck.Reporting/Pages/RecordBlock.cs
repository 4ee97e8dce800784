using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pages;

/// <summary>One block of a record. Closed set: the cases are the nested records.</summary>
public abstract record RecordBlock
{
    private RecordBlock()
    {
    }

    /// <summary>A heading.</summary>
    /// <param name="Level">2 for a section, 3 for a part of one; the title is 1.</param>
    /// <param name="Text">What it says.</param>
    public sealed record Heading(int Level, string Text) : RecordBlock;

    /// <summary>Names and what they are, one a line.</summary>
    /// <param name="All">The facts, one or more.</param>
    public sealed record Facts(ImmutableArray<RecordFact> All) : RecordBlock;

    /// <summary>One sentence or more, run together.</summary>
    /// <param name="Text">The text.</param>
    /// <param name="IsWarning">True: it must not be overlooked.</param>
    public sealed record Paragraph(string Text, bool IsWarning = false) : RecordBlock;

    /// <summary>Sentences that stand each for itself.</summary>
    /// <param name="All">The sentences, one or more.</param>
    public sealed record Sentences(ImmutableArray<string> All) : RecordBlock;

    /// <summary>A table; the first cell of a row names the row.</summary>
    /// <param name="Caption">What it is a table of.</param>
    /// <param name="Columns">Its columns, two or more.</param>
    /// <param name="Rows">Its rows, one or more, each with as many cells as there are columns; a cell may be empty.</param>
    public sealed record Table(
        string Caption, ImmutableArray<RecordColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows) : RecordBlock;

    /// <summary>A drawing.</summary>
    /// <param name="Caption">What it shows.</param>
    /// <param name="Drawing">The drawing in lines.</param>
    /// <param name="Sketch">The same in rows of characters, plain ASCII, for where there are no lines.</param>
    /// <param name="Description">What is to be seen in it, in words, for whoever cannot see it.</param>
    public sealed record Figure(
        string Caption, Pictures.Picture Drawing, ImmutableArray<string> Sketch, string Description) : RecordBlock;

    /// <summary>Lines that are kept as they stand, in letters of one width: the working.</summary>
    /// <param name="All">The lines, none longer than the width asked for; may be empty lines among them.</param>
    public sealed record Lines(ImmutableArray<RecordLine> All) : RecordBlock;

    /// <summary>Room to sign.</summary>
    /// <param name="All">Who signs, one or more.</param>
    public sealed record Signatures(ImmutableArray<RecordSignature> All) : RecordBlock;
}
