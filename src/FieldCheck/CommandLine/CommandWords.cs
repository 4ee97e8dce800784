using System.Collections.Immutable;

namespace FieldCheck.CommandLine;

/// <summary>The commands, as typed.</summary>
internal static class CommandWords
{
    internal const string Check = "check";
    internal const string Batch = "batch";
    internal const string Working = "working";
    internal const string Report = "report";
    internal const string Presets = "presets";
    internal const string Completion = "completion";

    /// <summary>All of them, in the order in which they are listed.</summary>
    internal static ImmutableArray<string> All { get; } = [Check, Batch, Working, Report, Presets, Completion];

    /// <summary>True: beam files stand after it.</summary>
    /// <param name="command">One of <see cref="All"/>.</param>
    internal static bool TakesFiles(string command) => command is not (Presets or Completion);
}
