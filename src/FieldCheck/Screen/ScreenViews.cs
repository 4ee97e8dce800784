using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>The views in their order.</summary>
internal static class ScreenViews
{
    /// <summary>All views, as the title line names them.</summary>
    internal static ImmutableArray<ScreenView> All { get; } = [ScreenView.Beam, ScreenView.Plots];

    /// <summary>The command that shows a view.</summary>
    /// <param name="view">The view.</param>
    internal static CommandName CommandOf(ScreenView view) =>
        view == ScreenView.Beam ? CommandName.BeamView : CommandName.PlotsView;

    /// <summary>The letter that stands for a view on the menu's page of views.</summary>
    /// <param name="view">The view.</param>
    internal static char LetterOf(ScreenView view) => char.ToLowerInvariant(view.ToString()[0]);

    /// <summary>The view so many further on, round.</summary>
    /// <param name="view">The view.</param>
    /// <param name="by">How many.</param>
    internal static ScreenView Next(ScreenView view, int by) =>
        All[(All.IndexOf(view) + by + All.Length) % All.Length];
}
