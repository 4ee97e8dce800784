namespace FieldCheck.Reporting.Pages;

/// <summary>A name and what it is.</summary>
/// <param name="Name">The name, as "job".</param>
/// <param name="Text">What it is; empty: left to be filled in by hand.</param>
public sealed record RecordFact(string Name, string Text);
