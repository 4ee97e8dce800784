using System.Collections.Immutable;

namespace FieldCheck.Reporting.Tables;

/// <summary>Lines of the results panel that stand or fall together.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Rank">The lower, the sooner it is given room.</param>
/// <param name="Brief">What must be said in the header where there is no room for it; null: nothing.</param>
internal sealed record PanelBlock(ImmutableArray<string> Lines, int Rank, string? Brief = null)
{
    /// <summary>A sentence broken to the panel's width.</summary>
    internal static PanelBlock Wrapped(string text, int width, int rank) =>
        new([.. TextFlow.Wrap(text, width - 2).Select(line => "  " + line)], rank);
}
