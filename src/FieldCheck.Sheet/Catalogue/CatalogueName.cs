using System.Text;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>A name of the catalogue with what it belongs to, for a list to choose from.</summary>
/// <param name="Name">The name, as "W10x30" or "C24".</param>
/// <param name="Family">What it belongs to, as "W" or "softwood, EN 338".</param>
public sealed record CatalogueName(string Name, string Family)
{
    /// <summary>A name as it is compared: without case, spaces, hyphens and points that are no decimal points.</summary>
    internal static string Plain(string name)
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
