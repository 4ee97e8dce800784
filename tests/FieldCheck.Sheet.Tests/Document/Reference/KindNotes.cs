using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>What a quantity of each kind is written in.</summary>
internal static class KindNotes
{
    /// <summary>The units of a kind, each of which <see cref="QuantityReader"/> takes.</summary>
    internal static readonly Dictionary<QuantityKind, string[]> Units = new()
    {
        [QuantityKind.Length] = ["mm", "cm", "m", "in", "ft"],
        [QuantityKind.Force] = ["N", "kN", "MN", "lbf", "lb", "kip", "kgf", "kg", "t"],
        [QuantityKind.ForcePerLength] = ["N/m", "kN/m", "N/mm", "plf", "lb/ft", "lbf/ft", "lbf/in", "klf", "kip/ft", "kg/m"],
        [QuantityKind.Pressure] = ["Pa", "kPa", "MPa", "GPa", "N/mm2", "N/m2", "kN/m2", "psf", "ksf", "psi", "ksi"],
        [QuantityKind.Moment] = ["N*m", "kN*m", "Nm", "kNm", "kN-m", "lbf-ft", "lb-ft", "ft-lb", "kip-ft", "kip-in"],
        [QuantityKind.Stiffness] = ["N/m", "kN/m", "N/mm", "kN/mm", "lbf/in", "kip/in"],
        [QuantityKind.RotationalStiffness] = ["N*m/rad", "kN*m/rad", "kNm/rad", "kip-ft/rad", "kip-ft/deg"],
        [QuantityKind.Area] = ["mm2", "cm2", "m2", "in2", "ft2"],
        [QuantityKind.SectionModulus] = ["mm3", "cm3", "m3", "in3"],
        [QuantityKind.Inertia] = ["mm4", "cm4", "m4", "in4"],
        [QuantityKind.UnitWeight] = ["kg/m3", "lb/ft3", "pcf", "kN/m3"],
        [QuantityKind.Angle] = ["deg", "rad", "mrad"],
        [QuantityKind.Share] = ["%"],
    };

    private static readonly Dictionary<QuantityKind, string> Words = new()
    {
        [QuantityKind.Length] = "A length",
        [QuantityKind.Force] = "A force; a mass reads as its weight",
        [QuantityKind.ForcePerLength] = "A force per length; a mass per length reads as its weight",
        [QuantityKind.Pressure] = "A pressure or stress",
        [QuantityKind.Moment] = "A moment",
        [QuantityKind.Stiffness] = "A spring's stiffness",
        [QuantityKind.RotationalStiffness] = "A rotational spring's stiffness",
        [QuantityKind.Area] = "An area",
        [QuantityKind.SectionModulus] = "A section modulus",
        [QuantityKind.Inertia] = "A second moment of area",
        [QuantityKind.UnitWeight] = "A mass or weight per volume",
        [QuantityKind.Angle] = "An angle",
        [QuantityKind.Share] = "A share",
    };

    /// <summary>One sentence with the units.</summary>
    internal static string Of(QuantityKind kind) => $"{Words[kind]}, with its unit: {string.Join(", ", Units[kind])}.";
}
