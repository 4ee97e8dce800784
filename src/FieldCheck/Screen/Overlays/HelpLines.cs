using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Overlays;

/// <summary>What the help says.</summary>
internal static class HelpLines
{
    /// <summary>How a beam is checked in a minute.</summary>
    /// <param name="table">The commands.</param>
    internal static ImmutableArray<string> InAMinute(CommandTable table) =>
    [
        "HOW TO CHECK A BEAM IN A MINUTE",
        "Type the length: 3.6, 3600mm, 12'-6 1/2\".",
        "Enter goes down, Tab goes right.",
        "A pin stands at the left end, a roller at the right.",
        "  Type where they stand: 0.3, joint 1, end - 6 in.",
        "  Space steps: pin, roller, fixed, guide, spring.",
        "A load's size says its kind: 12 a force, 12/m spread,",
        "  3..6/m varies, 5 kNm turns, 1.2t a weight,",
        "  12 psf * 5 ft an area load.",
        "From and to: 0.6, A + 4 ft, mid 1. Without to: at one",
        "  place, or spread as far as the end.",
        "The last row of a block is empty: type there to add.",
        "Numbers are read back above the keys: slips show there.",
        "A cell marked ! does not read, one marked ? asks.",
        "A row marked ~ has more to it than its columns: / m.",
        "Results follow every key; -- until every cell reads.",
        $"{table.KeyOf(CommandName.Undo)} undoes everything. Esc drops the typing, never leaves.",
        $"{table.KeyOf(CommandName.Save)} saves. {table.KeyOf(CommandName.Open)} opens a preset or a file. "
            + $"{table.KeyOf(CommandName.Quit)} leaves.",
    ];

    /// <summary>How the Plots view is read.</summary>
    internal static ImmutableArray<string> ReadingOff { get; } =
    [
        "HOW TO READ THE CURVES",
        "Left and Right move the reading line; Tab goes from mark",
        "  to mark: supports, load edges, peaks, zeros.",
        "Type a place to go there: 1.25, 4 ft, then Enter;",
        "  = first for A + 2 ft, mid 1, end.",
        "What acts there stands below; at a jump, both sides.",
        "All peaks are named below the curves.",
        "v b d n show and hide shear, moment, deflection, axial.",
        "i draws an influence line: of a support by its letter,",
        "  of V or M at the reading line, or M 1.2. Esc ends it.",
        "e: stars, the envelope of all that may happen.",
        "f fills, u turns the sagging side, h draws half blocks:",
        "  kept for next time.",
    ];

    /// <summary>How the Working view is read.</summary>
    /// <param name="table">The commands.</param>
    internal static ImmutableArray<string> FollowingTheWorking(CommandTable table) =>
    [
        "HOW TO FOLLOW THE WORKING",
        "One operation a line, each with the numbers as printed:",
        "  whoever works them again comes to what stands there.",
        "It comes from formulas of its own, not from the solver:",
        "  a second opinion on the results.",
        "Moments are taken about the point that leaves fewest",
        $"  unknowns; {table.KeyOf(CommandName.NextPoint)} goes through the supports and hinges.",
        "Type a place to take moments there: 1.25, 4 ft, Enter;",
        $"  {table.KeyOf(CommandName.MomentsAbout)} first for A + 2 ft, mid 1, end.",
        $"{table.KeyOf(CommandName.ShortForm)} leaves the explaining out, {table.KeyOf(CommandName.StepNames)} the names of the steps:",
        "  kept for next time.",
        $"{table.KeyOf(CommandName.SaveWorking)} saves the full form as a text file.",
    ];

    /// <summary>How stated figures are judged.</summary>
    /// <param name="table">The commands.</param>
    internal static ImmutableArray<string> JudgingWhatIsStated(CommandTable table) =>
    [
        "HOW TO JUDGE WHAT A SUPPLIER STATES",
        "Type each figure beside its support: 10.3, 2250 lbf;",
        "  -1.2 is held down. Enter goes to the next support.",
        "Stated for more than one combination: a row for each;",
        $"  {table.KeyOf(CommandName.CopyRow)} copies one, its name goes under \"under\".",
        "basis: service or factored, by Space; unknown is not",
        "  judged. allow: how far off it may be, 2 % if empty.",
        "LOW: the support gets more than stated, the unsafe side.",
        "HIGH: it gets less. AGREES and WITHIN BAND: as stated.",
        "Below: whether the stated figures carry the loads.",
        "A row emptied of its last figure is taken out.",
    ];

    /// <summary>How a section is held against limits.</summary>
    /// <param name="table">The commands.</param>
    internal static ImmutableArray<string> HoldingAgainstLimits(CommandTable table) =>
    [
        "HOW TO ASK WHETHER THE BEAM IS ENOUGH",
        "shape: of the catalogue, IPE 200, or sides, 75x225.",
        "  Or Tab on: width, depth, plies; diameter, wall; plates;",
        "  figures. stands: Space lays it flat.",
        "grade: C24, S275; or E and stresses of your own.",
        "Space in shape, grade, factors: the catalogue, to search.",
        "allow: all safety inside, against service loads.",
        "design: after all factors, against factored loads.",
        "yield: counts only by rules; Space chooses them.",
        "deflection: L/360, overhang L/180, or a length.",
        "unbraced: a length, or braced by Space.",
        "Below, each check: have, allow, used, a bar; > is over.",
        "NOT JUDGED says why: a limit not given is never OK.",
        $"{table.KeyOf(CommandName.PreviousCheck)} and {table.KeyOf(CommandName.NextCheck)} show the work of each check.",
        "What was not checked is always named below them.",
    ];

    /// <summary>How cases are combined.</summary>
    /// <param name="table">The commands.</param>
    internal static ImmutableArray<string> CombiningCases(CommandTable table) =>
    [
        "HOW TO COMBINE CASES",
        "A load's case is typed in the form; its name is changed",
        "  here, wherever it is used.",
        "bay by bay: Space; its loads may then stand in some bays",
        "  and not in others, whichever is worst.",
        "A combination: its name, then a factor for each case.",
        "  Empty counts nothing. Or its name alone tells them:",
        "  1.2 dead + 1.6 live.",
        "basis, by Space: service and factored are kept apart.",
        "A rolling load's axles: 12 kN, 12 kN at 1.2 m; each at",
        "  its distance from the first. It runs both ways.",
        "Below: the worst of all of it, and what governs there;",
        $"  {table.KeyOf(CommandName.NextCombination)} shows the combinations one by one elsewhere.",
    ];

    /// <summary>All lines for a view: how it is done, then the keys; or of the keys those with certain words.</summary>
    /// <param name="table">The commands.</param>
    /// <param name="view">The view.</param>
    /// <param name="filter">Words that must stand in a line; empty for all.</param>
    /// <returns>At least one line.</returns>
    internal static ImmutableArray<HelpLine> Of(CommandTable table, ScreenView view, string filter)
    {
        ImmutableArray<HelpLine> keys =
        [
            .. table.In(view).Select(Line),
        ];
        string[] words = filter.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return
            [
                .. ScreenViews.Of(view).Help(table).Select(text => new HelpLine("", text)),
                new HelpLine("", ""),
                new HelpLine("", $"KEYS IN THE {view.ToString().ToUpperInvariant()} VIEW (Enter runs the line)"),
                .. keys,
            ];
        }

        ImmutableArray<HelpLine> found =
            [.. keys.Where(line => words.All(word =>
                $"{line.Keys} {line.Words}".Contains(word, StringComparison.OrdinalIgnoreCase)))];
        return found.IsEmpty ? [new HelpLine("", "No key has these words.")] : found;
    }

    private static HelpLine Line(ScreenCommand command)
    {
        string[] ways = [.. new[] { command.KeyWords, command.MenuWords }.Where(way => way.Length > 0)];
        return new HelpLine(string.Join("  ", ways), command.Words, command);
    }
}
