using System.Collections.Immutable;

namespace FieldCheck.Plain;

/// <summary>The words of a line, however they are parted: "load 2 at", "load[2].at" and "load_2_at" are one.</summary>
internal static class PlainTokens
{
    private const string Between = " \t_.[]\"\\";

    /// <summary>The words, each with the index behind its last letter.</summary>
    /// <param name="text">The line.</param>
    internal static ImmutableArray<(string Word, int End)> Of(string text)
    {
        var words = ImmutableArray.CreateBuilder<(string, int)>();
        int start = 0;
        for (int at = 0; at <= text.Length; at++)
        {
            if (at == text.Length || Between.Contains(text[at], StringComparison.Ordinal))
            {
                if (at > start)
                {
                    words.Add((text[start..at], at));
                }

                start = at + 1;
            }
        }

        return words.ToImmutable();
    }

    /// <summary>
    /// What stands behind the words of a name where a line begins with them; null where it does not.
    /// </summary>
    /// <param name="text">The line.</param>
    /// <param name="name">The name; capitals do not count.</param>
    internal static string? After(string text, string name)
    {
        ImmutableArray<(string Word, int End)> words = Of(text);
        ImmutableArray<(string Word, int End)> wanted = Of(name);
        bool begins = wanted.Length > 0 && wanted.Length <= words.Length && wanted.Zip(words).All(pair =>
            pair.First.Word.Equals(pair.Second.Word, StringComparison.OrdinalIgnoreCase));
        return begins ? Rest(text, words[wanted.Length - 1].End) : null;
    }

    /// <summary>The line behind an index, without what closes a name there.</summary>
    /// <param name="text">The line.</param>
    /// <param name="end">The index.</param>
    internal static string Rest(string text, int end)
    {
        int at = end;
        while (at < text.Length && text[at] is '"' or ']')
        {
            at++;
        }

        return text[at..].Trim();
    }
}
