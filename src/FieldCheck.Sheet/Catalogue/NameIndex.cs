using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Entries found by their trade name, however its case, spaces and hyphens are written.</summary>
/// <typeparam name="T">The entry.</typeparam>
internal sealed class NameIndex<T>
    where T : class
{
    private readonly FrozenDictionary<string, T> _entries;

    internal NameIndex(IEnumerable<T> entries, Func<T, string> nameOf)
    {
        ImmutableArray<T> all = [.. entries];
        Names = [.. all.Select(nameOf)];
        _entries = all.ToFrozenDictionary(entry => Plain(nameOf(entry)), StringComparer.Ordinal);
    }

    internal ImmutableArray<string> Names { get; }

    internal T? Find(string name) => _entries.GetValueOrDefault(Plain(name));

    private static string Plain(string name)
    {
        StringBuilder plain = new(name.Length);
        foreach (char letter in name)
        {
            // A point after a digit is a decimal point and stays: "1.0" is no "10".
            if (letter is not (' ' or '-') && (letter != '.' || (plain.Length > 0 && char.IsDigit(plain[^1]))))
            {
                plain.Append(letter == '×' ? 'x' : char.ToLowerInvariant(letter));
            }
        }

        return plain.ToString();
    }
}
