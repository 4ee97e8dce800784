namespace FieldCheck.Sheet.Reading;

/// <summary>A value read from a text, or why it could not be. Closed set: the cases are the nested records.</summary>
/// <typeparam name="T">What was to be read.</typeparam>
public abstract record Reading<T>
{
    private Reading()
    {
    }

    /// <summary>The text reads.</summary>
    /// <param name="Value">As this.</param>
    public sealed record Accepted(T Value) : Reading<T>;

    /// <summary>The text does not read.</summary>
    /// <param name="Text">What is wrong and what would be right.</param>
    /// <param name="Offset">Where in the text it starts, counted from 0.</param>
    public sealed record Refused(string Text, int Offset) : Reading<T>;
}
