using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Reading;

/// <summary>How far a text has been read, and the first thing found wrong with it.</summary>
/// <remarks>A copy is a look ahead: what is read with it leaves the original where it was.</remarks>
internal ref struct TextCursor
{
    internal TextCursor(string text, ReadOnlySpan<QuantityKind> wanted)
    {
        Text = text;
        Wanted = wanted;
    }

    internal string Text { get; }

    /// <summary>The kinds that the cell takes, for the wording of what is refused.</summary>
    internal ReadOnlySpan<QuantityKind> Wanted { get; }

    internal int Position { get; set; }

    internal int Depth { get; set; }

    internal Fault? Fault { get; private set; }

    internal readonly bool AtEnd => Position >= Text.Length;

    /// <summary>The character to be read next, or NUL at the end.</summary>
    internal readonly char Current => After(0);

    internal readonly char After(int distance) =>
        Position + distance < Text.Length ? Text[Position + distance] : '\0';

    internal readonly string Since(int start) => Text[start..Position];

    internal void SkipSpaces()
    {
        while (!AtEnd && char.IsWhiteSpace(Current))
        {
            Position++;
        }
    }

    /// <summary>
    /// Notes a fault, unless one is noted already, and says "not read". The message may quote what was typed, a pasted
    /// line feed with it, and is made safe to show here, once for all of them.
    /// </summary>
    internal bool Fail(string text, int offset)
    {
        Fault ??= new Fault(TextSafety.ForTerminal(text), offset);
        return false;
    }
}
