using System.Collections.Immutable;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen.Overlays;

/// <summary>
/// What lies over the view and takes the keys; Esc closes it. Closed set: the cases are the nested records.
/// </summary>
internal abstract record Overlay
{
    private Overlay()
    {
    }

    /// <summary>The menu.</summary>
    /// <param name="Page">Which page of it.</param>
    /// <param name="Choice">The entry that Enter takes, counted from 0.</param>
    internal sealed record Menu(MenuPage Page, int Choice = 0) : Overlay;

    /// <summary>The help.</summary>
    /// <param name="Filter">Only keys with these words are shown.</param>
    /// <param name="Choice">The line that Enter runs, counted from 0.</param>
    internal sealed record Help(LineText Filter, int Choice = 0) : Overlay;

    /// <summary>The beams to choose from.</summary>
    /// <param name="Found">All of them; null while they are being looked for.</param>
    /// <param name="Filter">Only names with these words are shown; or the path of a file.</param>
    /// <param name="Chosen">The one that Enter opens; null where none is shown.</param>
    /// <param name="Preview">What comes of the one chosen; null where it does not read or none is chosen.</param>
    internal sealed record OpenList(
        FoundBeams? Found, LineText Filter, BeamChoice? Chosen, Calculation? Preview) : Overlay
    {
        /// <summary>Nothing found yet, nothing typed.</summary>
        internal static OpenList Empty { get; } = new(null, LineText.Empty, null, null);
    }

    /// <summary>The sets of combinations to choose from.</summary>
    /// <param name="Found">All of them; null while they are being looked for.</param>
    /// <param name="Filter">Only those with these words are shown.</param>
    /// <param name="Choice">The one that Enter takes, counted from 0 among those shown.</param>
    internal sealed record SetList(CombinationSearch? Found, LineText Filter, int Choice = 0) : Overlay;

    /// <summary>What the cell that the person is on may be chosen from: shapes, grades, factors or rules.</summary>
    /// <param name="Place">The cell.</param>
    /// <param name="Catalogue">The shapes and grades; null while they are being looked for.</param>
    /// <param name="Filter">Only those with these words are shown.</param>
    /// <param name="Choice">The one that Enter takes, counted from 0 among those shown.</param>
    internal sealed record CatalogueList(
        FormPlace Place, SectionCatalogue? Catalogue, LineText Filter, int Choice = 0) : Overlay
    {
        /// <summary>The shapes that would do, which alone are shown; null: all of the catalogue are.</summary>
        internal WouldDo? Passing { get; init; }
    }

    /// <summary>The families that are tried for sections that would do, to be switched.</summary>
    /// <param name="List">The list of those sections, to which it goes back.</param>
    /// <param name="Choice">The line the person is on, counted from 0.</param>
    internal sealed record Families(CatalogueList List, int Choice = 0) : Overlay;

    /// <summary>What a beam would take, to be read.</summary>
    /// <param name="Sentences">The answers.</param>
    /// <param name="Choice">The line the person is on, counted from 0.</param>
    internal sealed record Answers(ImmutableArray<string> Sentences, int Choice = 0) : Overlay
    {
        /// <summary>Where a prop would have to stand, below the rest; empty where none is needed.</summary>
        internal ImmutableArray<string> Props { get; init; } = [];

        /// <summary>How stiff the prop stands, as typed; empty: it is rigid.</summary>
        internal string Stiffness { get; init; } = "";

        /// <summary>The stiffness that is being typed; null while nothing is.</summary>
        internal LineText? Draft { get; init; }
    }

    /// <summary>The file whose name was typed does not exist.</summary>
    /// <param name="Path">The name.</param>
    /// <param name="List">The list in which it was typed.</param>
    internal sealed record MissingFile(string Path, OpenList List) : Overlay;

    /// <summary>The line in which a name to save under is typed.</summary>
    /// <param name="Name">The name so far.</param>
    /// <param name="Then">What comes after saving.</param>
    internal sealed record NameLine(LineText Name, AfterSave Then) : Overlay;

    /// <summary>The work is not saved and would be lost.</summary>
    /// <param name="Then">What the person wants to do.</param>
    internal sealed record UnsavedQuestion(AfterSave Then) : Overlay;

    /// <summary>Something else stands where the work is to be saved.</summary>
    /// <param name="Request">The save that was refused.</param>
    /// <param name="Obstacle">Why.</param>
    internal sealed record SaveQuestion(SaveRequest Request, SaveObstacle Obstacle) : Overlay;

    /// <summary>Unsaved work of an earlier session is offered.</summary>
    /// <param name="Document">The beam as it was left.</param>
    /// <param name="Origin">Where it had come from.</param>
    /// <param name="Words">What it is.</param>
    /// <param name="HasMore">True: there is other such work too.</param>
    internal sealed record RecoveryOffer(
        BeamDocument Document, BeamOrigin Origin, string Words, bool HasMore) : Overlay;

    /// <summary>The line in which the name of a file for the working or the record is typed.</summary>
    /// <param name="Kind">Which of them.</param>
    /// <param name="Name">The name so far.</param>
    internal sealed record PaperName(PaperKind Kind, LineText Name) : Overlay;

    /// <summary>A file stands where something to be printed is to be saved.</summary>
    /// <param name="Request">The save that was refused.</param>
    internal sealed record PaperQuestion(Effect.SavePaper Request) : Overlay;

    /// <summary>The line in which a place is typed.</summary>
    /// <param name="Text">The place so far.</param>
    /// <param name="Use">What it is for.</param>
    internal sealed record PlaceLine(LineText Text, PlaceUse Use = PlaceUse.ReadOff) : Overlay;

    /// <summary>All results, to scroll.</summary>
    /// <param name="Choice">The line the person is on, counted from 0.</param>
    internal sealed record Results(int Choice = 0) : Overlay;

    /// <summary>What the person may want otherwise.</summary>
    /// <param name="Choice">The line the person is on, counted from 0.</param>
    internal sealed record Settings(int Choice = 0) : Overlay;

    /// <summary>Keys without a column, one a line.</summary>
    /// <param name="Page">Which keys.</param>
    /// <param name="Choice">The line the person is on, counted from 0.</param>
    /// <param name="Draft">What is being typed there; null while nothing is.</param>
    internal sealed record Details(DetailPage Page, int Choice = 0, LineText? Draft = null) : Overlay;
}
