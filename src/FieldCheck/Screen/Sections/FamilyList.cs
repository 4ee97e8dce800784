using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Sections;

/// <summary>The page on which families of the catalogue are switched, for sections that would do.</summary>
internal static class FamilyList
{
    private const int NameWidth = 26;
    private const int CountWidth = 12;

    /// <summary>The list of sections that would do, of the families that are to be tried.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list as it was.</param>
    internal static ScreenState Back(ScreenState state, Overlay.CatalogueList list)
    {
        WhatIf whatIf = state.Settled.WhatIf!;
        ImmutableArray<string> tried = state.Families.Tried(whatIf);
        return state with
        {
            Overlay = list.Passing!.Families.Order().SequenceEqual(tried.Order())
                ? list
                : list with { Passing = whatIf.SectionsThatDo(tried), Choice = 0 },
        };
    }

    internal static ScreenStep Press(ScreenState state, Overlay.Families page, KeyStroke stroke)
    {
        WhatIf whatIf = state.Settled.WhatIf!;
        ShapeFamily chosen = whatIf.Families[page.Choice];
        ImmutableArray<string> tried = state.Families.Tried(whatIf);
        return (stroke switch
        {
            KeyStroke.Named { Key: KeyName.Tab } => Back(state, page.List),
            KeyStroke.Named { Key: KeyName.Enter } or KeyStroke.Text { Grapheme: " " } =>
                tried is [string only] && only == chosen.Name
                    ? state with { Notice = new Notice("One family at least is tried: switch another on first.", Role.Warn) }
                    : state with { Families = state.Families.Switch(whatIf, chosen.Name) },
            KeyStroke.Text { Grapheme: "m" } => state with { Families = FamilyChoice.Usual },
            _ => state with { Overlay = page with { Choice = OverlayKeys.Moved(page.Choice, whatIf.Families.Length, stroke) } },
        }).Step();
    }

    /// <summary>The page.</summary>
    /// <param name="state">The state.</param>
    /// <param name="page">The page, with the line the person is on.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Picture(ScreenState state, Overlay.Families page, int width, int height)
    {
        WhatIf whatIf = state.Settled.WhatIf!;
        ImmutableArray<string> tried = state.Families.Tried(whatIf);
        string material = whatIf.Material is MaterialKind kind ? $"   the material is {WouldDoWords.NameOf(kind)}" : "";
        return ListPicture.Of(
            $"Families to try{material}",
            [.. whatIf.Families.Select(family => Line(family, tried.Contains(family.Name)))],
            page.Choice,
            (null, "> ["),
            [],
            width,
            height);
    }

    private static string Line(ShapeFamily family, bool isTried)
    {
        string name = TextColumns.FitWithMark(TextSafety.ForTerminal(family.Name), NameWidth);
        string kind = family.Kind is MaterialKind known ? WouldDoWords.NameOf(known) : "";
        return $"[{(isTried ? 'x' : ' ')}] {name} {FormWords.Count(family.Count, "shape"),-CountWidth}{kind}".TrimEnd();
    }
}
