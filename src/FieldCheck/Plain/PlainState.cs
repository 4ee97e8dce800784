using FieldCheck.Screen;

namespace FieldCheck.Plain;

/// <summary>All that a conversation in lines knows. Immutable: a line makes a new one.</summary>
internal sealed record PlainState
{
    /// <summary>The beam, its history and its file, as the form holds them; what lies over it is what is asked.</summary>
    internal required ScreenState Form { get; init; }

    /// <summary>What the next line answers; null: it is a command. What lies over the form is answered first.</summary>
    internal PlainAsk? Ask { get; init; }

    /// <summary>The beam or the set that was named, to be found once all are known; null: the person is asked.</summary>
    internal string? Wanted { get; init; }

    /// <summary>The step that this state is, with what is said.</summary>
    /// <param name="lines">One sentence each.</param>
    internal PlainStep Say(params ReadOnlySpan<string> lines) => new(this, [.. lines], []);

    /// <summary>The step that a step of the form is.</summary>
    /// <param name="step">What came of it.</param>
    /// <param name="lines">What is said besides, one sentence each.</param>
    internal PlainStep With(ScreenStep step, params ReadOnlySpan<string> lines) =>
        new(this with { Form = step.State }, [.. lines], step.Effects);
}
