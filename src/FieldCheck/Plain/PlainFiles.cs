using System.Collections.Immutable;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;

namespace FieldCheck.Plain;

/// <summary>Commands on the beam as a whole: begin, open, save, leave.</summary>
internal static class PlainFiles
{
    internal static PlainStep Begin(PlainState state) =>
        Asking(state, FileSteps.Leave(state.Form, new AfterSave.Begin()));

    internal static PlainStep Open(PlainState state, string name) => Asking(
        state with { Wanted = name.Length == 0 ? null : name },
        FileSteps.Leave(state.Form, new AfterSave.Choose()));

    internal static PlainStep Save(PlainState state, string name) => state.With(name.Length == 0
        ? FileSteps.Save(state.Form, new AfterSave.Stay())
        : FileSteps.SaveAs(state.Form, name, new AfterSave.Stay()));

    internal static PlainStep Leave(PlainState state) =>
        Asking(state, FileSteps.Leave(state.Form, new AfterSave.Leave()));

    internal static PlainStep Asked(PlainState state) => PlainWalks.OfAsked(state.Form.Document) is PlainAsk first
        ? (state with { Ask = first }).Say()
        : state.Say("This beam asks for no cells.");

    /// <summary>The step that a step of the form is, with the question that it leads to.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="step">What came of it.</param>
    internal static PlainStep Asking(PlainState state, ScreenStep step) => step.State.Overlay is Overlay overlay
        ? state.With(step, [.. PlainAnswers.Question(state with { Form = step.State }, overlay)])
        : state.With(step);

    /// <summary>No more lines come: what is unsaved is kept and the conversation ends.</summary>
    internal static PlainStep End(PlainState state)
    {
        PlainStep stopped = state.With(ScreenUpdate.Apply(state.Form, new ScreenEvent.Stopped()));
        ImmutableArray<string> kept = state.Form.IsUnsaved
            ? ["", "End of input. What is not saved is kept; the next start offers it."]
            : ["", "End of input."];
        return stopped.Then([.. kept]);
    }
    /// <summary>Saves the record of the check under a name, or asks for one.</summary>
    internal static PlainStep Record(PlainState state, string name) => state.Form.Settled.Beam is not null && name.Trim() is { Length: > 0 } given
        ? state.With(PaperFile.Save(state.Form, PaperKind.Record, given))
        : state.With(PaperFile.Ask(state.Form, PaperKind.Record).Step());

}
