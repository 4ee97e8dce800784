using System.Diagnostics;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Two units of one kind that are taken for each other.</summary>
public enum UnitMixUp
{
    /// <summary>1000: lb and kip, N and kN, kg and t.</summary>
    Thousand,

    /// <summary>4.448: kN and kip.</summary>
    KilonewtonAndKip,

    /// <summary>9.807: N and kgf.</summary>
    NewtonAndKilogram,

    /// <summary>2.205: lb and kg.</summary>
    PoundAndKilogram,

    /// <summary>3.281: ft and m, also in what is per length or times length.</summary>
    FootAndMetre,

    /// <summary>12: in and ft, also in what is per length or times length.</summary>
    InchAndFoot,

    /// <summary>14.59: N/m and lb/ft, kN/m and kip/ft.</summary>
    NewtonPerMetreAndPoundPerFoot,

    /// <summary>1.356: N·m and lb·ft, kN·m and kip·ft.</summary>
    NewtonMetreAndPoundFoot,

    /// <summary>7.233: lb·ft and kg·m.</summary>
    PoundFootAndKilogramMetre,
}

/// <summary>How far units that are taken for each other lie apart.</summary>
public static class UnitMixUps
{
    private const double Foot = 0.3048;
    private const double Pound = 4.4482216152605;
    private const double Kilogram = 9.80665;

    /// <summary>The greater unit over the smaller one [–].</summary>
    /// <param name="mixUp">The two.</param>
    public static double Ratio(this UnitMixUp mixUp) => mixUp switch
    {
        UnitMixUp.Thousand => 1000,
        UnitMixUp.KilonewtonAndKip => Pound,
        UnitMixUp.NewtonAndKilogram => Kilogram,
        UnitMixUp.PoundAndKilogram => Kilogram / Pound,
        UnitMixUp.FootAndMetre => 1 / Foot,
        UnitMixUp.InchAndFoot => 12,
        UnitMixUp.NewtonPerMetreAndPoundPerFoot => Pound / Foot,
        UnitMixUp.NewtonMetreAndPoundFoot => Pound * Foot,
        UnitMixUp.PoundFootAndKilogramMetre => Kilogram / Pound / Foot,
        _ => throw new UnreachableException(),
    };
}
