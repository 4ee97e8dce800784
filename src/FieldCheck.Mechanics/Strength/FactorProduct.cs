using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The factors on one strength of timber, in the order of the rules.</summary>
/// <param name="Factors">Those that are known.</param>
/// <param name="Missing">The first one that the rules ask for and nobody gave; null: none.</param>
internal sealed record FactorProduct(ImmutableArray<StrengthFactor> Factors, FactorKind? Missing)
{
    /// <summary>What the strength is multiplied by [–]; null while a factor is missing.</summary>
    internal double? Value => Missing is null ? Product(Factors) : null;

    /// <summary>The product of these factors; a null is one that is missing.</summary>
    internal static FactorProduct Of(params (FactorKind Kind, double? Value)[] factors) => new(
        [.. factors.Where(factor => factor.Value is not null)
            .Select(factor => new StrengthFactor(factor.Kind, factor.Value!.Value))],
        factors.Where(factor => factor.Value is null).Select(factor => (FactorKind?)factor.Kind).FirstOrDefault());

    /// <summary>The same without one factor, for a strength before it.</summary>
    internal double? Without(FactorKind kind) =>
        Missing is null ? Product(Factors.Where(factor => factor.Kind != kind)) : null;

    /// <summary>The same with one factor more, right after another.</summary>
    internal FactorProduct With(FactorKind kind, double value, FactorKind after)
    {
        int place = Factors.TakeWhile(factor => factor.Kind != after).Count();
        StrengthFactor more = new(kind, value);
        return this with { Factors = Factors.Insert(Math.Min(place + 1, Factors.Length), more) };
    }

    private static double Product(IEnumerable<StrengthFactor> factors) => factors.Aggregate(
        1.0,
        (product, factor) => factor.Kind == FactorKind.PartialFactor ? product / factor.Value : product * factor.Value);
}
