using FieldCheck.Screen;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What is asked before a line is read.</summary>
internal static class PlainQuestions
{
    /// <summary>The question, with a blank behind it; the answer is typed on the same line.</summary>
    /// <param name="state">The conversation.</param>
    internal static string Of(PlainState state) => state.Form.Overlay switch
    {
        Overlay.RecoveryOffer => "Take it up again, yes or no? ",
        Overlay.UnsavedQuestion => "Yes, no or stay? ",
        Overlay.NameLine => "Save under which name? Enter for none: ",
        Overlay.PaperName { Kind: PaperKind.Record } =>
            "Save the record under which name, ending in .pdf, .html, .md or .txt? Enter for none: ",
        Overlay.PaperName => "Save the working under which name? Enter for none: ",
        Overlay.PaperQuestion => "Overwrite, another name or back? ",
        Overlay.SaveQuestion { Obstacle: SaveObstacle.ChangedOnDisk } => "Mine, theirs, another name or back? ",
        Overlay.SaveQuestion => "Overwrite, another name or back? ",
        Overlay.MissingFile => "Begin a new beam of that name, yes or no? ",
        Overlay.SetList list => PlainSets.Question(state.Form, list),
        Overlay.CatalogueList => PlainCatalogue.Question,
        Overlay.OpenList => "Which? Its number, part of its name or a file; Enter for none: ",
        _ => state.Ask switch
        {
            PlainAsk.Cell cell => OfCell(state.Form, cell),
            PlainAsk.Size size =>
                PlainWords.SizeQuestion(state.Form.Settled, size.Place.Row) + ". Which, t or m? ",
            PlainAsk.Key key => $"{OfKey(state.Form.Document, key.Path)}? ",
            _ => "Next? ",
        },
    };

    private static string OfKey(BeamDocument document, string key)
    {
        string words = PlainWords.Sentence(DetailLines.WordsOf(key)).TrimEnd('.');
        return DocumentCells.Get(document, key) is string stands ? $"{words} ({stands})" : words;
    }

    private static string OfCell(ScreenState form, PlainAsk.Cell ask)
    {
        FormPlace place = ask.Place;
        if (place.Block == FormBlock.Stated)
        {
            return $"{Words(place, FormWords.Head(form.Sheet, place.Block, place.Row))}{Standing(form, place)}? ";
        }

        if (StickCells.Has(place.Block))
        {
            return $"{PlainStickWords.Asked(place.Column, FormWords.Row(form.Sheet, place.Block, place.Row))}{Standing(form, place)}? ";
        }

        bool isOfCases = place.Block is FormBlock.Cases or FormBlock.Combinations or FormBlock.Rolling;
        string Asked(string row) => isOfCases ? OfCases(place, row, form.Document) : Words(place, row);
        if (FormMoves.IsEmptyRow(form.Sheet, place))
        {
            string next = place.Block == FormBlock.Supports
                ? "the next support"
                : $"{FormColumns.RowName(place.Block)} {place.Row + 1}";
            return $"{Asked(next)}, or Enter for no more? ";
        }

        return $"{Asked(FormWords.Row(form.Sheet, place.Block, place.Row))}{Standing(form, place)}? ";
    }

    private static string Standing(ScreenState form, FormPlace place)
    {
        FormCell cell = new FormCellView(form).At(place);
        return cell.Text is "" or PlainWords.Nothing ? ""
            : cell.Role == Role.Text ? $" ({cell.Text})"
            : $" (by itself {cell.Text})";
    }

    private static string OfCases(FormPlace place, string row, BeamDocument document) => (place.Block, place.Column) switch
    {
        (FormBlock.Cases, FormColumn.Case) => $"Name of {row}",
        (FormBlock.Cases, FormColumn.Pattern) => $"Loads of {row} bay by bay, yes or no",
        (FormBlock.Cases, _) => $"Own weight in {row}, yes or no",
        (_, FormColumn.Name) => $"Name of {row}, or its sum",
        (_, FormColumn.Basis) => $"Is {row} service or factored",
        (_, FormColumn.Label) => $"Label of {row}",
        (_, FormColumn.Axles) => $"Axles of {row}",
        (_, FormColumn.Case) => $"Case of {row}",
        (_, FormColumn.Impact) => $"Impact of {row}",
        _ => $"Factor of {FormColumns.Heading(document, place.Column)} in {row}",
    };

    private static string Words(FormPlace place, string row) => place.Column switch
    {
        FormColumn.Length => $"Length of {row}",
        FormColumn.Reading => $"Tape reading at the far end of {row}",
        FormColumn.Section => $"Section of {row}",
        FormColumn.Material => $"Material of {row}",
        FormColumn.Place => $"Place of {row}",
        FormColumn.Kind => $"Kind of {row}",
        FormColumn.Settles => $"Settlement of {row}",
        FormColumn.Acts => $"Which way {row} holds: both, up or down",
        FormColumn.Label => $"Label of {row}",
        FormColumn.Size when place.IsOwnWeight => "Own weight, on or off",
        FormColumn.Size => $"Size of {row}",
        FormColumn.From => $"Place of {row}, or where it begins",
        FormColumn.To => $"Where {row} ends, if it is spread",
        FormColumn.Case => $"Case of {row}",
        FormColumn.Vertical or FormColumn.Horizontal or FormColumn.Moment =>
            $"{place.Column} stated of {row}",
        FormColumn.Under => $"Stated of {row} for which combination or case, or max or min",
        FormColumn.Basis => $"Stated of {row} as service, factored or unknown",
        FormColumn.Allow => $"By how much it may differ at {row}",
        FormColumn.Source => $"Where that is stated of {row}",
        FormColumn.Support => "Of which support it is stated",
        _ => $"Note of {row}",
    };
}
