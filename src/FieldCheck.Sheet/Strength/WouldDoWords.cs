using System.Collections.Immutable;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>What is said of a search for sections that would do.</summary>
public static class WouldDoWords
{
    /// <summary>How many would do, and in which order they stand; no full stop.</summary>
    /// <param name="found">What was found.</param>
    public static string Count(WouldDo found)
    {
        ArgumentNullException.ThrowIfNull(found);
        string order = found.IsByArea ? "least area first, as the density is not known" : "lightest first";
        string pieces = found.Plies is null ? "" : $", as single pieces, not {TextSafety.ForTerminal(found.Plies)} side by side";
        return $"{found.Passing.Length} of {found.Tried} would do in the place of {TextSafety.ForTerminal(found.Replaced)}, of its material"
            + $"{pieces}, {order}";
    }

    /// <summary>How many were left out as they cannot be judged; empty: none.</summary>
    /// <param name="found">What was found.</param>
    public static string Open(WouldDo found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return found.Open == 0
            ? ""
            : $"{found.Open} more left out: with them a check would be NOT JUDGED, or the grade is for other sizes.";
    }

    /// <summary>
    /// That shapes tried are of another material, or that nobody looked whether the steel is made in shapes of another family than
    /// the present one; empty: neither is so.
    /// </summary>
    /// <param name="found">What was found.</param>
    /// <param name="whatIf">The beam.</param>
    public static string Made(WouldDo found, WhatIf whatIf)
    {
        ArgumentNullException.ThrowIfNull(found);
        ArgumentNullException.ThrowIfNull(whatIf);
        MaterialKind? material = whatIf.Material;
        ShapeFamily[] tried = [.. whatIf.Families.Where(family => found.Families.Contains(family.Name))];
        ShapeFamily[] others = [.. tried.Where(family => !family.GoesWith(material))];
        string of = string.Join(" and ", others.Select(family => NameOf(family.Kind!.Value)).Distinct());
        return others.Length > 0
            ? whatIf.Families.Any(family => family.GoesWith(material))
                ? $"The material is {NameOf(material!.Value)}, but these shapes are of {of}: "
                    + $"{string.Join("; ", others.Select(family => TextSafety.ForTerminal(family.Name)))}."
                : ""
            : tried.Any(family => family.Name != whatIf.Family && family.Kind is MaterialKind.Steel or MaterialKind.Aluminium)
                ? $"Whether {TextSafety.ForTerminal(whatIf.Grade ?? "the material")} is made in these shapes is not known here."
                : "";
    }

    /// <summary>Which families were not tried and why, as "Steel families left out: the material is timber."; empty: all were.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="all">All families.</param>
    /// <param name="material">What the beam is made of; null: not known.</param>
    /// <param name="own">The family of the present section; null: it is not one of the catalogue.</param>
    public static string LeftOut(WouldDo found, ImmutableArray<ShapeFamily> all, MaterialKind? material, string? own)
    {
        ArgumentNullException.ThrowIfNull(found);
        if (own is not null && found.Families is [string only] && only == own)
        {
            return $"Only {TextSafety.ForTerminal(own)} was tried, the family of the present section.";
        }

        if (material is MaterialKind without && all.All(family => !family.GoesWith(without)))
        {
            return $"The catalogue has no shapes of {NameOf(without)}: those of other materials are tried, with their own weights.";
        }

        ShapeFamily[] untried = [.. all.Where(family => !found.Families.Contains(family.Name))];
        MaterialKind[] others =
        [
            .. untried.Where(family => !family.GoesWith(material)).Select(family => family.Kind!.Value).Distinct()
                .Where(kind => all.Where(family => family.Kind == kind).All(untried.Contains)),
        ];
        string[] names = [.. untried.Where(family => family.Kind is not MaterialKind kind || !others.Contains(kind))
            .Select(family => TextSafety.ForTerminal(family.Name))];
        string kinds = string.Join(" and ", others.Select(NameOf));
        return string.Join(
            ' ',
            new[]
            {
                others.Length == 0 ? "" : $"{char.ToUpperInvariant(kinds[0])}{kinds[1..]} families left out: the material is {NameOf(material!.Value)}.",
                names.Length == 0 ? "" : $"Left out: {string.Join("; ", names)}.",
            }.Where(text => text.Length > 0));
    }

    /// <summary>A material in a word.</summary>
    /// <param name="kind">Which.</param>
    public static string NameOf(MaterialKind kind) => kind switch
    {
        MaterialKind.Timber => "timber",
        MaterialKind.Steel => "steel",
        MaterialKind.Aluminium => "aluminium",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No word for it."),
    };
}
