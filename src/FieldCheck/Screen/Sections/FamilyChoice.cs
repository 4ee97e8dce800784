using System.Collections.Immutable;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen.Sections;

/// <summary>
/// Which families of the catalogue the person switched, for sections that would do; of the others that of the present section is
/// tried, or where it is not of the catalogue those that go with the material.
/// </summary>
/// <param name="Switched">True for a family that is to be tried, false for one that is not, whatever the material.</param>
internal sealed record FamilyChoice(ImmutableDictionary<string, bool> Switched)
{
    /// <summary>None was switched.</summary>
    internal static FamilyChoice Usual { get; } = new(ImmutableDictionary.Create<string, bool>(StringComparer.Ordinal));

    /// <summary>The families to try; never none: all, where none goes with the material.</summary>
    /// <param name="whatIf">The beam.</param>
    internal ImmutableArray<string> Tried(WhatIf whatIf)
    {
        MaterialKind? material = whatIf.Material;
        string? own = whatIf.Families.FirstOrDefault(family => family.Name == whatIf.Family && family.GoesWith(material))?.Name;
        ImmutableArray<string> chosen =
        [
            .. whatIf.Families
                .Where(family => Switched.TryGetValue(family.Name, out bool isOn) ? isOn
                    : own is null ? family.GoesWith(material)
                    : family.Name == own)
                .Select(family => family.Name),
        ];
        return chosen.IsEmpty ? [.. whatIf.Families.Select(family => family.Name)] : chosen;
    }

    /// <summary>The choice with one family tried where it was not, or not where it was.</summary>
    /// <param name="whatIf">The beam.</param>
    /// <param name="family">The family.</param>
    internal FamilyChoice Switch(WhatIf whatIf, string family) =>
        new(Switched.SetItem(family, !Tried(whatIf).Contains(family)));
}
