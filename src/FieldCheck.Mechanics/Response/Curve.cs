namespace FieldCheck.Mechanics.Response;

/// <summary>One of the quantities that run along the beam.</summary>
public enum Curve
{
    /// <summary>N [N], positive in tension.</summary>
    Axial,

    /// <summary>V [N], the sum of the upward forces to the left.</summary>
    Shear,

    /// <summary>M [N·m], positive sagging.</summary>
    Moment,

    /// <summary>Slope [rad], positive counter-clockwise.</summary>
    Slope,

    /// <summary>Deflection [m], positive down.</summary>
    Deflection,
}
