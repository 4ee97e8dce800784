using System.Diagnostics;

namespace FieldCheck.CommandLine.Completion;

/// <summary>The script that lets a shell complete command lines, made from the tables that they are read by.</summary>
/// <remarks>
/// A script never calls the program: completing must not wait for a start, and works where the program is not yet found.
/// </remarks>
internal static class CompletionScript
{
    /// <summary>The script.</summary>
    /// <param name="shell">One of <see cref="Shells.All"/>.</param>
    internal static string For(string shell) => shell switch
    {
        Shells.Bash => BashCompletion.Script(),
        Shells.Zsh => ZshCompletion.Script(),
        Shells.Fish => FishCompletion.Script(),
        Shells.PowerShell => PowerShellCompletion.Script(),
        _ => throw new UnreachableException(),
    };

    /// <summary>The options that may stand with a command.</summary>
    /// <param name="command">The command; null for none.</param>
    internal static IEnumerable<string> OptionsWith(string? command) =>
        from option in Option.All where option.RefusedBy(command) is null select option.Name;

    /// <summary>The options whose value has to be typed.</summary>
    internal static IEnumerable<string> Typed =>
        from option in Option.All
        where option.Value is not null && option.Choices.IsEmpty && !option.IsFile
        select option.Name;

    /// <summary>The options whose value is a file of any name.</summary>
    internal static IEnumerable<string> OfFiles => from option in Option.All where option.IsFile select option.Name;

    /// <summary>The options whose value is one of a few words.</summary>
    internal static IEnumerable<Option> OfChoices => Option.All.Where(option => !option.Choices.IsEmpty);

    /// <summary>Every option with a value: what stands after it is no command.</summary>
    internal static IEnumerable<string> Valued => from option in Option.All where option.Value is not null select option.Name;

    /// <summary>The commands that are followed by beam files.</summary>
    internal static IEnumerable<string> OnFiles => CommandWords.All.Where(CommandWords.TakesFiles);

    internal static string Spaced(this IEnumerable<string> words) => string.Join(' ', words);

    internal static string Barred(this IEnumerable<string> words) => string.Join('|', words);

    /// <summary>One line for each, behind one another.</summary>
    internal static string Lines<T>(this IEnumerable<T> all, Func<T, string> line) => string.Join('\n', all.Select(line));
}
