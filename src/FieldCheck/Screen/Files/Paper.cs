using System.Text;
using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Screen.Files;

/// <summary>Something to be printed. Closed set: the cases are the nested records.</summary>
internal abstract record Paper
{
    private Paper()
    {
    }

    /// <summary>What it is.</summary>
    internal abstract PaperKind Kind { get; }

    /// <summary>The bytes of its file.</summary>
    /// <param name="catalogue">The catalogue that the beam was read with.</param>
    internal abstract byte[] Bytes(SectionCatalogue catalogue);

    /// <summary>The working by hand.</summary>
    /// <param name="Text">All of it.</param>
    internal sealed record Working(string Text) : Paper
    {
        internal override PaperKind Kind => PaperKind.Working;

        internal override byte[] Bytes(SectionCatalogue catalogue) => Encoding.UTF8.GetBytes(Text);
    }

    /// <summary>The record of the check.</summary>
    /// <param name="Calculation">What came of the beam.</param>
    /// <param name="Request">How it is wanted.</param>
    /// <param name="Format">In what it is written.</param>
    internal sealed record Record(Calculation Calculation, RecordRequest Request, RecordFormat Format) : Paper
    {
        internal override PaperKind Kind => PaperKind.Record;

        internal override byte[] Bytes(SectionCatalogue catalogue) =>
            RecordFile.Bytes(RecordBuilder.Of(Calculation, catalogue, Request with { IsPlain = Format == RecordFormat.Text }), Format);
    }
}
