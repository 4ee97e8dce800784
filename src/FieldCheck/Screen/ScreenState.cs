using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Sections;
using FieldCheck.Screen.StatedFigures;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>All that the screen knows. Immutable: an event makes a new one.</summary>
internal sealed record ScreenState
{
    /// <summary>Where the beam came from.</summary>
    internal required BeamOrigin Origin { get; init; }

    /// <summary>The beam as typed, now and before.</summary>
    internal required History History { get; init; }

    /// <summary>The beam as its origin holds it; while the beam is typed the same, nothing is unsaved.</summary>
    internal required BeamDocument Stored { get; init; }

    /// <summary>How a beam is calculated.</summary>
    internal required Func<BeamDocument, Calculation> Calculate { get; init; }

    /// <summary>What comes of the beam without what is just being typed.</summary>
    internal required Calculation Settled { get; init; }

    /// <summary>What comes of the beam with what is just being typed; null while nothing is.</summary>
    internal Calculation? Tried { get; init; }

    /// <summary>The cell that the person is on: each of the views that have cells keeps its own.</summary>
    internal required FormPlace Focus
    {
        get => View switch
        {
            ScreenView.Stated => StatedFocus ?? FormMoves.FirstToState(Sheet),
            ScreenView.Cases => CasesFocus,
            ScreenView.Section => SectionFocus,
            _ => FormFocus,
        };
        init
        {
            ScreenView view = FormMoves.ViewOf(value.Block);
            FormFocus = view == ScreenView.Beam ? value : FormFocus;
            StatedFocus = view == ScreenView.Stated ? value : StatedFocus;
            CasesFocus = view == ScreenView.Cases ? value : CasesFocus;
            SectionFocus = view == ScreenView.Section ? value : SectionFocus;
        }
    }

    /// <summary>How many lines of the envelopes are scrolled past.</summary>
    internal int CasesTop { get; init; }

    /// <summary>How many lines of the checks are scrolled past.</summary>
    internal int SectionTop { get; init; }

    /// <summary>The check whose work is shown, counted from 0; null: the one that is used up most.</summary>
    internal int? CheckChosen { get; init; }

    /// <summary>How many lines of what comes of the stated figures are scrolled past.</summary>
    internal int StatedTop { get; init; }

    /// <summary>The column where the run of Tabs began, to which Enter goes back; null outside such a run.</summary>
    internal FormColumn? TabStart { get; init; }

    /// <summary>What is being typed; null while nothing is.</summary>
    internal CellDraft? Draft { get; init; }

    /// <summary>What was dropped last, for undo to bring back.</summary>
    internal CellDraft? Dropped { get; init; }

    /// <summary>The cell that was just accepted: the message line reads it back until the next key.</summary>
    internal FormPlace? ReadBack { get; init; }

    /// <summary>What is told until the next key.</summary>
    internal Notice? Notice { get; init; }

    /// <summary>The view.</summary>
    internal ScreenView View { get; init; }

    /// <summary>What the person wants otherwise than it comes.</summary>
    internal Preferences Preferences { get; init; } = new();

    /// <summary>True: only ASCII can be shown.</summary>
    internal bool IsAsciiOnly { get; init; }

    /// <summary>Columns and lines of the window as it was last told.</summary>
    internal (int Width, int Height) Size { get; init; } = (80, 24);

    /// <summary>The point that the working takes moments about; null: the one that leaves fewest unknowns.</summary>
    internal MomentPoint? About { get; init; }

    /// <summary>The line of the working that is uppermost where there are enough below it, counted from 0.</summary>
    internal int WorkingTop { get; init; }

    /// <summary>The working of what is shown; like the results, it follows every event.</summary>
    internal ShownWorking Worked
    {
        get => field ?? ShownWorking.Of(null, this);
        init;
    }

    /// <summary>Where the reading line was put [m from the left end]; null: nowhere yet.</summary>
    internal double? Reading { get; init; }

    /// <summary>What the Plots view draws the influence line of; null: it draws the curves.</summary>
    internal InfluenceChoice? Influence { get; init; }

    /// <summary>Which families are tried for sections that would do; kept from beam to beam.</summary>
    internal FamilyChoice Families { get; init; } = FamilyChoice.Usual;

    /// <summary>What lies over the view; null: nothing.</summary>
    internal Overlay? Overlay { get; init; }

    /// <summary>The row deleted last, to be put back elsewhere.</summary>
    internal FormRow? DeletedRow { get; init; }

    /// <summary>True: Enter walks the cells that the preset asks for.</summary>
    internal bool IsAsking { get; init; }

    /// <summary>The save that the shell has been asked for and has not answered.</summary>
    internal SaveRequest? Saving { get; init; }

    /// <summary>When it was last saved, as "09:41"; null: not in this session.</summary>
    internal string? SavedAt { get; init; }

    /// <summary>
    /// Which combination's results are shown, counted from 0; the last there is where there are fewer.
    /// </summary>
    internal int Combination { get; init; }

    /// <summary>The commands and their keys.</summary>
    internal CommandTable Table => Preferences.Table;

    /// <summary>The beam as the form edits it.</summary>
    internal FormSheet Sheet => History.Sheet;

    /// <summary>The beam as typed.</summary>
    internal BeamDocument Document => History.Sheet.Document;

    /// <summary>True: the beam is typed otherwise than its origin holds it.</summary>
    internal bool IsUnsaved => !History.Holds(Stored);

    /// <summary>Which beam the results on the screen belong to.</summary>
    internal ResultsAge Age => Draft is null || IsTriedShown ? ResultsAge.UpToDate : ResultsAge.BeforeThisCell;

    /// <summary>What the results on the screen are of.</summary>
    internal Calculation Shown => IsTriedShown ? Tried! : Settled;

    /// <summary>Which of the combinations that there are is shown, counted from 0.</summary>
    internal int CombinationShown => Math.Min(Combination, Math.Max(CombinationCount - 1, 0));

    /// <summary>How many combinations there are results of.</summary>
    internal int CombinationCount => Shown.Outcome is BeamOutcome.Stands stands ? stands.Combinations.Length : 0;

    private FormPlace FormFocus { get; init; } = FormMoves.First;

    private FormPlace CasesFocus { get; init; } = FormMoves.FirstOfCases;

    private FormPlace SectionFocus { get; init; } = FormMoves.FirstOfSection;

    /// <summary>Where the person is among the stated figures; null: not been there yet.</summary>
    private FormPlace? StatedFocus { get; init; }

    // What is half typed may push a load off the beam: while the rest of the beam stood without it, the results before
    // it are kept, and said to be so.
    private bool IsTriedShown => Tried is not null && Draft is not null && CellProblems.At(Tried, Draft.Place) is null
        && (Tried.Problems.IsEmpty || !Settled.Problems.IsEmpty);

    /// <summary>The screen with a beam just opened on it.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="origin">Where it came from.</param>
    /// <param name="calculate">
    /// How a beam is calculated; called at every keystroke that changes what would be calculated.
    /// </param>
    internal static ScreenState Start(
        BeamDocument document, BeamOrigin origin, Func<BeamDocument, Calculation> calculate) => new()
        {
            Origin = origin,
            History = History.Start(new FormSheet(document)),
            Stored = document,
            Calculate = calculate,
            Settled = calculate(document),
            Focus = FormMoves.First,
        };

    /// <summary>The state with the person on a cell that there is, whatever has changed.</summary>
    internal ScreenState WithinTheBeam() => View switch
    {
        ScreenView.Stated =>
            this with { Focus = FormMoves.Within(Sheet, Focus), StatedTop = StatedViewPicture.Layout.Top(this, StatedTop) },
        ScreenView.Section =>
            this with { Focus = FormMoves.Within(Sheet, Focus), SectionTop = SectionViewPicture.Layout.Top(this, SectionTop) },
        ScreenView.Cases => this with { Focus = FormMoves.Within(Sheet, Focus), CasesTop = CasesViewPicture.Layout.Top(this, CasesTop) },
        _ => this,
    };

    /// <summary>The step that this state is, with nothing for the shell to do.</summary>
    internal ScreenStep Step(params ReadOnlySpan<Effect> effects) => new(this, [.. effects]);
}
