using System.Globalization;
using System.Text;

namespace FieldCheck.Sheet.Document;

/// <summary>
/// Where a cell stands: keys from the top of the file and rows counted from 1, as "load[2].at" or "section.bearer.width".
/// </summary>
/// <remarks>A name that is no bare key of TOML is quoted, as in <c>material."C24 wet".density</c>.</remarks>
public sealed record KeyPath
{
    /// <summary>How many keys a path may have, rows not counted.</summary>
    public const int MostKeys = 8;

    // Lists stand at most 64 deep inside one another.
    private const int MostSteps = 80;

    private KeyPath(Rows<KeyStep> steps)
    {
        Steps = steps;
    }

    /// <summary>The whole file.</summary>
    public static KeyPath Top { get; } = new([]);

    internal Rows<KeyStep> Steps { get; }

    /// <summary>Reads a path.</summary>
    /// <param name="text">As <see cref="ToString"/> writes it.</param>
    /// <returns>The path, or null where the text is none.</returns>
    public static KeyPath? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        KeyPath? path = Top;
        int at = 0;
        while (path is not null && at < text.Length)
        {
            if (path.Steps.Count == MostSteps)
            {
                return null;
            }

            bool first = path.Steps.Count == 0;
            path = text[at] switch
            {
                '[' when !first => ReadRow(path, text, ref at),
                '.' when !first => ReadKey(path, text, at + 1, out at),
                _ when first => ReadKey(path, text, at, out at),
                _ => null,
            };
        }

        return path is null || path.Steps.Count(step => step is KeyStep.Into) > MostKeys ? null : path;
    }

    /// <summary>The path of what stands under a key.</summary>
    /// <param name="key">The key or name, as it is; it is quoted where it must be.</param>
    public KeyPath Into(string key) => new(Steps.Add(new KeyStep.Into(key)));

    /// <summary>The path of a row.</summary>
    /// <param name="row">Which, counted from 1.</param>
    public KeyPath At(int row) => new(Steps.Add(new KeyStep.At(row)));

    /// <inheritdoc/>
    public override string ToString()
    {
        StringBuilder text = new();
        foreach (KeyStep step in Steps)
        {
            if (step is KeyStep.At row)
            {
                text.Append(CultureInfo.InvariantCulture, $"[{row.Row}]");
            }
            else
            {
                text.Append(text.Length > 0 ? "." : "").Append(TomlText.Key(((KeyStep.Into)step).Key));
            }
        }

        return text.ToString();
    }

    private static KeyPath? ReadRow(KeyPath path, string text, ref int at)
    {
        int end = text.IndexOf(']', at);
        if (end < 0 || !int.TryParse(text.AsSpan(at + 1, end - at - 1), NumberStyles.None,
            CultureInfo.InvariantCulture, out int row) || row == 0)
        {
            return null;
        }

        at = end + 1;
        return path.At(row);
    }

    private static KeyPath? ReadKey(KeyPath path, string text, int start, out int end)
    {
        end = start;
        if (start < text.Length && text[start] == '"')
        {
            end = TomlText.EndOfQuoted(text, start);
            return TomlText.Unquoted(text[start..end]) is string name ? path.Into(name) : null;
        }

        while (end < text.Length && TomlText.IsBareKeyCharacter(text[end]))
        {
            end++;
        }

        return end > start ? path.Into(text[start..end]) : null;
    }
}
