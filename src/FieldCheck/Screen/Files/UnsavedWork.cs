using FieldCheck.Screen.Details;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Screen.Files;

/// <summary>What would be lost if the program ended now: the beam with what is being typed.</summary>
internal static class UnsavedWork
{
    /// <summary>The beam as it would be with the typing accepted; null where its origin holds it so.</summary>
    /// <param name="state">The state, its results following it.</param>
    internal static BeamDocument? Of(ScreenState state)
    {
        BeamDocument work = state.Tried?.Document ?? DetailKeys.Accept(state).Document;
        return work == state.Stored ? null : work;
    }

    /// <summary>Keeps it at once; nothing to do where there is none.</summary>
    /// <param name="state">The state.</param>
    internal static Effect.KeepRecovery? Keeping(ScreenState state) =>
        Of(state) is BeamDocument work ? FileSteps.Recovery(state, work) : null;

    /// <summary>Keeps work that another beam takes the place of, beside what will be kept of that one.</summary>
    /// <param name="before">The state before the step.</param>
    /// <param name="after">The state after it.</param>
    internal static IEnumerable<Effect> MakingWay(ScreenState before, ScreenState after)
    {
        bool isAnother = after.Document != before.Document
            && after.History is { ToUndo: null, ToRedo: null } && after.Stored != before.Stored;
        return isAnother && Keeping(before) is Effect.KeepRecovery keep ? [keep, new Effect.SetRecoveryAside()] : [];
    }

    /// <summary>What the shell is to do for it after a step: keep it soon, or forget it once nothing is unsaved.</summary>
    /// <param name="before">The state before the step.</param>
    /// <param name="after">The state after it.</param>
    internal static Effect? After(ScreenState before, ScreenState after)
    {
        BeamDocument? work = Of(after);
        return work == Of(before) ? null
            : work is null ? new Effect.DropRecovery()
            : new Effect.KeepSoon();
    }
}
