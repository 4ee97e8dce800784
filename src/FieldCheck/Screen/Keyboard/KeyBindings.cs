using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen.Keyboard;

/// <summary>Binds commands to other keys, as the settings file asks.</summary>
internal static class KeyBindings
{
    // Terminals send these as another key, or keep them: ^H is Backspace, ^I Tab, ^J and ^M Enter, ^V their own paste;
    // ^A and ^B lead the commands of programs that hold several terminals in one.
    private const string NotSent = "HIJMVAB";

    /// <summary>The table with other keys.</summary>
    /// <param name="table">The table as it comes.</param>
    /// <param name="bindings">Names of commands, and of their keys parted by blanks; empty: no key.</param>
    /// <returns>The table, and what is wrong with the bindings; they hold only where nothing is.</returns>
    /// <remarks>A key that is asked for goes away from the command that it comes with.</remarks>
    internal static (CommandTable Table, ImmutableArray<Problem> Problems) Bind(
        CommandTable table, Rows<NamedFigure> bindings)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        Dictionary<ScreenCommand, ImmutableArray<KeyStroke>> asked = [];
        foreach (NamedFigure binding in bindings)
        {
            if (CommandOf(table, binding.Name) is ScreenCommand command && !command.HasFixedKeys)
            {
                asked[command] = Keys(command, binding, problems);
            }
            else
            {
                problems.Add(new Problem(PathOf(binding), WrongName(table, binding.Name)));
            }
        }

        CommandTable bound = asked.Count == 0 ? table : new([.. table.All.Select(command => Bound(command, asked))]);
        foreach (NamedFigure binding in bindings.Where(binding => CommandOf(table, binding.Name) is not null))
        {
            problems.AddRange(Clashes(bound, CommandOf(bound, binding.Name)!)
                .Select(text => new Problem(PathOf(binding), text)));
        }

        return (bound, problems.ToImmutable());
    }

    private static string PathOf(NamedFigure binding) => $"keys.{binding.Name}";

    private static ScreenCommand? CommandOf(CommandTable table, string name) =>
        table.All.FirstOrDefault(command => command.SettingsName == name);

    private static string WrongName(CommandTable table, string name)
    {
        if (CommandOf(table, name) is not null)
        {
            return "this command keeps its keys";
        }

        IEnumerable<string> names = table.All.Where(command => !command.HasFixedKeys).Select(command => command.SettingsName);
        return NearSpelling.Of(name, names) is [string near, ..]
            ? $"there is no such command; did you mean {near}?"
            : "there is no such command; docs/keys.md names them";
    }

    private static ImmutableArray<KeyStroke> Keys(
        ScreenCommand command, NamedFigure binding, ImmutableArray<Problem>.Builder problems)
    {
        var keys = ImmutableArray.CreateBuilder<KeyStroke>();
        foreach (string name in binding.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            KeyStroke? key = KeyStrokeNames.Read(name);
            if (key is null || WrongKey(command, key) is not null)
            {
                string text = key is null ? $"'{name}' is no key, as ^D, F5, Tab or = are" : WrongKey(command, key)!;
                problems.Add(new Problem(PathOf(binding), text, binding.Text.IndexOf(name, StringComparison.Ordinal)));
            }
            else if (!keys.Contains(key))
            {
                keys.Add(key);
            }
        }

        return keys.ToImmutable();
    }

    private static string? WrongKey(ScreenCommand command, KeyStroke key) => key switch
    {
        KeyStroke.Control control when NotSent.Contains(control.Letter, StringComparison.Ordinal) =>
            $"^{control.Letter} does not arrive from every terminal",
        KeyStroke.Text text when command.IsIn(ScreenView.Beam) && BeginsACell(text.Grapheme)
            && !command.Keys.Contains(key) => $"'{text.Grapheme}' begins what is typed in a cell",
        KeyStroke.Text { Grapheme: [>= '0' and <= '9' or '.' or '-', ..] } => "a digit begins a place",
        _ => null,
    };

    private static bool BeginsACell(string grapheme) =>
        !char.IsAscii(grapheme[0]) || char.IsLetterOrDigit(grapheme[0]) || "+-.('\" ".Contains(grapheme[0], StringComparison.Ordinal);

    private static ScreenCommand Bound(
        ScreenCommand command, Dictionary<ScreenCommand, ImmutableArray<KeyStroke>> asked)
    {
        if (asked.TryGetValue(command, out ImmutableArray<KeyStroke> keys))
        {
            return command with { Keys = keys };
        }

        return command.HasFixedKeys
            ? command
            : command with { Keys = [.. command.Keys.Where(key => !asked.Any(other => other.Value.Contains(key) && Meet(other.Key, command)))] };
    }

    private static bool Meet(ScreenCommand one, ScreenCommand other) =>
        ScreenViews.All.Any(view => one.IsIn(view) && other.IsIn(view));

    private static IEnumerable<string> Clashes(CommandTable table, ScreenCommand command)
    {
        if (command.Name == CommandName.Menu && command.Keys.IsEmpty)
        {
            yield return "the menu needs a key: nothing else leads there";
        }

        foreach (KeyStroke key in command.Keys)
        {
            if (table.All.FirstOrDefault(other =>
                other != command && other.Keys.Contains(key) && Meet(command, other)) is ScreenCommand holder)
            {
                yield return $"{KeyStrokeNames.Of(key)} is the key of {holder.SettingsName}"
                    + (holder.HasFixedKeys ? ", which keeps it" : " as well");
            }
        }
    }
}
