using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Record;

/// <summary>The check as JSON for other programs: SI numbers, stable keys, one object a file.</summary>
/// <remarks>docs/command-line.md describes the keys. Keys may be added while "format" is 1, never changed.</remarks>
public static class CheckJson
{
    private const int Format = 1;

    /// <summary>The check of one beam; a beam that can move gives an error object.</summary>
    /// <remarks>One for which no answer could be found has no combinations, and a message says why.</remarks>
    /// <param name="calculation">What came of it; without problems.</param>
    /// <param name="request">The file's name and the places to read off.</param>
    /// <param name="isIndented">True: over many lines for reading; false: one line.</param>
    /// <exception cref="ArgumentException">The calculation has problems: nothing was solved.</exception>
    public static string Of(Calculation calculation, CheckRequest request, bool isIndented)
    {
        if (calculation.Beam is null)
        {
            throw new ArgumentException("A beam that does not read has no check.", nameof(calculation));
        }

        JsonKeys keys = JsonKeys.For(isIndented);
        return calculation.Outcome switch
        {
            BeamOutcome.CanMove moving => Write(Moves(moving, moving.Motions), keys.JsonRefusal),
            BeamOutcome.Tips tips => Write(Moves(tips, tips.Motions), keys.JsonRefusal),
            BeamOutcome outcome => Write(JsonAnswer.Of(calculation, outcome, request, Format), keys.JsonCheck),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

        JsonRefusal Moves(BeamOutcome outcome, ImmutableArray<FreeMotion> motions) =>
            new(Format, request.File, JsonMotions.Error(calculation.Beam, outcome, motions));
    }

    /// <summary>The error object of a file that is not usable.</summary>
    /// <param name="file">The file, as it was named.</param>
    /// <param name="problems">What is wrong with it.</param>
    /// <param name="isIndented">True: over many lines for reading; false: one line.</param>
    public static string OfProblems(string file, ImmutableArray<FileProblem> problems, bool isIndented)
    {
        JsonError error = new("input", [.. problems.Select(Of)], Motions: null);
        return Write(new JsonRefusal(Format, file, error), JsonKeys.For(isIndented).JsonRefusal);
    }

    /// <summary>The error object, on one line, of a file at which the program itself failed.</summary>
    /// <param name="file">The file, as it was named.</param>
    /// <param name="text">What the fault says of itself.</param>
    public static string OfFault(string file, string text)
    {
        JsonError error = new("program", [new JsonProblem(null, null, "", text)], Motions: null);
        return Write(new JsonRefusal(Format, file, error), JsonKeys.For(isIndented: false).JsonRefusal);
    }

    private static JsonProblem Of(FileProblem problem) =>
        new(Counted(problem.Line), Counted(problem.Column), problem.Key, problem.Text);

    private static int? Counted(int number) => number > 0 ? number : null;

    private static string Write<T>(T value, JsonTypeInfo<T> keys) =>
        TextSafety.EscapedInJson(JsonSerializer.Serialize(value, keys));
}
