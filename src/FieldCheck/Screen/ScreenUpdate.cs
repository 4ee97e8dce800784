namespace FieldCheck.Screen;

/// <summary>What an event makes of the screen. Pure: files, clock and terminal are the shell's.</summary>
internal static class ScreenUpdate
{
    /// <summary>Applies one event.</summary>
    /// <param name="state">The screen before.</param>
    /// <param name="happening">The event.</param>
    internal static ScreenStep Apply(ScreenState state, ScreenEvent happening) => new(state, []);
}
