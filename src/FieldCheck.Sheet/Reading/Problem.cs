namespace FieldCheck.Sheet.Reading;

/// <summary>Something the person typed that cannot be used, said so that they can mend it.</summary>
/// <param name="Key">Where: the key path with rows counted from 1, as "load[2].at"; empty for the whole beam.</param>
/// <param name="Text">What is wrong and what would be right.</param>
/// <param name="Offset">Where in the cell's text it starts, counted from 0.</param>
public sealed record Problem(string Key, string Text, int Offset = 0);
