namespace FieldCheck.Screen.Keyboard;

/// <summary>Where a command works, and under which heading it is listed.</summary>
internal enum CommandGroup
{
    /// <summary>In the form of the Beam view alone.</summary>
    Form,

    /// <summary>In the form, on its cells.</summary>
    Cell,

    /// <summary>In the form, on its rows.</summary>
    Row,

    /// <summary>In the Plots view.</summary>
    Plots,

    /// <summary>In the Working view.</summary>
    Working,

    /// <summary>In the Stated view alone; what it shares with the form of the Beam view is under that.</summary>
    Stated,

    /// <summary>In the Section view alone; what it shares with the form of the Beam view is under that.</summary>
    Section,

    /// <summary>In the Cases view alone; what it shares with the form of the Beam view is under that.</summary>
    Cases,

    /// <summary>In every view.</summary>
    Beam,
}
