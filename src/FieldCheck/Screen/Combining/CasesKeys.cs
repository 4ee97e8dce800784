using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Combining;

/// <summary>Does what the commands of the Cases view say: those of the form, and scrolling the envelopes.</summary>
internal static class CasesKeys
{
    /// <summary>Does what a command of the Cases view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.ScrollEnvelopes => state with { CasesTop = CasesViewPicture.Layout.PageFrom(state, key) },
        _ => Commands.InForm(state, name, key),
    };
}
