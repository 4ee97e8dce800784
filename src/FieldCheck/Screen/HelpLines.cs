using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>What the help says.</summary>
internal static class HelpLines
{
    /// <summary>How a beam is checked in a minute.</summary>
    internal static ImmutableArray<string> InAMinute { get; } =
    [
        "HOW TO CHECK A BEAM IN A MINUTE",
        "Type the length: 3.6, 3600mm, 12'-6 1/2\". Enter goes down, Tab goes right.",
        "A pin stands at the left end, a roller at the right. Type where they stand:",
        "  0.3, joint 1, end - 6 in. Space: pin, roller, fixed, guide, spring.",
        "A load's size says its kind: 12 a force, 12/m spread, 3..6/m varies,",
        "  5 kNm turns, 1.2t a weight, 12 psf * 5 ft an area load.",
        "From and to: 0.6, A + 4 ft, mid 1. No to: at one place, or as far as the end.",
        "The last row of a block is empty: type there to add. Enter there goes on.",
        "Every number is read back in the line above the keys: slips are found there.",
        "A cell marked ! does not read, one marked ? asks; till then figures are --.",
        "Results follow every key; RESULTS says whether they are up to date.",
        "^Z undoes everything. Esc drops the typing and never leaves.",
        "^S saves. ^O opens a preset or a file. ^Q leaves.",
    ];

    /// <summary>All lines for a view: how it is done, then the keys; or of the keys those with certain words.</summary>
    /// <param name="view">The view.</param>
    /// <param name="filter">Words that must stand in a line; empty for all.</param>
    /// <returns>At least one line.</returns>
    internal static ImmutableArray<HelpLine> Of(ScreenView view, string filter)
    {
        ImmutableArray<HelpLine> keys =
        [
            .. CommandTable.All
                .Where(command => view == ScreenView.Beam || command.Group == CommandGroup.Beam)
                .Select(Line),
        ];
        string[] words = filter.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return
            [
                .. InAMinute.Select(text => new HelpLine("", text)),
                new HelpLine("", ""),
                new HelpLine("", $"KEYS IN THE {view.ToString().ToUpperInvariant()} VIEW (Enter runs the line)"),
                .. keys,
            ];
        }

        ImmutableArray<HelpLine> found =
            [.. keys.Where(line => words.All(word => $"{line.Keys} {line.Words}".Contains(word, StringComparison.OrdinalIgnoreCase)))];
        return found.IsEmpty ? [new HelpLine("", "No key has these words.")] : found;
    }

    private static HelpLine Line(ScreenCommand command)
    {
        string[] ways = [.. new[] { command.KeyWords, command.MenuWords }.Where(way => way.Length > 0)];
        return new HelpLine(string.Join("  ", ways), command.Words, command);
    }
}
