using System.Collections.Immutable;

namespace FieldCheck.Reporting.Working;

/// <summary>A working for the ear: whole sentences on a line each, nothing set in columns.</summary>
public static class SpokenWorking
{
    /// <summary>The width to ask a working for, so that no sentence is broken.</summary>
    public const int Width = 1000;

    /// <summary>The lines without the blanks that set them in columns, and without empty lines.</summary>
    /// <param name="lines">The lines of a working.</param>
    public static ImmutableArray<string> Of(IEnumerable<string> lines) =>
    [
        .. lines
            .Select(line => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
            .Where(line => line.Length > 0),
    ];
}
