namespace FieldCheck.Screen.Files;

/// <summary>What the person wanted to do when the work had to be saved first. Closed set: the nested records.</summary>
internal abstract record AfterSave
{
    private AfterSave()
    {
    }

    /// <summary>Nothing but save.</summary>
    internal sealed record Stay : AfterSave;

    /// <summary>Leave the program.</summary>
    internal sealed record Leave : AfterSave;

    /// <summary>Begin a new beam.</summary>
    internal sealed record Begin : AfterSave;

    /// <summary>Choose another beam to open.</summary>
    internal sealed record Choose : AfterSave;
}
