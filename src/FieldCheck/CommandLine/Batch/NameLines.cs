using System.Text;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine.Batch;

/// <summary>Reads names, one a line, from a stream that may have no end.</summary>
internal static class NameLines
{
    // The longest path that Windows takes; other systems take less. A line beyond it is no name, and may have no end.
    private const int MostLetters = 32_767;
    private const int ShownLetters = 60;

    /// <summary>The names in order; empty lines are none. What cannot be a name is among them with the reason.</summary>
    /// <param name="source">What the stream is called in problems.</param>
    /// <param name="reader">The stream.</param>
    internal static IEnumerable<BatchName> Of(string source, TextReader reader)
    {
        StringBuilder line = new();
        bool isRefused = false;
        while (true)
        {
            (int letter, string? problem) = Next(reader);
            if (letter is -1 or '\n')
            {
                string name = line.ToString();
                name = name.EndsWith('\r') ? name[..^1] : name;
                if (!isRefused && name.Length > 0)
                {
                    yield return new(name);
                }

                isRefused = false;
                line.Clear();
            }
            else if (!isRefused && RefusalOf(line.Length, letter) is string refusal)
            {
                isRefused = true;
                yield return new(line.ToString(0, Math.Min(line.Length, ShownLetters)) + "...", refusal);
            }
            else if (!isRefused)
            {
                line.Append((char)letter);
            }

            if (problem is not null)
            {
                yield return new(source, problem);
            }

            if (letter == -1)
            {
                yield break;
            }
        }
    }

    private static string? RefusalOf(int length, int letter) =>
        letter == '\0' ? "a zero byte stands in this name; names are wanted one a line."
        : length == MostLetters ? "this line is too long to be the name of a file."
        : null;

    private static (int Letter, string? Problem) Next(TextReader reader)
    {
        try
        {
            return (reader.Read(), null);
        }
        catch (IOException fault)
        {
            return (-1, DiskFault.OfReading(fault));
        }
    }
}
