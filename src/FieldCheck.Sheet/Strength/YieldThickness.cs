using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Strength;

/// <summary>Whether a stick is thicker than the yield of its grade holds for.</summary>
internal static class YieldThickness
{
    /// <summary>True: rules are chosen that start from the yield.</summary>
    /// <param name="rules">The rules.</param>
    internal static bool Counts(StrengthRules rules) =>
        rules is StrengthRules.ElasticAllowable or StrengthRules.Aisc360Asd or StrengthRules.Aisc360Lrfd or StrengthRules.En1993;

    /// <summary>True: its thickest plate is thicker; where its plates are not known, false.</summary>
    /// <param name="stick">The stick.</param>
    internal static bool IsOver(Stick stick) =>
        stick.Section?.Shape?.Thickest > stick.Material?.YieldThickness * (1 + 1e-9);

    /// <summary>True: its yield has a thickness, and it is given by figures that leave its own open.</summary>
    /// <param name="stick">The stick.</param>
    internal static bool IsOpen(Stick stick) =>
        stick is { Section: { Shape: null }, Material.YieldThickness: not null };
}
