using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>What a click on a piece of the picture does. Closed set: the cases are the nested records.</summary>
internal abstract record LinkTarget
{
    private LinkTarget()
    {
    }

    /// <summary>The same as a key.</summary>
    /// <param name="Stroke">The key.</param>
    internal sealed record Key(KeyStroke Stroke) : LinkTarget;

    /// <summary>A command.</summary>
    /// <param name="Name">Which.</param>
    internal sealed record Command(CommandName Name) : LinkTarget;

    /// <summary>To a cell of the form.</summary>
    /// <param name="Place">Which.</param>
    internal sealed record Cell(FormPlace Place) : LinkTarget;

    /// <summary>To a line of what lies over the view; the chosen line is taken, as by Enter.</summary>
    /// <param name="Away">How many lines below the chosen one; negative: above.</param>
    internal sealed record Line(int Away) : LinkTarget;
}
