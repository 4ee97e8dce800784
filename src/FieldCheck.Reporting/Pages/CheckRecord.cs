using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pages;

/// <summary>The record of a check: all that stands on its pages, in order, without a form.</summary>
/// <remarks>
/// Text, Markdown, HTML and PDF are written from it, so that none of them can say more or less than another. Same input, same
/// record: nothing in it is read from a clock or from the machine.
/// </remarks>
/// <param name="Title">What stands above all.</param>
/// <param name="Blocks">What follows, in order.</param>
public sealed record CheckRecord(string Title, ImmutableArray<RecordBlock> Blocks)
{
    /// <summary>True: a block is words that lead to the block after it, and stands on its page if they are few.</summary>
    /// <param name="at">Its index.</param>
    internal bool IsLead(int at) => at + 1 < Blocks.Length
        && Blocks[at + 1] is not RecordBlock.Heading
        && (Blocks[at] is RecordBlock.Paragraph
            || (Blocks[at] is RecordBlock.Sentences && at > 0 && Blocks[at - 1] is RecordBlock.Heading));

    /// <summary>True: a block stands before the room to sign, which has the end of it on its page.</summary>
    /// <param name="at">Its index.</param>
    internal bool IsBeforeSigning(int at) => at + 2 < Blocks.Length
        && Blocks[at + 1] is RecordBlock.Heading
        && Blocks[at + 2] is RecordBlock.Signatures;

    /// <summary>What a fact says; empty where it is left open or is none of the record's.</summary>
    /// <param name="name">Its name, as "file".</param>
    internal string Fact(string name) => Blocks.OfType<RecordBlock.Facts>()
        .SelectMany(facts => facts.All)
        .FirstOrDefault(fact => fact.Name == name)?.Text ?? "";
}
