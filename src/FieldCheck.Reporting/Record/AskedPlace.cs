namespace FieldCheck.Reporting.Record;

/// <summary>A place at which values were asked for.</summary>
/// <param name="Text">The place as it was asked for.</param>
/// <param name="Position">The place [m from the left end].</param>
public sealed record AskedPlace(string Text, double Position);
