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
}
