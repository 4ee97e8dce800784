namespace FieldCheck.Screen.Painting;

/// <summary>What a piece of text is there for; the theme decides how that looks.</summary>
internal enum Role
{
    /// <summary>Ordinary text.</summary>
    Text,

    /// <summary>Of less weight: hints, figures that follow from others.</summary>
    Faint,

    /// <summary>Where the person is.</summary>
    Focus,

    /// <summary>A word that says that something holds.</summary>
    Good,

    /// <summary>A word that says: look here.</summary>
    Warn,

    /// <summary>A word that says that something does not hold.</summary>
    Bad,

    /// <summary>The name of what stands below it.</summary>
    Heading,

    /// <summary>Drawn things: the beam and its curves.</summary>
    Accent,
}
