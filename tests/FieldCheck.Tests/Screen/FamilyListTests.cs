using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// Families of sections that would do: that of the present section, or by the material where it is of none, unless switched, and so
/// for every beam until the program is left.
/// </summary>
public sealed class FamilyListTests
{
    private static readonly BeamDocument Joist = new()
    {
        Spans = [new() { Length = "4 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads = [new() { Kind = "distributed", Intensity = "1 kN/m" }],
        Sections = [new() { Name = "joist", Width = "80 mm", Depth = "200 mm" }],
        Materials = [new() { Name = "pine", Grade = "C24", AllowableBending = "10 MPa" }],
        Limits = new() { Deflection = "L/300" },
    };

    [Fact]
    public void OnlyFamiliesOfTheMaterial_AreTried_AndTheOthersAreNamed()
    {
        Desk desk = List(Joist);

        Assert.Equal(["sawn timber, dressed", "sawn timber, metric"], Found(desk).Families.AsEnumerable());
        Assert.Equal(
            $"{Found(desk).Passing.Length} of 48 would do in the place of joist, of its material, lightest first. "
                + "Steel families left out: the material is timber.",
            desk.Says);
    }

    [Fact]
    public void FamilyOfThePresentSection_IsTriedAlone_AndOthersAreDoubted()
    {
        Desk desk = List(Joist with
        {
            Sections = [new() { Name = "joist", Shape = "W8x10" }],
            Materials = [new() { Name = "steel", Grade = "A992", AllowableBending = "100 MPa" }],
        });

        Assert.Equal("W", Assert.Single(Found(desk).Families.AsEnumerable()));
        Assert.EndsWith("lightest first. Only W was tried, the family of the present section.", desk.Says, StringComparison.Ordinal);

        // C stands first in the catalogue.
        desk.Press("Tab Home Space Tab");
        Assert.Equal(["C", "W"], Found(desk).Families.AsEnumerable());
        Assert.EndsWith("Whether A992 is made in these shapes is not known here.", desk.Says, StringComparison.Ordinal);
        Assert.Equal("W", Assert.Single(Found(desk.Press("Tab m Tab")).Families.AsEnumerable()));
    }

    [Fact]
    public void FamilySwitchedOn_IsTried_AndStaysSoForTheNextBeam()
    {
        Desk desk = List(Joist).Press("Tab");
        int ipe = desk.State.Settled.WhatIf!.Families.Select(family => family.Name).ToList().IndexOf("IPE");
        foreach (int _ in Enumerable.Range(0, ipe))
        {
            desk.Press("Down");
        }

        Assert.Contains("> [ ] IPE ", desk.Picture, StringComparison.Ordinal);
        Assert.Contains("> [x] IPE ", desk.Press("Space").Picture, StringComparison.Ordinal);
        Assert.Equal(["IPE", "sawn timber, dressed", "sawn timber, metric"], Found(desk.Press("Tab")).Families.AsEnumerable());
        Assert.Contains("sections", desk.Picture, StringComparison.OrdinalIgnoreCase);

        desk.Press("Esc ^N l").Press("5 Enter");
        Assert.True(desk.State.Families.Switched["IPE"]);
        Assert.Empty(desk.State.Families.Switched.Remove("IPE"));
    }

    [Fact]
    public void LastFamily_StaysOn()
    {
        Desk desk = List(Joist).Press("Tab");
        string[] names = [.. desk.State.Settled.WhatIf!.Families.Select(family => family.Name)];
        foreach (string name in names)
        {
            desk.Press(name.StartsWith("sawn", StringComparison.Ordinal) ? "Space Down" : "Down");
        }

        Assert.Single(desk.State.Families.Tried(desk.State.Settled.WhatIf!));
        Assert.Equal("sawn timber, metric", Assert.Single(Found(desk.Press("Esc")).Families.AsEnumerable()));
        Assert.Equal(["sawn timber, dressed", "sawn timber, metric"], Found(desk.Press("Tab m Esc")).Families.AsEnumerable());
    }

    [Fact]
    public void Typing_NarrowsWhatIsTried_AndOneUndoTakesASectionOut()
    {
        Desk desk = List(Joist).Press("metric");
        string name = CatalogueChoices.Of(desk.State, (Overlay.CatalogueList)desk.State.Overlay!)[0].Name;

        Assert.Equal(name, Assert.Single(desk.Press("Enter").State.Document.Sections).Shape);
        Assert.Equal(Joist.Sections[0], Assert.Single(desk.Press("^Z").State.Document.Sections));
    }

    private static Desk List(BeamDocument document) => new Desk(document, new BeamOrigin("joist")).Press("F7 / d");

    private static WouldDo Found(Desk desk) => Assert.IsType<Overlay.CatalogueList>(desk.State.Overlay).Passing!;
}
