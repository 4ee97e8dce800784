namespace FieldCheck.Sheet.Reading;

/// <summary>The first thing found wrong in a text, before it is known what the text was to be read as.</summary>
/// <param name="Text">What is wrong and what would be right.</param>
/// <param name="Offset">Where in the text it starts, counted from 0.</param>
internal sealed record Fault(string Text, int Offset);
