namespace FieldCheck.Reporting.Pages;

/// <summary>A column of a table.</summary>
/// <param name="Heading">What stands above it.</param>
/// <param name="IsNumber">True: its cells end at the right edge of the column.</param>
public sealed record RecordColumn(string Heading, bool IsNumber = false);
