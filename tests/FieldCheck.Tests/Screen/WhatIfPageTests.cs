using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// The page of what the beam would take, and the prop whose stiffness is typed there. A joist of 80 x 200 mm, C24, over 6 m
/// under 2 kN/m: 5 w L⁴/384 E I = 57.5 mm against 20 mm; a prop of 300 kN/m at midspan carries 57.5 mm over the sum of
/// L³/48 E I and 1/300 kN/m (any table of beam formulas), 5.23 kN, and gives way by 17.4 mm. A rigid one lifts the end of a bay shorter than
/// (√13 − 1)/6 of the other (three-moment equation), 1.817 m of 6 m.
/// </summary>
public sealed class WhatIfPageTests
{
    private const string Rigid = "A rigid prop between 1.817 m and 4.183 m makes every judged check hold; at 3.00 m it carries 7.50 kN "
        + "and the beam is used to 0.42.";

    private const string Soft = "A prop of 300.00 kN/m between 2.368 m and 3.632 m makes every judged check hold; at 3.00 m it "
        + "carries 5.23 kN and the beam is used to 0.87.";

    private static readonly BeamDocument Long = new()
    {
        Spans = [new() { Length = "6 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads = [new() { Kind = "distributed", Intensity = "2 kN/m" }],
        Sections = [new() { Name = "joist", Width = "80 mm", Depth = "200 mm" }],
        Materials = [new() { Name = "pine", Grade = "C24", AllowableBending = "10 MPa" }],
        Limits = new() { Deflection = "L/300" },
    };

    /// <summary>1 kN on an overhang of 1.5 m pulls A of 6 m with 0.25 kN: said before all else, in the words of the check.</summary>
    [Fact]
    public void PulledSupport_IsSaidFirst()
    {
        Desk desk = Page(Long with
        {
            Spans = [new() { Length = "6 m" }, new() { Length = "1.5 m" }],
            Loads = [new() { Kind = "point", At = "end", Force = "1 kN" }],
        });

        Overlay.Answers answers = Assert.IsType<Overlay.Answers>(desk.State.Overlay);
        Assert.Equal("A must hold 0.25 kN down: is it tied?", answers.Sentences[0]);
        Assert.Contains(
            "No judged check is over, so none needs a prop; a support that is not tied would have to hold the beam down.", answers.Sentences);
    }

    [Fact]
    public void PropIsRigid_UntilAStiffnessIsTyped()
    {
        Desk desk = Page(Long);

        Assert.Equal([Rigid], PropsOf(desk));
        Assert.Equal([Soft], PropsOf(desk.Press("300kN/m Enter")));
        Assert.Equal([Soft], PropsOf(desk.Press("Enter Enter")));
        Assert.Equal([Rigid], PropsOf(desk.Press("Enter Backspace Backspace Backspace Backspace Backspace Backspace Backspace Enter")));
    }

    [Theory]
    [InlineData("0.3kN/mm")]
    [InlineData("300000N/m")]
    [InlineData("\"1.713044148 kip/in\"")]
    [InlineData("300")]
    public void Stiffness_IsReadInAnyUnit_AndABareNumberInThatOfCells(string typed) =>
        Assert.Equal([Soft], PropsOf(Page(Long).Press($"{typed} Enter")));

    [Theory]
    [InlineData("0.3kN/mm", "0.3kN/mm = 300.00 kN/m")]
    [InlineData("300", "300 kN/m")]
    [InlineData("1kip", "Wanted: a stiffness, force per length the prop gives way, as 5 kN/mm or 30 kip/in; nothing: rigid.")]
    [InlineData("0", "Wanted: a stiffness, force per length the prop gives way, as 5 kN/mm or 30 kip/in; nothing: rigid.")]
    public void WhatIsTyped_IsReadBackAtEveryKey(string typed, string said) =>
        Assert.Contains(said, Page(Long).Press(typed).Show(120, 40).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("5kN", "5kN: ")]
    [InlineData("-5", "-5: a prop that carries is stiffer than zero.")]
    [InlineData("x", "x: ")]
    public void WhatDoesNotRead_StaysToBeMended(string typed, string said)
    {
        Desk desk = Page(Long).Press($"{typed} Enter");

        Assert.StartsWith(said, desk.State.Notice!.Text, StringComparison.Ordinal);
        Assert.Equal(typed, Answers(desk).Draft!.Text);
        Assert.Equal([Rigid], PropsOf(desk));

        desk.Press("Esc");
        Assert.Null(Answers(desk).Draft);
        Assert.Null(desk.Press("Esc").State.Overlay);
    }

    [Fact]
    public void StiffnessInUsUnits_IsSaidInThem() => Assert.StartsWith(
        "A prop of 1.71 kip/in between ",
        Assert.Single(PropsOf(Page(Long with { Display = "us" }).Press("300kN/m Enter"))),
        StringComparison.Ordinal);

    [Fact]
    public void BeamThatHolds_NeedsNoProp()
    {
        Desk desk = Page(Long with { Spans = [new() { Length = "3 m" }] });

        Assert.Empty(PropsOf(desk));
        Assert.Contains("No prop is needed: no judged check is over.", Answers(desk).Sentences);
        Assert.Null(Answers(desk.Press("300")).Draft);
    }

    [Fact]
    public void AnswerIsInSight_HoweverLittleRoomThereIs()
    {
        Desk desk = Page(Long);
        desk.Happen(new ScreenEvent.Resized(40, 12)).Press("300kN/m Enter");

        Assert.Contains("> A prop of 300.00 kN/m", desk.Show(40, 12).ToString(), StringComparison.Ordinal);
    }

    private static Desk Page(BeamDocument document) => new Desk(document, new BeamOrigin("joist")).Press("F7 / h");

    private static Overlay.Answers Answers(Desk desk) => Assert.IsType<Overlay.Answers>(desk.State.Overlay);

    private static string[] PropsOf(Desk desk) => [.. Answers(desk).Props];
}
