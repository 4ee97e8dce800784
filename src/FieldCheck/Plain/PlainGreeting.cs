using System.Collections.Immutable;
using FieldCheck.CommandLine;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Plain;

/// <summary>How a conversation begins.</summary>
internal static class PlainGreeting
{
    /// <summary>The conversation that a start asks for.</summary>
    /// <param name="start">The start.</param>
    /// <param name="calculate">How a beam is calculated.</param>
    internal static PlainState StateAt(StartRequest start, Func<BeamDocument, Calculation> calculate) => new()
    {
        Form = ScreenState.Start(start.Document, BeamOrigin.OfStart(start.Path, start.Origin), calculate) with
        {
            Preferences = start.Preferences,
        },
        Ask = start.Origin is null ? PlainWalks.OfNewBeam : null,
    };

    /// <summary>What is said first.</summary>
    /// <param name="state">The conversation.</param>
    internal static ImmutableArray<string> Of(PlainState state) =>
    [
        "FieldCheck in lines. Say help for the commands, leave to end.",
        .. state.Form.Origin.Text is null
            ? new[] { $"{state.Form.Origin.Path} is not there yet: a new beam of that name.", PlainWalks.NewBeam }
            : [PlainWords.Summary(state.Form), PlainWords.Outcome(state.Form)],
    ];
}
