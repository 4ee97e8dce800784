using System.Diagnostics;

namespace FieldCheck.Reporting.Pages;

/// <summary>Writes a record as text, for a terminal, a mail or a line printer.</summary>
public static class TextRecord
{
    private const int Indent = 2;
    private const int SignatureGap = 2;

    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="width">Columns of a line; 60 or more, and no less than the record was made for.</param>
    /// <returns>The text, every line ended by a line feed and none longer than the width.</returns>
    public static string Of(CheckRecord record, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(record);
        IEnumerable<string> lines =
        [
            .. TextFlow.Wrap(record.Title.ToUpperInvariant(), width),
            new string('=', Math.Min(record.Title.Length, width)),
            .. record.Blocks.SelectMany(block => Lines(block, width)),
        ];
        return string.Concat(lines.Select(line => line.TrimEnd() + "\n"));
    }

    private static IEnumerable<string> Lines(RecordBlock block, int width) => block switch
    {
        RecordBlock.Heading { Level: 2 } heading =>
            ["", "", heading.Text.ToUpperInvariant(), new string('-', Math.Min(heading.Text.Length, width))],
        RecordBlock.Heading heading => ["", heading.Text],
        RecordBlock.Facts facts => ["", .. facts.All.SelectMany(fact => Fact(fact, facts.All.Max(Length), width))],
        RecordBlock.Paragraph paragraph => ["", .. TextFlow.Wrap(paragraph.Text, width)],
        RecordBlock.Sentences sentences => ["", .. sentences.All.SelectMany(line => Sentence(line, width))],
        RecordBlock.Table table => ["", .. TextFlow.Wrap(table.Caption, width), .. TextTable.Lines(table, width)],
        RecordBlock.Figure figure => ["", .. TextFlow.Wrap(figure.Caption, width), "", .. figure.Sketch],
        RecordBlock.Lines lines => ["", .. lines.All.Select(line => line.Text)],
        RecordBlock.Signatures signatures => signatures.All.SelectMany(one => Signature(one, width)),
        _ => throw new UnreachableException(),
    };

    private static int Length(RecordFact fact) => fact.Name.Length;

    private static IEnumerable<string> Fact(RecordFact fact, int names, int width)
    {
        string blank = new('_', Math.Min(width - names - Indent, width / 2));
        string text = fact.Text.Length == 0 ? blank : fact.Text;
        return TextFlow.Wrap(text, width - names - Indent)
            .Select((line, i) => (i == 0 ? fact.Name : "").PadRight(names + Indent) + line);
    }

    private static IEnumerable<string> Sentence(string text, int width) =>
        TextFlow.Wrap(text.TrimStart('-', ' '), width - Indent).Select((line, i) => (i == 0 ? "- " : "  ") + line);

    private static IEnumerable<string> Signature(RecordSignature one, int width)
    {
        string name = one.Name.Length == 0 ? new string('_', width / 4) : one.Name;
        string line = $"{one.Role}: {name}";
        string sign = "date: __________  signature: ";
        bool isOneLine = line.Length + SignatureGap + sign.Length + width / 4 <= width;
        string rest = sign + new string('_', Math.Max(width / 4, width - sign.Length - (isOneLine ? line.Length + SignatureGap : Indent)));
        return isOneLine ? ["", "", line + "  " + rest] : ["", "", .. TextFlow.Wrap(line, width), "", "  " + rest];
    }
}
