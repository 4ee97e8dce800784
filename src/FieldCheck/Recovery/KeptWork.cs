namespace FieldCheck.Recovery;

/// <summary>Unsaved work that an earlier session left.</summary>
/// <param name="File">The file that holds it.</param>
/// <param name="Name">What the beam was called.</param>
/// <param name="Path">The file it would have been saved to; null when it had none.</param>
/// <param name="Text">The whole beam as file text.</param>
/// <param name="KeptAt">When it was last kept.</param>
internal sealed record KeptWork(string File, string Name, string? Path, string Text, DateTimeOffset KeptAt);
