using System.Diagnostics;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;
using FieldCheck.Screen.Workings;

namespace FieldCheck.Screen;

/// <summary>What an event makes of the screen. Pure: files, clock and terminal are the shell's.</summary>
internal static class ScreenUpdate
{
    /// <summary>Applies one event.</summary>
    /// <param name="state">The screen before.</param>
    /// <param name="happening">The event.</param>
    internal static ScreenStep Apply(ScreenState state, ScreenEvent happening)
    {
        ScreenStep step = happening switch
        {
            ScreenEvent.Key key => Press(state, key.Stroke),
            ScreenEvent.Click click => Clicks.Apply(state, click.Target),
            ScreenEvent.Resized size => WorkingKeys.Resized(state, (size.Width, size.Height)).Step(),
            ScreenEvent.PaperSaved saved => FileAnswers.PaperSaved(state, saved),
            ScreenEvent.PaperRefused refused => FileAnswers.PaperRefused(state, refused),
            ScreenEvent.Saved saved => FileAnswers.Saved(state, saved),
            ScreenEvent.SaveRefused refused => FileAnswers.SaveRefused(state, refused),
            ScreenEvent.Opened opened => FileAnswers.Opened(state, opened),
            ScreenEvent.OpenRefused refused => FileAnswers.OpenRefused(state, refused),
            ScreenEvent.FileMissing missing => FileAnswers.FileMissing(state, missing),
            ScreenEvent.BeamsFound found => FileAnswers.BeamsFound(state, found),
            ScreenEvent.SetsFound found => SetListKeys.Found(state, found),
            ScreenEvent.CatalogueFound found => CatalogueKeys.Found(state, found),
            ScreenEvent.RecoveryFound found => FileAnswers.RecoveryFound(state, found),
            ScreenEvent.KeepDue => Keep(state),
            ScreenEvent.RecoveryRefused refused =>
                Told(state, new Notice($"Unsaved work is not being kept: {refused.Text}", Role.Warn)),
            ScreenEvent.PreferencesRefused refused =>
                Told(state, new Notice($"Not kept for next time: {refused.Text}", Role.Warn)),
            ScreenEvent.Told told => Told(state, new Notice(told.Text, Role.Warn)),
            ScreenEvent.Stopped => Stop(state),
            _ => throw new UnreachableException(),
        };
        ScreenState next = LiveResults.Follow(state, step.State).WithinTheBeam();
        Effect[] preferences = next.Preferences == state.Preferences ? [] : [new Effect.KeepPreferences(next.Preferences)];
        return new ScreenStep(next, [.. UnsavedWork.MakingWay(state, next), .. Kept(state, next, step), .. preferences, .. step.Effects]);
    }

    private static ScreenStep Told(ScreenState state, Notice notice) => (state with { Notice = notice }).Step();

    /// <summary>What a key does, before anything that follows from every event.</summary>
    /// <param name="state">The state.</param>
    /// <param name="stroke">The key.</param>
    internal static ScreenStep Press(ScreenState state, KeyStroke stroke)
    {
        // What is told at the start is read only once the work that is offered over it is answered for.
        bool isStillUnread = state.Overlay is Overlay.RecoveryOffer;
        ScreenState told = state with { Notice = isStillUnread ? state.Notice : null, ReadBack = null };
        ScreenStep step = told.Overlay is Overlay overlay
            ? OverlayKeys.Press(told, overlay, stroke)
            : ScreenViews.Of(told.View).Press(told, stroke);

        // What was dropped can be had back by the very next key only.
        return step.State.Dropped is not null && step.State.Dropped == state.Dropped
            ? step with { State = step.State with { Dropped = null } }
            : step;
    }

    private static ScreenStep Keep(ScreenState state) =>
        UnsavedWork.Keeping(state) is Effect.KeepRecovery keep ? state.Step(keep) : state.Step();

    // A program ended from outside keeps what was being typed too, and at once.
    private static ScreenStep Stop(ScreenState state) =>
        UnsavedWork.Keeping(state) is Effect.KeepRecovery keep
            ? state.Step(keep, new Effect.Quit())
            : state.Step(new Effect.Quit());

    private static IEnumerable<Effect> Kept(ScreenState before, ScreenState after, ScreenStep step)
    {
        bool isToldAlready = step.Effects.Any(effect => effect is Effect.KeepRecovery or Effect.DropRecovery);
        return !isToldAlready && UnsavedWork.After(before, after) is Effect effect ? [effect] : [];
    }
}
