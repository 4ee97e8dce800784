namespace FieldCheck.Screen.Files;

/// <summary>What a file is opened as, which decides where saving puts it.</summary>
internal enum OpenAs
{
    /// <summary>As itself: saving writes to it.</summary>
    File,

    /// <summary>As a pattern of the site: saving asks for a name.</summary>
    Pattern,

    /// <summary>As a copy: saving asks for a name, and the title says what it is a copy of.</summary>
    Copy,
}
