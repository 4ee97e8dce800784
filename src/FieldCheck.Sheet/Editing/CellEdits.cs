using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>Texts typed and pasted in the cells of the form.</summary>
internal static class CellEdits
{
    private const string OwnWeightCase = "dead";

    internal static SheetChange Type(FormSheet sheet, FormPlace place, string text)
    {
        string? typed = string.IsNullOrWhiteSpace(text) ? null : text.Trim();
        if (place.IsOwnWeight)
        {
            return new SheetChange(sheet with { Document = TypeOwnWeight(sheet.Document, place.Column, typed) });
        }

        if (place.Block == FormBlock.Stated)
        {
            return new SheetChange(StatedEdits.Type(sheet, place, typed));
        }

        if (place.Block == FormBlock.Cases)
        {
            BeamDocument changed = CaseEdits.Type(sheet.Document, place.Row, place.Column, typed);
            return new SheetChange(sheet with { Document = changed });
        }

        if (StickCells.Has(place.Block))
        {
            return new SheetChange(sheet with { Document = StickCells.Type(sheet.Document, place, typed) });
        }

        int rows = sheet.RowsOf(place.Block);
        if (place.Row < 0 || place.Row > rows || (place.Row == rows && typed is null))
        {
            return new SheetChange(sheet);
        }

        SheetChange begun = place.Row == rows
            ? RowEdits.Put(sheet, rows, FormRow.Blank(sheet.Document, place.Block))
            : new SheetChange(sheet);
        return begun with { Sheet = TypeInRow(begun.Sheet, place, typed) };
    }

    internal static SheetChange Paste(FormSheet sheet, Edit.PasteCells pasted)
    {
        ImmutableArray<FormColumn> columns = FormColumns.Of(sheet.Document, pasted.Place.Block);
        int first = columns.IndexOf(pasted.Place.Column);
        SheetChange change = new(sheet);
        int row = pasted.Place.Row;
        foreach (ImmutableArray<string> line in pasted.Lines)
        {
            for (int index = 0; index < line.Length && first + index < columns.Length; index++)
            {
                FormPlace place = new(pasted.Place.Block, row, columns[first + index]);
                SheetChange typed = Type(change.Sheet, place, line[index]);
                Func<int, int?> before = change.SupportRow;
                change = typed with { SupportRow = old => before(old) is int moved ? typed.SupportRow(moved) : null };
            }

            row++;
        }

        return change;
    }

    internal static SheetChange Answer(FormSheet sheet, int row, bool inAll)
    {
        LoadEntry load = LoadCells.Answer(sheet.Document.Loads[row], inAll, sheet.Document.Units);
        return new SheetChange(WithLoad(sheet, row, load));
    }

    private static BeamDocument TypeOwnWeight(BeamDocument document, FormColumn column, string? text) =>
        column == FormColumn.Size
            ? SupportCells.Whole(text ?? FormCells.Off, FormCells.OnOrOff) switch
            {
                FormCells.On => document with { SelfWeight = document.SelfWeight ?? new() { Case = OwnWeightCase } },
                FormCells.Off => document with { SelfWeight = null },
                _ => document,
            }
            : column == FormColumn.Case && (text is not null || document.SelfWeight is not null)
                ? document with { SelfWeight = new SelfWeightEntry { Case = text } }
                : document;

    private static FormSheet TypeInRow(FormSheet sheet, FormPlace place, string? text)
    {
        BeamDocument document = sheet.Document;
        UnitSystem system = document.Units;
        switch (place.Block)
        {
            case FormBlock.Spans:
                SpanEntry before = document.Spans[place.Row];
                SpanEntry span = SpanCells.Type(before, place.Column, text, system);
                document = document with { Spans = document.Spans.SetItem(place.Row, span) };
                return sheet with { Document = NamedSticks.Tied(document, place.Row, before) };
            case FormBlock.Supports:
                SupportEntry support = SupportCells.Type(document.Supports[place.Row], place.Column, text, system);
                return sheet with
                {
                    Document = document with { Supports = document.Supports.SetItem(place.Row, support) },
                };
            case FormBlock.Combinations:
                return sheet with { Document = CombinationCells.Type(document, place.Row, place.Column, text) };
            case FormBlock.Rolling:
                RollingEntry rolling = RollingCells.Type(document.Rolling[place.Row], place.Column, text, system);
                return sheet with { Document = document with { Rolling = document.Rolling.SetItem(place.Row, rolling) } };
            default:
                return TypeLoad(sheet, place, text, system);
        }
    }

    private static FormSheet TypeLoad(FormSheet sheet, FormPlace place, string? text, UnitSystem system)
    {
        bool wasBare = sheet.BareSizes.Contains(place.Row);
        LoadEntry load = LoadCells.Type(sheet.Document.Loads[place.Row], place.Column, text, system, wasBare);
        FormSheet typed = WithLoad(sheet, place.Row, load);
        bool isBare = place.Column == FormColumn.Size
            ? load.Kind == "point" && text is not null && LoadSize.Reads(text, QuantityKind.Number)
            : wasBare || LoadCells.IsAsked(sheet.Document.Loads[place.Row]);
        return typed with
        {
            BareSizes = isBare && load.Force is not null
                ? [.. sheet.BareSizes.Append(place.Row).Distinct().Order()]
                : [.. sheet.BareSizes.Where(row => row != place.Row)],
        };
    }

    private static FormSheet WithLoad(FormSheet sheet, int row, LoadEntry load) => sheet with
    {
        Document = sheet.Document with { Loads = sheet.Document.Loads.SetItem(row, load) },
    };
}
