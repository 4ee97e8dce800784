namespace FieldCheck.Plain;

/// <summary>What the name at the beginning of a line leads to.</summary>
/// <param name="Target">The cell or key.</param>
/// <param name="Text">What stands behind the name; empty where nothing does.</param>
internal sealed record PlainFound(PlainTarget Target, string Text);
