using System.Diagnostics;

namespace FieldCheck.Sheet.Reading;

/// <summary>A value read from a text, or why it could not be. Closed set: the cases are the nested records.</summary>
/// <typeparam name="T">What was to be read.</typeparam>
public abstract record Reading<T>
{
    private Reading()
    {
    }

    /// <summary>Reads on from an accepted value; a refusal passes through as it is.</summary>
    /// <typeparam name="TNext">What is read next.</typeparam>
    /// <param name="next">What to make of the value.</param>
    public Reading<TNext> Then<TNext>(Func<T, Reading<TNext>> next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return this switch
        {
            Accepted accepted => next(accepted.Value),
            Refused refused => new Reading<TNext>.Refused(refused.Text, refused.Offset),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>The same refusal, counted from the start of a longer text that this one is a part of.</summary>
    /// <param name="offset">Where the part starts in the longer text, counted from 0.</param>
    internal Reading<T> At(int offset) =>
        this is Refused refused ? refused with { Offset = refused.Offset + offset } : this;

    /// <summary>The text reads.</summary>
    /// <param name="Value">As this.</param>
    public sealed record Accepted(T Value) : Reading<T>;

    /// <summary>The text does not read.</summary>
    /// <param name="Text">What is wrong and what would be right.</param>
    /// <param name="Offset">Where in the text it starts, counted from 0.</param>
    public sealed record Refused(string Text, int Offset) : Reading<T>;
}
