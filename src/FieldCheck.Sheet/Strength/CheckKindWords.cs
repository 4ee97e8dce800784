using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>What kinds of checks are called where no span or support can be named.</summary>
internal static class CheckKindWords
{
    /// <summary>The kind, as "deflection of the bays".</summary>
    internal static string Of(CheckKind kind) => kind switch
    {
        CheckKind.Bending => "bending",
        CheckKind.Shear => "shear",
        CheckKind.BendingAndAxial => "bending and axial force",
        CheckKind.LateralStability => "lateral stability",
        CheckKind.Bearing => "bearing",
        CheckKind.PadPressure => "pressure under pads",
        CheckKind.WebYielding or CheckKind.WebCrippling => "the web over supports",
        CheckKind.Deflection => "deflection of the bays",
        CheckKind.OverhangDeflection => "deflection of overhangs",
        CheckKind.FinalDeflection => "final deflection of the bays",
        CheckKind.FinalOverhangDeflection => "final deflection of overhangs",
        CheckKind.AbsoluteDeflection => "deflection anywhere",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No words for it."),
    };

    /// <summary>The same, wherever a deflection stands, as "deflection".</summary>
    internal static string InShort(CheckKind kind) => kind switch
    {
        CheckKind.Deflection or CheckKind.OverhangDeflection or CheckKind.AbsoluteDeflection => "deflection",
        CheckKind.FinalDeflection or CheckKind.FinalOverhangDeflection => "final deflection",
        _ => Of(kind),
    };

    /// <summary>Whether it is of the strength of the stick.</summary>
    internal static bool IsOfStrength(CheckKind kind) =>
        kind is CheckKind.Bending or CheckKind.Shear or CheckKind.BendingAndAxial or CheckKind.LateralStability;
}
