namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>What the reference says of one key of the beam file.</summary>
/// <param name="Path">The key, rows as <c>span[]</c> and names of the person's own as <c>*</c>.</param>
/// <param name="Says">What it means.</param>
/// <param name="Default">What holds where it is not written; empty where that goes without saying.</param>
/// <param name="Example">A value as it stands in a file.</param>
internal sealed record KeyNote(string Path, string Says, string Default, string Example);
