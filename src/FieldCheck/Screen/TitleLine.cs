using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen;

/// <summary>The uppermost line: which beam, whether it is saved, its units, the views.</summary>
internal static class TitleLine
{
    private const string Help = "? help";
    private const string Back = "Esc back";
    private const string Small = "small: / v";
    private const int LongestName = 24;

    /// <summary>The line.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns of the line.</param>
    /// <param name="isSmall">True: not everything finds room, so it is said how one thing at a time is seen.</param>
    internal static PictureLine Of(ScreenState state, int width, bool isSmall)
    {
        string units = state.Document.Units == UnitSystem.Us ? "lbf kip ft in" : "kN m mm";
        string system = state.Document.Units == UnitSystem.Us ? "US" : "SI";
        bool isTyped = state.Overlay is Overlay.Details or Overlay.OpenList or Overlay.SetList or Overlay.CatalogueList or Overlay.Families or Overlay.NameLine
            or Overlay.PaperName or Overlay.Answers { Draft: not null } or Overlay.PlaceLine;
        string last = isTyped ? Back : isSmall ? Small : Help;
        string[] names = [.. ScreenViews.All.Select(view => view == state.View ? $"[{view}]" : view.ToString())];
        string views = string.Join(' ', names);
        LineWriter line = new(width);
        if (state.Origin.IsExample && !state.IsUnsaved)
        {
            line.Add("EXAMPLE ", Role.Warn);
        }

        line.Add(TextColumns.Cut(state.Origin.Name, Math.Min(LongestName, width - last.Length - 4)))
            .Add(state.IsUnsaved ? " *" : "", Role.Warn);
        bool isSaidWhen = state.SavedAt is not null && width >= 100;
        line.Add(isSaidWhen ? $"   saved {state.SavedAt}" : "", Role.Faint);
        int right = width - last.Length;
        if (line.Column + units.Length + views.Length + 7 <= right)
        {
            line.Add("   ").Add(units, Role.Faint);
            line.To(Math.Max(line.Column + 2, (right - views.Length) / 2 + width / 8));
        }
        else if (width >= 40 && line.Column + system.Length + names[(int)state.View].Length + 7 <= right)
        {
            line.Add("  ").Add(system, Role.Faint).Add(" ");
        }

        if (line.Column + views.Length + 2 <= right)
        {
            line.To(line.Column + 1);
            foreach ((ScreenView view, string name) in ScreenViews.All.Zip(names))
            {
                line.Add(view == ScreenViews.All[0] ? "" : " ")
                    .Add(name, target: new LinkTarget.Command(ScreenViews.Of(view).Command));
            }
        }
        else if (line.Column + 3 + names[(int)state.View].Length <= right)
        {
            line.Add("  ").Add(names[(int)state.View], target: new LinkTarget.Command(CommandName.Views));
        }

        LinkTarget help = new LinkTarget.Command(isSmall ? CommandName.Views : CommandName.Help);
        return line.To(right).Add(right >= line.Column ? last : "", Role.Faint, help).End();
    }
}
