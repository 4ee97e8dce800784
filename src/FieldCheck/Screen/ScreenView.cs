namespace FieldCheck.Screen;

/// <summary>The views, in the order in which the title line names them.</summary>
internal enum ScreenView
{
    /// <summary>Form, results and sketches.</summary>
    Beam,

    /// <summary>Shear, moment and deflection, large.</summary>
    Plots,

    /// <summary>The reactions worked by hand.</summary>
    Working,

    /// <summary>What a supplier states, and what comes of it.</summary>
    Stated,

    /// <summary>Section, material and limits, and whether they are enough.</summary>
    Section,

    /// <summary>Cases, combinations and rolling loads, and the envelopes that they make.</summary>
    Cases,
}
