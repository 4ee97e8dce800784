using System.Collections.Frozen;
using FieldCheck.Sheet.Reading;
using UnitsNet;
using UnitsNet.Units;

namespace FieldCheck.Sheet.Units;

/// <summary>Every unit that is read, and nothing else. Additions go into docs/beam-file.md first.</summary>
/// <remarks>
/// Factors are those of UnitsNet, asked once. Where its constant is rounded (per length: 1e-9 off; per degree: 6e-7),
/// so that 12 plf and 3 psf over 4 ft would differ, the factor is the quotient of its exact pound, foot, inch and
/// kilogram-force instead. The text itself never goes to that library: it reads "1,5 ft" as 15 ft.
/// No two spellings differ by case alone, so case does not matter.
/// </remarks>
internal static class UnitTable
{
    private static readonly Lazy<FrozenDictionary<string, Unit>> Units = new(Build);

    internal static IEnumerable<Unit> All => Units.Value.Values;

    /// <summary>Finds a unit as people write it: any case, "kN·m" or "kN-m" for "kN*m", "mm²" for "mm2".</summary>
    internal static bool TryFind(string written, out Unit unit) =>
        Units.Value.TryGetValue(UnitGrammar.Plain(written), out unit);

    /// <summary>How many coherent SI units one of the unit is.</summary>
    internal static double Factor(string spelling) => Of(spelling).Factor;

    /// <summary>A unit that is known to be in the table.</summary>
    internal static Unit Of(string spelling) => Units.Value[UnitGrammar.Plain(spelling)];

    private static double Foot => Length.From(1, LengthUnit.Foot).Meters;

    private static double Inch => Length.From(1, LengthUnit.Inch).Meters;

    private static double PoundForce => Force.From(1, ForceUnit.PoundForce).Newtons;

    private static double Kip => Force.From(1, ForceUnit.KilopoundForce).Newtons;

    private static double KilogramForce => Force.From(1, ForceUnit.KilogramForce).Newtons;

    private static FrozenDictionary<string, Unit> Build()
    {
        IEnumerable<Unit> all =
        [
            .. Lengths(), .. Forces(), .. ForcesPerLength(), .. Pressures(), .. Moments(), .. Springs(),
            .. Areas(), .. SectionModuli(), .. Inertias(), .. UnitWeights(), .. Angles(),
            new("%", 0.01, QuantityKind.Share),
        ];
        return all.ToFrozenDictionary(unit => UnitGrammar.Plain(unit.Spelling), StringComparer.OrdinalIgnoreCase);
    }

    private static Unit[] Lengths() =>
    [
        new("ft", Foot, QuantityKind.Length),
        new("in", Inch, QuantityKind.Length),
        new("m", 1, QuantityKind.Length),
        new("cm", Length.From(1, LengthUnit.Centimeter).Meters, QuantityKind.Length),
        new("mm", Length.From(1, LengthUnit.Millimeter).Meters, QuantityKind.Length),
    ];

    // A mass stands for its weight at 9.80665 m/s²: what a beam feels of a pallet is a force.
    private static Unit[] Forces() =>
    [
        new("N", 1, QuantityKind.Force),
        new("kN", Force.From(1, ForceUnit.Kilonewton).Newtons, QuantityKind.Force),
        new("MN", Force.From(1, ForceUnit.Meganewton).Newtons, QuantityKind.Force),
        new("lbf", PoundForce, QuantityKind.Force),
        new("lb", PoundForce, QuantityKind.Force),
        new("kip", Kip, QuantityKind.Force),
        new("kgf", KilogramForce, QuantityKind.Force),
        new("kg", KilogramForce, QuantityKind.Force),
        new("t", Force.From(1, ForceUnit.TonneForce).Newtons, QuantityKind.Force),
    ];

    private static Unit[] ForcesPerLength() =>
    [
        new("N/m", 1, QuantityKind.ForcePerLength),
        new("kN/m", Per(ForcePerLengthUnit.KilonewtonPerMeter), QuantityKind.ForcePerLength),
        new("N/mm", Per(ForcePerLengthUnit.NewtonPerMillimeter), QuantityKind.ForcePerLength),
        new("plf", PoundForce / Foot, QuantityKind.ForcePerLength),
        new("lb/ft", PoundForce / Foot, QuantityKind.ForcePerLength),
        new("lbf/ft", PoundForce / Foot, QuantityKind.ForcePerLength),
        new("lbf/in", PoundForce / Inch, QuantityKind.ForcePerLength),
        new("klf", Kip / Foot, QuantityKind.ForcePerLength),
        new("kip/ft", Kip / Foot, QuantityKind.ForcePerLength),
        new("kg/m", KilogramForce, QuantityKind.ForcePerLength),
    ];

    private static Unit[] Pressures() =>
    [
        new("Pa", 1, QuantityKind.Pressure),
        new("kPa", On(PressureUnit.Kilopascal), QuantityKind.Pressure),
        new("MPa", On(PressureUnit.Megapascal), QuantityKind.Pressure),
        new("GPa", On(PressureUnit.Gigapascal), QuantityKind.Pressure),
        new("N/mm2", On(PressureUnit.NewtonPerSquareMillimeter), QuantityKind.Pressure),
        new("N/m2", 1, QuantityKind.Pressure),
        new("kN/m2", On(PressureUnit.KilonewtonPerSquareMeter), QuantityKind.Pressure),
        new("psf", On(PressureUnit.PoundForcePerSquareFoot), QuantityKind.Pressure),
        new("ksf", On(PressureUnit.KilopoundForcePerSquareFoot), QuantityKind.Pressure),
        new("psi", On(PressureUnit.PoundForcePerSquareInch), QuantityKind.Pressure),
        new("ksi", On(PressureUnit.KilopoundForcePerSquareInch), QuantityKind.Pressure),
    ];

    private static Unit[] Moments() =>
    [
        new("N*m", 1, QuantityKind.Moment),
        new("kN*m", Turning(TorqueUnit.KilonewtonMeter), QuantityKind.Moment),
        new("Nm", 1, QuantityKind.Moment),
        new("kNm", Turning(TorqueUnit.KilonewtonMeter), QuantityKind.Moment),
        new("lbf-ft", Turning(TorqueUnit.PoundForceFoot), QuantityKind.Moment),
        new("lb-ft", Turning(TorqueUnit.PoundForceFoot), QuantityKind.Moment),
        new("ft-lb", Turning(TorqueUnit.PoundForceFoot), QuantityKind.Moment),
        new("kip-ft", Turning(TorqueUnit.KilopoundForceFoot), QuantityKind.Moment),
        new("kip-in", Turning(TorqueUnit.KilopoundForceInch), QuantityKind.Moment),
    ];

    // N/m, kN/m, N/mm and lbf/in stand among the forces per length already.
    private static Unit[] Springs() =>
    [
        new("kN/mm", Per(ForcePerLengthUnit.KilonewtonPerMillimeter), QuantityKind.Stiffness),
        new("kip/in", Kip / Inch, QuantityKind.Stiffness),
        new("N*m/rad", 1, QuantityKind.RotationalStiffness),
        new("kN*m/rad", Turning(TorqueUnit.KilonewtonMeter), QuantityKind.RotationalStiffness),
        new("kNm/rad", Turning(TorqueUnit.KilonewtonMeter), QuantityKind.RotationalStiffness),
        new("kip-ft/rad", Turning(TorqueUnit.KilopoundForceFoot), QuantityKind.RotationalStiffness),
        new("kip-ft/deg", Turning(TorqueUnit.KilopoundForceFoot) * 180 / Math.PI, QuantityKind.RotationalStiffness),
    ];

    private static Unit[] Areas() =>
    [
        new("mm2", Area.From(1, AreaUnit.SquareMillimeter).SquareMeters, QuantityKind.Area),
        new("cm2", Area.From(1, AreaUnit.SquareCentimeter).SquareMeters, QuantityKind.Area),
        new("m2", 1, QuantityKind.Area),
        new("in2", Area.From(1, AreaUnit.SquareInch).SquareMeters, QuantityKind.Area),
        new("ft2", Area.From(1, AreaUnit.SquareFoot).SquareMeters, QuantityKind.Area),
    ];

    private static Unit[] SectionModuli() =>
    [
        new("mm3", Volume.From(1, VolumeUnit.CubicMillimeter).CubicMeters, QuantityKind.SectionModulus),
        new("cm3", Volume.From(1, VolumeUnit.CubicCentimeter).CubicMeters, QuantityKind.SectionModulus),
        new("m3", 1, QuantityKind.SectionModulus),
        new("in3", Volume.From(1, VolumeUnit.CubicInch).CubicMeters, QuantityKind.SectionModulus),
    ];

    private static Unit[] Inertias() =>
    [
        new("mm4", OfArea(AreaMomentOfInertiaUnit.MillimeterToTheFourth), QuantityKind.Inertia),
        new("cm4", OfArea(AreaMomentOfInertiaUnit.CentimeterToTheFourth), QuantityKind.Inertia),
        new("m4", 1, QuantityKind.Inertia),
        new("in4", OfArea(AreaMomentOfInertiaUnit.InchToTheFourth), QuantityKind.Inertia),
    ];

    private static Unit[] UnitWeights() =>
    [
        new("kg/m3", KilogramForce, QuantityKind.UnitWeight),
        new("lb/ft3", Within(SpecificWeightUnit.PoundForcePerCubicFoot), QuantityKind.UnitWeight),
        new("pcf", Within(SpecificWeightUnit.PoundForcePerCubicFoot), QuantityKind.UnitWeight),
        new("kN/m3", Within(SpecificWeightUnit.KilonewtonPerCubicMeter), QuantityKind.UnitWeight),
    ];

    private static Unit[] Angles() =>
    [
        new("deg", Angle.From(1, AngleUnit.Degree).Radians, QuantityKind.Angle),
        new("rad", 1, QuantityKind.Angle),
        new("mrad", Angle.From(1, AngleUnit.Milliradian).Radians, QuantityKind.Angle),
    ];

    private static double Per(ForcePerLengthUnit unit) => ForcePerLength.From(1, unit).NewtonsPerMeter;

    private static double On(PressureUnit unit) => Pressure.From(1, unit).Pascals;

    private static double Turning(TorqueUnit unit) => Torque.From(1, unit).NewtonMeters;

    private static double OfArea(AreaMomentOfInertiaUnit unit) => AreaMomentOfInertia.From(1, unit).MetersToTheFourth;

    private static double Within(SpecificWeightUnit unit) => SpecificWeight.From(1, unit).NewtonsPerCubicMeter;
}
