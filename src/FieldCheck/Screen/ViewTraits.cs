using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen;

/// <summary>All that sets a view apart from the others.</summary>
internal sealed record ViewTraits
{
    /// <summary>The view.</summary>
    internal required ScreenView View { get; init; }

    /// <summary>The command that shows it.</summary>
    internal required CommandName Command { get; init; }

    /// <summary>The letter that stands for it on the menu's page of views.</summary>
    internal required char Letter { get; init; }

    /// <summary>The groups of commands that work in it alone.</summary>
    internal required ImmutableArray<CommandGroup> Groups { get; init; }

    /// <summary>Draws it between title and message line: columns and lines are 1 or more.</summary>
    internal required Func<ScreenState, int, int, Picture> Draw { get; init; }

    /// <summary>What a key does in it, nothing lying over it.</summary>
    internal required Func<ScreenState, KeyStroke, ScreenStep> Press { get; init; }

    /// <summary>Does what a command of its groups says; the key is the one that it was reached by.</summary>
    internal required Func<ScreenState, CommandName, KeyName?, ScreenState> Change { get; init; }

    /// <summary>What the message line says where nothing else is told.</summary>
    internal required Func<ScreenState, Notice> Says { get; init; }

    /// <summary>What the help says before its keys.</summary>
    internal required Func<CommandTable, ImmutableArray<string>> Help { get; init; }

    /// <summary>What the key line begins with, for keys that need no name.</summary>
    internal ImmutableArray<string> Hints { get; init; } = [];
}
