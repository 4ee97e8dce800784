namespace FieldCheck.Mechanics.Strength;

/// <summary>What one check of a beam is about.</summary>
public enum CheckKind
{
    /// <summary>Bending, at the section.</summary>
    Bending,

    /// <summary>Shear.</summary>
    Shear,

    /// <summary>Bending with the force along the beam, as a plain sum.</summary>
    BendingAndAxial,

    /// <summary>Bending, limited by sideways buckling between lateral supports.</summary>
    LateralStability,

    /// <summary>The stick itself across its grain, or what it bears on, at a support.</summary>
    Bearing,

    /// <summary>The pressure under the pad of a support.</summary>
    PadPressure,

    /// <summary>Local yielding of the web over a support.</summary>
    WebYielding,

    /// <summary>The web over a support, where it cripples before it yields.</summary>
    WebCrippling,

    /// <summary>Deflection of a bay from the chord between its supports.</summary>
    Deflection,

    /// <summary>Movement of an overhang from the level of its support.</summary>
    OverhangDeflection,

    /// <summary>Deflection of a bay, with what lasting loads add in time.</summary>
    FinalDeflection,

    /// <summary>Movement of an overhang, with what lasting loads add in time.</summary>
    FinalOverhangDeflection,

    /// <summary>Deflection anywhere, from the unloaded line.</summary>
    AbsoluteDeflection,
}
