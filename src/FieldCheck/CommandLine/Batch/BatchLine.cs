using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine.Batch;

/// <summary>What came of one file of a batch.</summary>
/// <param name="Json">Its line, without the line's end.</param>
/// <param name="Status">Its exit status.</param>
/// <param name="Problems">What is wrong with it, for people.</param>
/// <param name="Fault">What is to be told of a fault of the program itself; null for none.</param>
internal sealed record BatchLine(string Json, int Status, ImmutableArray<FileProblem> Problems, string? Fault = null);
