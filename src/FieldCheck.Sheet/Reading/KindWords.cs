using System.Diagnostics;
using System.Globalization;

namespace FieldCheck.Sheet.Reading;

/// <summary>The words for each kind of value: its name, an example, the units it is written in.</summary>
internal static class KindWords
{
    internal static string Name(QuantityKind kind) => Words(kind).Name;

    /// <summary>As it may be typed, without quotes.</summary>
    internal static string Example(QuantityKind kind) => Words(kind).Example;

    /// <summary>The units of the contract for this kind, in its order.</summary>
    internal static string[] Units(QuantityKind kind) =>
        Words(kind).Units.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Names and examples of all that a cell takes, as "a length such as "12 ft 6 in"".</summary>
    internal static string Expected(ReadOnlySpan<QuantityKind> kinds)
    {
        string[] each = new string[kinds.Length];
        for (int i = 0; i < kinds.Length; i++)
        {
            each[i] = $"{Name(kinds[i])} such as \"{Example(kinds[i])}\"";
        }

        return Either(each);
    }

    /// <summary>"ft, in or m".</summary>
    internal static string Either(IReadOnlyList<string> words) => words.Count < 2
        ? string.Concat(words)
        : string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1];

    internal static string Found(Term term) => term.IsShare ? "a share" : Found(term.Dimension);

    internal static string Found(Dimension dimension)
    {
        foreach (QuantityKind kind in Named)
        {
            if (Dimension.Of(kind) == dimension)
            {
                return Name(kind);
            }
        }

        return "a value in " + string.Join(' ', Powers(dimension));
    }

    // In the order of preference where two kinds have one dimension: without a cell's wish, N/m is a force per length.
    private static readonly QuantityKind[] Named =
    [
        QuantityKind.Number, QuantityKind.Length, QuantityKind.Force, QuantityKind.ForcePerLength,
        QuantityKind.Pressure, QuantityKind.Moment, QuantityKind.RotationalStiffness, QuantityKind.Area,
        QuantityKind.SectionModulus, QuantityKind.Inertia, QuantityKind.UnitWeight, QuantityKind.Angle,
    ];

    private static IEnumerable<string> Powers(Dimension dimension)
    {
        (string Unit, int Exponent)[] parts =
            [("N", dimension.Force), ("m", dimension.Length), ("rad", dimension.Angle)];
        return parts
            .Where(part => part.Exponent != 0)
            .Select(part => part.Exponent == 1
                ? part.Unit
                : part.Unit + "^" + part.Exponent.ToString(CultureInfo.InvariantCulture));
    }

    private static (string Name, string Example, string Units) Words(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => ("a length", "12 ft 6 in", "ft in m cm mm"),
        QuantityKind.Force => ("a force", "1850 lbf", "N kN MN lbf lb kip kgf kg t"),
        QuantityKind.ForcePerLength => (
            "a force per length", "12 kN/m", "N/m kN/m N/mm plf lb/ft lbf/ft lbf/in klf kip/ft kg/m"),
        QuantityKind.Pressure => (
            "a pressure", "50 psf", "Pa kPa MPa GPa N/mm2 N/m2 kN/m2 psf ksf psi ksi"),
        QuantityKind.Moment => ("a moment", "5 kNm", "N*m kN*m Nm kNm lbf-ft lb-ft ft-lb kip-ft kip-in"),
        QuantityKind.Stiffness => ("a stiffness", "12 kip/in", "N/m kN/m N/mm kN/mm lbf/in kip/in"),
        QuantityKind.RotationalStiffness => (
            "a rotational stiffness", "500 kNm/rad", "N*m/rad kN*m/rad kNm/rad kip-ft/rad kip-ft/deg"),
        QuantityKind.Area => ("an area", "8.84 in2", "mm2 cm2 m2 in2 ft2"),
        QuantityKind.SectionModulus => ("a section modulus", "32.4 in3", "mm3 cm3 m3 in3"),
        QuantityKind.Inertia => ("a second moment of area", "170 in4", "mm4 cm4 m4 in4"),
        QuantityKind.UnitWeight => ("a unit weight", "35 pcf", "kg/m3 lb/ft3 pcf kN/m3"),
        QuantityKind.Angle => ("an angle", "30 deg", "deg rad mrad"),
        QuantityKind.Number => ("a number", "1.25", string.Empty),
        QuantityKind.Share => ("a share", "30 %", "%"),
        _ => throw new UnreachableException(),
    };
}
