using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What is said of axles that do not read, whose cell holds what are several cells of the file.</summary>
internal static class AxleWords
{
    private const string Rolling = "rolling[";
    private const string Axles = "].axles[";

    /// <summary>
    /// The problem as the cell has it: a force and a distance without the word between them are offered with it, told once.
    /// </summary>
    /// <param name="document">The beam.</param>
    /// <param name="problem">A problem of whichever cell.</param>
    internal static Problem InCell(BeamDocument document, Problem problem)
    {
        if (!problem.Key.StartsWith(Rolling, StringComparison.Ordinal) || !problem.Key.Contains(Axles, StringComparison.Ordinal))
        {
            return problem;
        }

        string force = problem.Key[..(problem.Key.LastIndexOf('.') + 1)] + "force";
        return DocumentCells.Get(document, force) is string text && WithAt(text) is string offered
            ? new Problem(force, $"\"at\" goes between a force and its distance: {offered}")
            : problem;
    }

    // One of the two needs a unit, or it could be anything.
    private static string? WithAt(string text) => text.Contains(" at ", StringComparison.OrdinalIgnoreCase)
        || Is(text, QuantityKind.Force)
        ? null
        : Enumerable.Range(1, Math.Max(text.Length - 1, 0))
            .Where(index => index < text.Length && text[index] == ' ')
            .Select(index => (Force: text[..index].Trim(), Distance: text[index..].Trim()))
            .Where(parts => (Is(parts.Force, QuantityKind.Force) && (Is(parts.Distance, QuantityKind.Length) || IsNumber(parts.Distance)))
                || (IsNumber(parts.Force) && Is(parts.Distance, QuantityKind.Length)))
            .Select(parts => $"{parts.Force} at {parts.Distance}")
            .FirstOrDefault();

    private static bool Is(string text, QuantityKind kind) => QuantityReader.Read(text, kind) is Reading<Quantity>.Accepted;

    private static bool IsNumber(string text) => NumberReader.Read(text) is Reading<double>.Accepted;
}
