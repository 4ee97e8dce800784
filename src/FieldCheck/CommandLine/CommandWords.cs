using System.Collections.Immutable;

namespace FieldCheck.CommandLine;

/// <summary>The commands, as typed.</summary>
internal static class CommandWords
{
    internal const string Check = "check";
    internal const string Working = "working";
    internal const string Report = "report";
    internal const string Presets = "presets";

    /// <summary>All of them, in the order in which they are listed.</summary>
    internal static ImmutableArray<string> All { get; } = [Check, Working, Report, Presets];
}
