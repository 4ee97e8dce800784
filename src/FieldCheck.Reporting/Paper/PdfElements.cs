using System.Diagnostics;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace FieldCheck.Reporting.Paper;

/// <summary>Tells the structure of a document beside what is drawn: headings, lists, tables, figures (ISO 32000-1, 14.8).</summary>
/// <remarks>
/// What belongs to an element is enclosed in marks, and these may not cross the begin or end of a run of text; so words are
/// marked within such a run and drawings outside.
/// </remarks>
internal sealed class PdfElements(PdfDocument document)
{
    private readonly UAManager _structure = UAManager.ForDocument(document);
    private readonly List<PaperElement> _open = [];

    /// <summary>Draws what belongs to an element; null: to none.</summary>
    /// <param name="element">The element.</param>
    /// <param name="isText">True: words and nothing else.</param>
    /// <param name="bounds">Where it is on the page.</param>
    /// <param name="draw">Draws it.</param>
    internal void Draw(PaperElement? element, bool isText, XRect bounds, Action draw)
    {
        SetMode(isText);
        if (element is null)
        {
            _structure.StructureBuilder.BeginArtifact();
            draw();
            SetMode(isText);
            _structure.StructureBuilder.End();
            return;
        }

        Open(element, bounds);
        draw();
        SetMode(isText);
        _structure.StructureBuilder.EndMarkedContentsWithId();
    }

    /// <summary>Ends all that is open.</summary>
    internal void End() => Close(0);

    private void SetMode(bool isText)
    {
        if (isText)
        {
            _structure.BeginTextMode();
        }
        else
        {
            _structure.BeginGraphicMode();
        }
    }

    private void Open(PaperElement element, XRect bounds)
    {
        PaperElement[] path = [.. element.Path];
        int common = path.Zip(_open).TakeWhile(pair => pair.First == pair.Second).Count();
        Close(common);
        foreach (PaperElement part in path.Skip(common))
        {
            Begin(part, bounds);
            _open.Add(part);
        }
    }

    private void Close(int remain)
    {
        for (; _open.Count > remain; _open.RemoveAt(_open.Count - 1))
        {
            _structure.StructureBuilder.End();
        }
    }

    private void Begin(PaperElement element, XRect bounds)
    {
        StructureBuilder structure = _structure.StructureBuilder;
        if (element.Kind == PaperElementKind.Figure)
        {
            structure.BeginElement(PdfIllustrationElementTag.Figure, element.Description, bounds);
            return;
        }

        structure.BeginElement(element.Kind switch
        {
            PaperElementKind.Title => PdfBlockLevelElementTag.Heading1,
            PaperElementKind.Section => PdfBlockLevelElementTag.Heading2,
            PaperElementKind.Part => PdfBlockLevelElementTag.Heading3,
            PaperElementKind.Paragraph => PdfBlockLevelElementTag.Paragraph,
            PaperElementKind.List => PdfBlockLevelElementTag.List,
            PaperElementKind.Item => PdfBlockLevelElementTag.ListItem,
            PaperElementKind.ItemBody => PdfBlockLevelElementTag.ListBody,
            PaperElementKind.Table => PdfBlockLevelElementTag.Table,
            PaperElementKind.Row => PdfBlockLevelElementTag.TableRow,
            PaperElementKind.Head => PdfBlockLevelElementTag.TableHeaderCell,
            PaperElementKind.Cell => PdfBlockLevelElementTag.TableDataCell,
            _ => throw new UnreachableException(),
        });
    }
}
