namespace FieldCheck.Sheet.Units;

/// <summary>The units that results are shown in and that a bare number in a cell takes.</summary>
public enum UnitSystem
{
    /// <summary>m, kN, kNm, MPa, mm.</summary>
    Si,

    /// <summary>ft, kip (lbf in cells), kip-ft, psi, in.</summary>
    Us,
}
