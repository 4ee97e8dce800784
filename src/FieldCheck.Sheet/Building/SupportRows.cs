using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads what a support holds, and that it has no key of another kind.</summary>
internal static class SupportRows
{
    /// <summary>Keys that belong to some kinds only.</summary>
    private static readonly ImmutableArray<(string Key, string[] Kinds)> KeysOfKinds =
    [
        ("surface", ["roller"]),
        ("stiffness", ["spring"]),
        ("rotational_stiffness", ["pin", "roller", "spring"]),
        ("rotation", ["fixed", "guide"]),
    ];

    /// <summary>The support at a position; null when it is not known, which has been told.</summary>
    internal static Support? Read(Row row, double? position)
    {
        row.Positive("bearing");
        row.Positive("bearing_allowable");
        row.Positive("allowable_pressure");
        string? kind = KindOf(row);
        if (kind is null || position is not double place)
        {
            return null;
        }

        (Restraint along, Restraint? across, Restraint? rotation) = Holds(row, kind);
        double slope = row.Value("surface") ?? 0;
        return across is null || rotation is null || Math.Abs(slope) >= Math.PI / 2
            ? null
            : new Support(
                place, along, across, rotation, slope,
                row.Value("settlement") ?? 0, row.Value("rotation") ?? 0, Action(row));
    }

    /// <summary>Whether a hinge can stand with it: nothing resists turning.</summary>
    internal static bool TurnsFreely(Row row) =>
        row.Text("kind") is "pin" or "roller" or "spring" && !row.Has("rotational_stiffness");

    private static string? KindOf(Row row)
    {
        if (row.Text("kind") is not string kind)
        {
            row.Refuse("kind", ProblemText.NoSupportKind);
            return null;
        }

        foreach ((string key, string[] kinds) in KeysOfKinds)
        {
            if (row.Has(key) && !kinds.Contains(kind))
            {
                row.Refuse(key, ProblemText.OnlyWith(key, kinds));
            }
        }

        bool holdsRotation = kind is "fixed" or "guide";
        if (holdsRotation && row.Text("acts") is "up" or "down")
        {
            row.Refuse("acts", ProblemText.ActsOnHold);
        }

        if (kind == "guide" && row.Has("settlement"))
        {
            row.Refuse("settlement", ProblemText.SettlementOfGuide);
        }

        if (Math.Abs(row.Value("surface") ?? 0) >= Math.PI / 2)
        {
            row.Refuse("surface", ProblemText.SurfaceTooSteep);
        }

        return kind;
    }

    private static (Restraint Along, Restraint? Across, Restraint? Rotation) Holds(Row row, string kind) => kind switch
    {
        "pin" => (Restraint.Held, Restraint.Held, Turning(row)),
        "roller" => (Restraint.Free, Restraint.Held, Turning(row)),
        "spring" => (Restraint.Free, Across(row), Turning(row)),
        "fixed" => (Restraint.Held, Restraint.Held, Restraint.Held),
        "guide" => (Restraint.Held, Restraint.Free, Restraint.Held),
        _ => (Restraint.Free, null, null),
    };

    private static Restraint.Spring? Across(Row row) =>
        row.NeededPositive("stiffness", ProblemText.NoStiffnessOfSpring) is double stiffness
            ? new Restraint.Spring(stiffness)
            : null;

    private static Restraint? Turning(Row row) =>
        !row.Has("rotational_stiffness") ? Restraint.Free
        : row.Positive("rotational_stiffness") is double stiffness ? new Restraint.Spring(stiffness)
        : null;

    private static SupportAction Action(Row row) => row.Text("acts") switch
    {
        "up" => SupportAction.PushesOnly,
        "down" => SupportAction.HoldsDownOnly,
        _ => SupportAction.Both,
    };
}
