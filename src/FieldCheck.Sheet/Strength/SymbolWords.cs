using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>What one number of a check is called.</summary>
/// <param name="Symbol">Its sign, as "S".</param>
/// <param name="Words">What it is, as "section modulus".</param>
public readonly record struct SymbolWords(string Symbol, string Words)
{
    /// <summary>The sign and the words of a number; plain ASCII.</summary>
    /// <param name="symbol">Which number.</param>
    public static SymbolWords Of(CheckSymbol symbol) => symbol switch
    {
        CheckSymbol.Moment => new("M", "greatest moment"),
        CheckSymbol.Shear => new("V", "greatest shear"),
        CheckSymbol.Axial => new("N", "force along the beam"),
        CheckSymbol.Reaction => new("R", "reaction"),
        CheckSymbol.SectionModulus => new("S", "section modulus"),
        CheckSymbol.PlasticModulus => new("Z", "plastic section modulus"),
        CheckSymbol.Area => new("A", "area"),
        CheckSymbol.PeakShearArea => new("I*t/Q", "shear over its greatest stress"),
        CheckSymbol.Yield => new("Fy", "yield stress"),
        CheckSymbol.GivenStress => new("F", "stress given"),
        CheckSymbol.BearingLength => new("lb", "length of the bearing"),
        CheckSymbol.BearingWidth => new("b", "width of the bearing"),
        CheckSymbol.NeededBearingLength => new("lb,min", "length of bearing that is enough"),
        CheckSymbol.PadArea => new("Ap", "area of the pad"),
        CheckSymbol.BayLength => new("L", "length"),
        CheckSymbol.Ratio => new("n", "length over deflection"),
        CheckSymbol.InstantDeflection => new("d,inst", "deflection at once"),
        CheckSymbol.CreepDeflection => new("d,creep", "what lasting loads add in time"),
        CheckSymbol.CreepFactor => new("creep", "share that it grows by in time"),
        CheckSymbol.UnbracedLength => new("Lb", "unbraced length"),
        CheckSymbol.SafetyFactor => new("Omega", "safety factor"),
        CheckSymbol.ResistanceFactor => new("phi", "resistance factor"),
        CheckSymbol.GradeStrength => new("F", "strength of the grade"),
        CheckSymbol.BracedStrength => new("Fb*", "strength in bending before lateral stability"),
        CheckSymbol.PlyWidth => new("b,ply", "width of one ply"),
        CheckSymbol.Depth => new("d", "depth"),
        CheckSymbol.EffectiveLength => new("le", "effective length for lateral buckling"),
        CheckSymbol.StabilityModulus => new("Emin", "modulus for lateral stability"),
        CheckSymbol.SlendernessRatio => new("RB", "slenderness ratio"),
        CheckSymbol.RelativeSlenderness => new("lambda,rel", "relative slenderness"),
        CheckSymbol.BucklingStress => new("FbE", "stress at which it buckles sideways"),
        CheckSymbol.EffectiveBearingLength => new("lef", "effective length of the bearing"),
        CheckSymbol.CrackShare => new("kcr", "share of the width that cracks leave"),
        _ => throw new ArgumentOutOfRangeException(nameof(symbol), symbol, "No words for it."),
    };
}
