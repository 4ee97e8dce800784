namespace FieldCheck.Sheet.Reading;

/// <summary>The size of a load as plain text.</summary>
/// <param name="Size">The load, or its intensity at the left where it varies.</param>
/// <param name="End">Its intensity at the right end; null where it does not vary.</param>
public sealed record LoadText(string Size, string? End = null);
