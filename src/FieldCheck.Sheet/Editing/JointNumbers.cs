using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Keeps "joint 2" and "mid 2" meaning the same joint and span while spans come and go.</summary>
internal static partial class JointNumbers
{
    /// <summary>Writes new numbers wherever a joint or a span is named.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="joint">The new number of a joint; 0 is the left end.</param>
    /// <param name="span">
    /// The new number of a span, counted from 1; null: it is gone, its left joint stands for it.
    /// </param>
    internal static BeamDocument Renumber(BeamDocument document, Func<int, int> joint, Func<int, int?> span)
    {
        string? Place(string? text) =>
            text is null ? null : NamedJoint().Replace(text, match => NewName(match, joint, span));
        string? Number(string? text) =>
            int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                ? Written(joint(number))
                : text;

        return document with
        {
            Supports = [.. document.Supports.Select(row => row with { Joint = Number(row.Joint), At = Place(row.At) })],
            Hinges = [.. document.Hinges.Select(row => row with { Joint = Number(row.Joint), At = Place(row.At) })],
            Loads = [.. document.Loads.Select(row =>
                row with { At = Place(row.At), From = Place(row.From), To = Place(row.To) })],
        };
    }

    private static string NewName(Match match, Func<int, int> joint, Func<int, int?> span)
    {
        if (!int.TryParse(
            match.Groups["number"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            return match.Value;
        }

        bool isJoint = match.Groups["word"].Value.Equals("joint", StringComparison.OrdinalIgnoreCase);
        return isJoint ? "joint " + Written(joint(number))
            : span(number) is int moved ? "mid " + Written(moved)
            : "joint " + Written(joint(number - 1));
    }

    private static string Written(int number) => number.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"\b(?<word>joint|mid)\s+(?<number>[0-9]+)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex NamedJoint();
}
