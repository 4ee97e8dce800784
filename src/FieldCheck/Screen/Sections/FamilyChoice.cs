using System.Collections.Immutable;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen.Sections;

/// <summary>Which families of the catalogue the person switched, for sections that would do; the others go by the material.</summary>
/// <param name="Switched">True for a family that is to be tried, false for one that is not, whatever the material.</param>
internal sealed record FamilyChoice(ImmutableDictionary<string, bool> Switched)
{
    /// <summary>None was switched.</summary>
    internal static FamilyChoice ByMaterial { get; } = new(ImmutableDictionary.Create<string, bool>(StringComparer.Ordinal));

    /// <summary>The families to try; never none: all, where none goes with the material.</summary>
    /// <param name="whatIf">The beam.</param>
    internal ImmutableArray<string> Tried(WhatIf whatIf)
    {
        MaterialKind? material = whatIf.Material;
        ImmutableArray<string> chosen =
        [
            .. whatIf.Families
                .Where(family => Switched.TryGetValue(family.Name, out bool isOn) ? isOn : family.GoesWith(material))
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
