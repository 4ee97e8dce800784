namespace FieldCheck.Plain;

/// <summary>One thing that can be said, and what it does.</summary>
/// <param name="Word">Its first word.</param>
/// <param name="Usage">How it is said, as the help shows it.</param>
/// <param name="Does">What it does.</param>
/// <param name="Run">Does it with what stands behind the word.</param>
internal sealed record PlainCommand(
    string Word, string Usage, string Does, Func<PlainState, string, PlainStep> Run)
{
    /// <summary>Other words for the same.</summary>
    internal IReadOnlyList<string> OtherWords { get; init; } = [];

    /// <summary>True: a word means this command.</summary>
    /// <param name="word">The word; capitals do not count.</param>
    internal bool IsCalled(string word) =>
        OtherWords.Append(Word).Contains(word, StringComparer.OrdinalIgnoreCase);
}
