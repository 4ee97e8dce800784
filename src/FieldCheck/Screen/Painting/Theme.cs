namespace FieldCheck.Screen.Painting;

/// <summary>How the roles of the screen look.</summary>
internal enum Theme
{
    /// <summary>The terminal's own colours.</summary>
    Terminal,

    /// <summary>No colour: bold and reversed only.</summary>
    Mono,

    /// <summary>Few, strong colours and nothing faint.</summary>
    HighContrast,
}
