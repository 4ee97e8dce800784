namespace FieldCheck.Fuzz;

/// <summary>Something that reads texts, with what it promises of any of them.</summary>
public abstract class FuzzTarget
{
    /// <summary>What it is called.</summary>
    public abstract string Name { get; }

    /// <summary>Texts to begin with.</summary>
    public abstract IReadOnlyList<string> Seeds { get; }

    /// <summary>Words of its language, to be put in anywhere.</summary>
    public abstract IReadOnlyList<string> Words { get; }

    /// <summary>Reads a text and holds what comes of it against the promises.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>What kind of answer it was, without what it quotes: texts of a new kind are worth going on from.</returns>
    /// <exception cref="BrokenPromiseException">The answer is not as promised.</exception>
    public abstract string Check(string text);

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

    /// <summary>A message without what it quotes of the text: one kind of answer.</summary>
    /// <param name="message">The message.</param>
    protected static string Kind(string message)
    {
        char[] kind = new char[Math.Min(message.Length, 60)];
        int length = 0;
        bool isQuoted = false;
        foreach (char character in message)
        {
            isQuoted ^= character == '\'';
            if (!isQuoted && (char.IsAsciiLetter(character) || character == ' ') && length < kind.Length)
            {
                kind[length++] = character;
            }
        }

        return new string(kind, 0, length);
    }
}
