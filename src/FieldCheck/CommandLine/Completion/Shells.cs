using System.Collections.Immutable;

namespace FieldCheck.CommandLine.Completion;

/// <summary>The shells that can complete command lines of this program, as typed.</summary>
internal static class Shells
{
    internal const string Bash = "bash";
    internal const string Zsh = "zsh";
    internal const string Fish = "fish";
    internal const string PowerShell = "powershell";

    /// <summary>All of them.</summary>
    internal static ImmutableArray<string> All { get; } = [Bash, Zsh, Fish, PowerShell];

    /// <summary>All of them in words.</summary>
    internal static string Told { get; } = $"{string.Join(", ", All[..^1])} or {All[^1]}";
}
