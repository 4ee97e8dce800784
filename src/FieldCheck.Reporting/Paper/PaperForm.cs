using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;

namespace FieldCheck.Reporting.Paper;

/// <summary>Sets what is filled in: facts, with a line to write on where one is left open, and room to sign.</summary>
internal sealed class PaperForm(PaperLetters letters)
{
    private const double Gap = 12;
    private const double Writing = 18;
    private const double Line = 0.5;
    private const double ToSign = 44;

    /// <summary>Names and what they are, in two columns.</summary>
    internal IEnumerable<PaperPiece> Facts(ImmutableArray<RecordFact> all)
    {
        double widest = all.Max(fact => letters.WidthOf(letters.Shown(fact.Name, PaperFace.Bold), PaperStyle.Strong));
        double names = Math.Min(widest, PaperSheet.BlockWidth / 3);
        PaperElement table = new(PaperElementKind.Table);
        return all.SelectMany((fact, i) => Fact(fact, names, new(PaperElementKind.Row, table), i == 0 ? 8 : 1.5));
    }

    /// <summary>A name, a date and a signature, each with a line to write on; all on one page.</summary>
    internal IEnumerable<PaperPiece> Signatures(ImmutableArray<RecordSignature> all) =>
        all.Select((one, i) => Signature(one) with { KeepsNext = i + 1 < all.Length });

    private IEnumerable<PaperPiece> Fact(RecordFact fact, double names, PaperElement row, double above)
    {
        PaperElement name = new(PaperElementKind.Head, row);
        PaperElement text = new(PaperElementKind.Cell, row);
        double left = names + Gap;
        ImmutableArray<string> named = letters.Lines(fact.Name, PaperStyle.Strong, names);
        ImmutableArray<string> lines = letters.Lines(fact.Text, PaperStyle.Body, PaperSheet.BlockWidth - left);
        double lead = lines.IsEmpty ? Writing - PaperStyle.Body.Line : 0;
        return Enumerable.Range(0, Math.Max(1, Math.Max(named.Length, lines.Length))).Select(i => new PaperPiece(
            PaperStyle.Body.Line + (i == 0 ? lead : 0),
            [
                .. Words(named, i, 0, lead, name, PaperStyle.Strong),
                .. Words(lines, i, left, 0, text, PaperStyle.Body),
                .. lines.IsEmpty && i == 0
                    ? [new PaperMark.Rule(left, Writing - 1, PaperSheet.BlockWidth / 2, Line)]
                    : Array.Empty<PaperMark>(),
            ])
        {
            Above = i == 0 ? above : 0,
            KeepsNext = i == 0 && Math.Max(named.Length, lines.Length) > 1,
        });
    }

    private static IEnumerable<PaperMark> Words(
        ImmutableArray<string> lines, int at, double x, double lead, PaperElement element, PaperStyle style) =>
        at < lines.Length ? [new PaperMark.Words(x, (at == 0 ? lead : 0) + style.Base, element, lines[at], style)] : [];

    private PaperPiece Signature(RecordSignature one)
    {
        PaperElement element = new(PaperElementKind.Paragraph);
        const double Date = 0.42 * PaperSheet.BlockWidth;
        const double Sign = 0.62 * PaperSheet.BlockWidth;
        const double Foot = ToSign - 14;
        double fine = Foot + PaperStyle.Frame.Base + 2;
        string role = letters.Cut(one.Role, PaperStyle.Frame, Date - Gap);
        return new PaperPiece(
            ToSign,
            [
                .. one.Name.Length == 0
                    ? Array.Empty<PaperMark>()
                    : [new PaperMark.Words(0, Foot - 3, element, letters.Cut(one.Name, PaperStyle.Body, Date - Gap), PaperStyle.Body)],
                new PaperMark.Words(0, fine, element, role, PaperStyle.Frame),
                new PaperMark.Words(Date, fine, element, "date", PaperStyle.Frame),
                new PaperMark.Words(Sign, fine, element, "signature", PaperStyle.Frame),
                new PaperMark.Rule(0, Foot, Date - Gap, Line),
                new PaperMark.Rule(Date, Foot, Sign - Date - Gap, Line),
                new PaperMark.Rule(Sign, Foot, PaperSheet.BlockWidth - Sign, Line),
            ]);
    }
}
