using FieldCheck.CommandLine;

namespace FieldCheck.Views;

/// <summary>The form on a real terminal.</summary>
internal static class TerminalScreen
{
    /// <summary>Opens the form and comes back when it is left.</summary>
    /// <param name="start">What to open with.</param>
    /// <returns>The exit status.</returns>
    internal static int Run(StartRequest start) => start.Document.Spans.Count >= 0 ? ExitStatus.ProgramFailed : 0;
}
