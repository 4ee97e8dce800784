using System.Text;
using FieldCheck.Screen.Overlays;

namespace FieldCheck.Screen.Keyboard;

/// <summary>The list of all keys as a page of text: docs/keys.md.</summary>
internal static class KeyList
{
    /// <summary>The page, in Markdown.</summary>
    internal static string Markdown()
    {
        StringBuilder page = new();
        page.Append("# Keys\n\n");
        page.Append("Made from the program's own table of commands; a test fails where the two differ.\n");
        page.Append("`^D` is Ctrl and D. `/ c` is the menu: a slash, then the letter.\n"
            + "The name in the last column binds the command to other keys: see [settings.md](settings.md).\n");
        Table(page, CommandGroup.Cell, "In the form and the Stated view: cells");
        Table(page, CommandGroup.Row, "In the form and the Stated view: rows");
        Table(page, CommandGroup.Form, "In the form alone");
        foreach (ScreenView view in ScreenViews.All.Where(view => view != ScreenView.Beam))
        {
            Table(page, ScreenViews.Of(view).Groups[0], $"In the {view} view");
        }

        Table(page, CommandGroup.Beam, "Everywhere");
        page.Append("\n## In a minute\n\n");
        foreach (string line in HelpLines.InAMinute(CommandTable.Default).Skip(1))
        {
            page.Append(line.StartsWith(' ') ? "" : "- ").Append(line).Append('\n');
        }

        return page.ToString();
    }

    private static void Table(StringBuilder page, CommandGroup group, string heading)
    {
        page.Append("\n## ").Append(heading).Append("\n\n| key | menu | does | name in settings |\n| --- | --- | --- | --- |\n");
        foreach (ScreenCommand command in CommandTable.Default.All.Where(command => command.Group == group))
        {
            string menu = command.MenuWords.Length > 0 ? $"`{command.MenuWords}`" : "";
            IEnumerable<string> keys = command.KeyWords
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(key => $"`{key}`");
            string name = command.HasFixedKeys ? "" : $"`{command.SettingsName}`";
            page.Append($"| {string.Join(' ', keys)} | {menu} | {command.Words} | {name} |\n");
        }
    }
}
