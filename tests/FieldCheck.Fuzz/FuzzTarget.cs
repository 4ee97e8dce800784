namespace FieldCheck.Fuzz;

/// <summary>Something that reads texts, with what it promises of any of them.</summary>
public abstract class FuzzTarget
{
    /// <summary>What it is called.</summary>
    public abstract string Name { get; }

    /// <summary>Texts to begin with.</summary>
    public abstract IReadOnlyList<string> Seeds { get; }

    /// <summary>How many texts its corpus holds at most, but for what was once found.</summary>
    public abstract int MostKept { get; }

    /// <summary>Words of its language, to be put in anywhere.</summary>
    public abstract IReadOnlyList<string> Words { get; }

    /// <summary>Reads a text and holds what comes of it against the promises.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>What kinds of answers came, without what they quote: texts with a new one are worth going on from.</returns>
    /// <exception cref="BrokenPromiseException">An answer is not as promised.</exception>
    public abstract IReadOnlySet<string> Check(string text);

    /// <summary>Another text made of some of these, in ways that only texts of this language are changed.</summary>
    /// <param name="text">The text.</param>
    /// <param name="other">Another one, to take parts of.</param>
    /// <param name="random">Decides.</param>
    public abstract string Change(string text, string other, Random random);

    /// <summary>Ends the case where something promised does not hold.</summary>
    /// <param name="holds">What was promised.</param>
    /// <param name="promise">In words.</param>
    protected static void Promise(bool holds, string promise)
    {
        if (!holds)
        {
            throw new BrokenPromiseException(promise);
        }
    }
}
