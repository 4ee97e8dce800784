namespace FieldCheck.Screen.Files;

/// <summary>Where a beam that may be opened was found; in the order in which those not yet used are listed.</summary>
internal enum BeamPlace
{
    /// <summary>In the folder that the program was started in.</summary>
    Here,

    /// <summary>In another folder: that of the open file, or of a file used before.</summary>
    Elsewhere,

    /// <summary>Among the person's own presets.</summary>
    Personal,

    /// <summary>In a folder of presets of the site.</summary>
    Site,

    /// <summary>It ships with the program.</summary>
    BuiltIn,
}
