namespace FieldCheck.CommandLine.Batch;

/// <summary>One file of a batch.</summary>
/// <param name="Name">As it was named, or as its folder was named with its own name behind.</param>
/// <param name="Refusal">Why it cannot be looked for, as a sentence that begins with a small letter; null: it can.</param>
internal readonly record struct BatchName(string Name, string? Refusal = null);
