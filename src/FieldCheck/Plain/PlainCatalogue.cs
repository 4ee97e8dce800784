using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Reporting.Record;
using FieldCheck.Screen;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Plain;

/// <summary>Lists of the catalogue from which one thing is taken by its number or its name.</summary>
internal static partial class PlainCatalogue
{
    private const int MostListed = 10;

    /// <summary>What is asked beside a list.</summary>
    internal const string Question = "Which? Its number or more of its name; Enter for none: ";

    /// <summary>The sections that would do, lightest first.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="list">The list, with those that pass.</param>
    /// <param name="isAsked">True: the families were asked for by name.</param>
    internal static PlainStep ThatDo(PlainState state, Overlay.CatalogueList list, bool isAsked)
    {
        WouldDo found = list.Passing!;
        string said = WouldDoWords.Count(found);
        string figures = found.IsByArea ? "area" : "weight";
        string[] before =
        [
            PlainWords.Sentence(found.Passing.IsEmpty ? said : $"{said}: {figures}, share used and by which check"),
            .. CataloguePicture.About(state.Form, found, isAsked),
            SpokenAnswer.Aloud(JudgedByWords.Of(state.Form.Settled.Checks)),
            SpokenAnswer.Aloud(JudgedByWords.NotChecked(state.Form.Settled.Checks)),
        ];
        return found.Passing.IsEmpty ? state.Say(before) : Listed(state, list, before);
    }

    /// <summary>Looks for a name that the catalogue does not know, once it is there.</summary>
    /// <param name="state">The conversation; what it asks is asked on where nothing is found.</param>
    /// <param name="place">The cell that the name was typed for.</param>
    /// <param name="text">The name.</param>
    internal static PlainStep Search(PlainState state, FormPlace place, string text)
    {
        ScreenState form = state.Form with { Overlay = new Overlay.CatalogueList(place, null, LineText.Empty) };
        return (state with { Wanted = text }).With(form.Step(new Effect.FindCatalogue()));
    }

    /// <summary>The catalogue is there: what has the letters typed is listed, else why the name is not taken is said.</summary>
    /// <param name="step">The step so far.</param>
    /// <param name="list">The list.</param>
    internal static PlainStep Found(PlainStep step, Overlay.CatalogueList list)
    {
        string text = step.State.Wanted ?? "";
        PlainState state = step.State with { Wanted = null };
        PlainState closed = state with { Form = state.Form with { Overlay = null } };
        bool isGrade = list.Place.Column == FormColumn.Grade;
        string what = isGrade ? "grade" : "shape";
        Overlay.CatalogueList named = list with { Filter = LineText.Of(text) };
        bool isKnown = isGrade ? list.Catalogue!.Grade(text) is not null : list.Catalogue!.Shape(text) is not null;
        if (!isKnown && CatalogueChoices.CountOf(state.Form, named) > 0)
        {
            return Listed(state, named, $"No {what} of the catalogue is called {text}. Near it:");
        }

        if (isKnown || closed.Ask is not null)
        {
            return PlainCells.Answer(
                closed, closed.Ask as PlainAsk.Cell ?? new PlainAsk.Cell(list.Place, PlainWalk.Once), text, isSearched: true);
        }

        PlainState typed = PlainCells.Make(closed, new Edit.TypeCell(list.Place, text), list.Place);
        return closed.Say(
            PlainWords.Sentence(CellProblems.At(typed.Form.Settled, list.Place)?.Text ?? $"no {what} is called {text}"),
            PlainWords.Sentence($"a {FormColumns.RowName(list.Place.Block)} has {PlainSticks.CellsOf(list.Place.Block)}"));
    }

    /// <summary>What an answer to a list comes to.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="list">The list.</param>
    /// <param name="line">The answer.</param>
    internal static PlainStep Answer(PlainState state, Overlay.CatalogueList list, string line)
    {
        PlainState closed = state with { Form = state.Form with { Overlay = null } };
        ImmutableArray<CatalogueChoice> shown = CatalogueChoices.Of(state.Form, list);
        if (line.Length == 0)
        {
            return closed.Say("Nothing is taken.");
        }

        // A shape may be called by a number; of the rules none is.
        if (int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && ((number >= 1 && number <= shown.Length) || list.Place.Column == FormColumn.Rules))
        {
            return number >= 1 && number <= shown.Length
                ? Take(closed, list, shown[number - 1])
                : state.Say($"There is no {number} here: there {(shown.Length == 1 ? "is" : "are")} {shown.Length}.");
        }

        Overlay.CatalogueList named = list with { Filter = LineText.Of(line) };
        ImmutableArray<CatalogueChoice> meant = CatalogueChoices.Of(state.Form, named);
        return line.Equals("list", StringComparison.OrdinalIgnoreCase) ? Listed(state, list with { Filter = LineText.Empty })
            : meant.FirstOrDefault(choice => choice.Name.Equals(line, StringComparison.OrdinalIgnoreCase)) is CatalogueChoice exact
            ? Take(closed, list, exact)
            : meant switch
            {
                [CatalogueChoice one] => Take(closed, list, one),
                [_, ..] => Listed(state, named),
                _ when PlainCommands.Of(line) is not null => PlainCommands.Run(closed, line),
                _ => state.Say($"Nothing here has these words: {line}. list lists all."),
            };
    }

    private static PlainStep Take(PlainState closed, Overlay.CatalogueList list, CatalogueChoice chosen)
    {
        PlainAsk.Cell ask = closed.Ask is PlainAsk.Cell asked && asked.Place == list.Place
            ? asked
            : new PlainAsk.Cell(list.Place, PlainWalk.Once);
        PlainState put = PlainCells.Make(closed, chosen.Put, list.Place);
        return PlainCells.GoOn(put, ask, $"{chosen.Name} is taken; undo takes it back.");
    }

    /// <summary>What the list has, by numbers, and the question which of it is meant.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="list">The list.</param>
    /// <param name="before">What is said first.</param>
    internal static PlainStep Listed(PlainState state, Overlay.CatalogueList list, params ReadOnlySpan<string> before)
    {
        ImmutableArray<CatalogueChoice> shown = CatalogueChoices.Of(state.Form, list);
        PlainState asked = state with { Form = state.Form with { Overlay = list } };
        int more = shown.Length - MostListed;
        return asked.Say(
        [
            .. before,
            .. shown.Take(MostListed).Select((choice, index) =>
                string.Create(CultureInfo.InvariantCulture, $"{index + 1}: {SpokenAnswer.Aloud(Said(choice))}.")),
            .. more > 0 ? new[] { $"And {more} more: type more of a name." } : [],
        ]);
    }

    private static string Said(CatalogueChoice choice) =>
        choice.Facts.IsEmpty ? Gap().Replace(choice.Line.Trim(), ", ") : string.Join(", ", choice.Facts);

    // Columns are parted by blanks to the eye, by commas to the ear.
    [GeneratedRegex("  +", RegexOptions.CultureInvariant)]
    private static partial Regex Gap();
}
