using FieldCheck.Screen;

namespace FieldCheck.Plain;

/// <summary>What happens to a conversation in lines. Closed set: the nested records.</summary>
internal abstract record PlainEvent
{
    private PlainEvent()
    {
    }

    /// <summary>A line was typed.</summary>
    /// <param name="Text">Without its end.</param>
    internal sealed record Line(string Text) : PlainEvent;

    /// <summary>No more lines will come.</summary>
    internal sealed record InputEnded : PlainEvent;

    /// <summary>The shell answers an effect, or ends the program.</summary>
    /// <param name="What">As to the form.</param>
    internal sealed record Happened(ScreenEvent What) : PlainEvent;
}
