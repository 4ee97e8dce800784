namespace FieldCheck.Screen.Details;

/// <summary>One key without a column.</summary>
/// <param name="Key">The key path.</param>
/// <param name="Words">What it is called.</param>
/// <param name="Text">What stands there; null: nothing.</param>
internal sealed record DetailLine(string Key, string Words, string? Text);
