using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Sticks of timber for the tests of its rules.</summary>
internal static class Timber
{
    internal const double Inch = 0.0254;
    internal const double Foot = 12 * Inch;
    internal const double Pound = 4.4482216152605;
    internal const double Psi = Pound / (Inch * Inch);
    internal const double MPa = 1e6;

    internal static readonly MemberActions Any = new(1, 1, 1, 0, 0);

    /// <summary>Douglas fir-larch No. 2: Fb 900, Fv 180, Fc⊥ 625, Ft 575, Emin 580 000 psi (NDS Supplement, Table 4A, from memory).</summary>
    internal static readonly TimberStrengths Fir =
        new(TimberBasis.Reference, 900 * Psi, 180 * Psi, 625 * Psi, 580_000 * Psi)
        {
            Tension = 575 * Psi,
            TakesSizeFactor = true,
        };

    /// <summary>C24 of EN 338: fm,k 24, fv,k 4.0, fc,90,k 2.5, ft,0,k 14.5, E0,05 7400 N/mm².</summary>
    internal static readonly TimberStrengths C24 = new(TimberBasis.Characteristic, 24 * MPa, 4 * MPa, 2.5 * MPa, 7400 * MPa)
    {
        Tension = 14.5 * MPa,
    };

    internal static Section Rectangle(double width, double depth, int plies = 1, bool flat = false) =>
        Section.Of(new SectionShape.Rectangle(width, depth, plies), flat);

    internal static Material Of(TimberStrengths? strengths, params (FactorKind Kind, double Value)[] factors) => new()
    {
        Timber = strengths,
        Factors = [.. factors.Select(factor => new StrengthFactor(factor.Kind, factor.Value))],
    };

    internal static Resistance One(this ImmutableArray<Resistance> all, CheckKind kind) => all.Single(one => one.Kind == kind);

    internal static double Term(this Resistance resistance, CheckSymbol symbol) =>
        resistance.Terms.Single(term => term.Symbol == symbol).Value;

    /// <summary>The factors as "Duration 1.25, WetService 1, …".</summary>
    internal static string Product(this Resistance resistance) => string.Join(
        ", ", resistance.Factors.Select(factor => FormattableString.Invariant($"{factor.Kind} {factor.Value:0.####}")));

    /// <summary>Equality to so many parts of the expected value.</summary>
    internal static void IsWithin(double share, double expected, double? actual) =>
        Assert.InRange(actual!.Value, expected - Math.Abs(expected) * share, expected + Math.Abs(expected) * share);
}
