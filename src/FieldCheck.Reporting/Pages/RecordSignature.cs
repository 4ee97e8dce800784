namespace FieldCheck.Reporting.Pages;

/// <summary>Who signs.</summary>
/// <param name="Role">As "prepared by".</param>
/// <param name="Name">The name, if it is known; else empty: left to be filled in by hand.</param>
public sealed record RecordSignature(string Role, string Name);
