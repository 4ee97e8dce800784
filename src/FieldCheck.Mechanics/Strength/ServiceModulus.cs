using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What use and treatment leave of a modulus of timber.</summary>
public static class ServiceModulus
{
    /// <summary>
    /// E'/E of the NDS, C_M C_t C_i [–]: 0.9 when wet, 0.95 when incised, and C_t of strengths, which is at most that of
    /// moduli; 1 by other rules, and of materials without reference strengths.
    /// </summary>
    /// <param name="material">The material, with its factors.</param>
    /// <param name="rules">The rules that strengths are judged by.</param>
    public static double FactorOf(Material material, StrengthRules rules)
    {
        ArgumentNullException.ThrowIfNull(material);
        return rules == StrengthRules.Nds && material.Timber?.Basis == TimberBasis.Reference ? Nds(material) : 1;
    }

    /// <summary>The same by the NDS, whatever the rules.</summary>
    internal static double Nds(Material material) =>
        (Given(material, FactorKind.WetService) is > 0 ? 0.9 : 1)
        * Math.Min(1, Given(material, FactorKind.Temperature) ?? 1)
        * ((Given(material, FactorKind.Incising) ?? 1) == 1 ? 1 : 0.95);

    private static double? Given(Material material, FactorKind kind) =>
        material.Factors.FirstOrDefault(factor => factor.Kind == kind)?.Value;
}
