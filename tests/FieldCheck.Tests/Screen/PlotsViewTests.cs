using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Plotting;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Screen;

public sealed class PlotsViewTests
{
    private const double Foot = 0.3048;

    /// <summary>The third task of a newcomer, in six presses: shear and moment at 1.25 m.</summary>
    /// <remarks>By hand: V = 9.90 - 0.25 x 1.25 - 12 x 0.65; M = 9.90 x 0.95 - 0.25 x 1.25^2 / 2 - 12 x 0.65^2 / 2.</remarks>
    [Theory]
    [InlineData("F4 1.25 Enter", 6)]
    [InlineData("/ v p 1.25 Enter", 8)]
    [InlineData("] = 125cm Enter", 8)]
    public void Task3_ShearAndMomentAtAPlace(string keys, int presses)
    {
        Desk desk = Trench().Press(keys);

        Assert.Equal(presses, desk.Presses);
        Assert.Contains("At 1.25 m: shear +1.79 kN   moment +6.67 kNm", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void AtAJump_BothSidesAreSaid()
    {
        Desk desk = Trench().Press("F4 = B Enter");

        Assert.Contains("At B (2.70 m): shear -13.58 kN left, +2.93 kN right   moment -1.21 kNm", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void TheNextMark_IsNamedOnce()
    {
        Desk desk = Trench().Press("F4 2.65 Enter");

        Assert.Contains("Tab: B (2.70 m), peak", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void APlaceMayBeGivenAsInTheForm_AndASlipIsSaidAndKept()
    {
        Desk desk = Trench().Press("F4 = \"A + 1\" Enter");
        Assert.Contains("At 1.30 m: ", desk.Picture, StringComparison.Ordinal);

        desk.Press("9 Enter");
        Assert.Contains("9: this is off the beam, which is 3.60 m long.", desk.Says, StringComparison.Ordinal);
        desk.Press("Backspace 3 Enter");
        Assert.Contains("At 3.00 m: ", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void InTheForm_WhatIsReadOffIsTold()
    {
        Desk desk = Trench().Press("/ r 1.25 Enter");

        Assert.Equal(ScreenView.Beam, desk.State.View);
        Assert.StartsWith("At 1.25 m: shear +1.79 kN", desk.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void TabGoesFromMarkToMark_AndRoundAgain()
    {
        Desk desk = Trench().Press("F4 Home");
        List<double> stops = [0];
        do
        {
            desk.Press("Tab");
            stops.Add(desk.State.Reading!.Value);
        }
        while (stops[^1] > stops[^2]);

        // Ends, supports, load edges, zero shear with the peak moment, zero moment left and right of it.
        Assert.Equal([0.3, 0.301, 0.6, 1.396, 1.6, 1.8, 2.607, 2.7, 2.8, 3.4, 3.6], Marks(stops[1..^1]));
        Assert.Equal(0, stops[^1]);
        desk.Press("Shift+Tab");
        Assert.Equal(3.6, desk.State.Reading);
        desk.Press("Shift+Tab");
        Assert.Equal(3.4, desk.State.Reading);
    }

    /// <summary>No step passes over a support or an edge of a load, or else a jump might never be read.</summary>
    [Fact]
    public void Steps_LandOnTapeMarksAndOnEveryMarkBetween()
    {
        Desk desk = Trench().Press("F4 Home");
        List<double> stops = [0];
        while (stops[^1] < 3.6)
        {
            desk.Press("Right");
            Assert.True(desk.State.Reading > stops[^1]);
            stops.Add(desk.State.Reading!.Value);
        }

        Assert.Subset(stops.ToHashSet(), new HashSet<double> { 0.3, 0.6, 1.6, 1.8, 2.7, 2.8, 3.4 });
        Assert.Contains(stops, stop => Math.Abs(stop - 1.25) < 1e-9);
        for (int i = stops.Count - 2; i >= 0; i--)
        {
            desk.Press("Left");
            Assert.Equal(stops[i], desk.State.Reading!.Value, 1e-9);
        }
    }

    [Fact]
    public void InFeet_StepsAreOnTheTapeOfFeet()
    {
        Desk desk = Trench().Press("/ e F4 Home Right Right Right");

        Assert.Equal(9 * Foot / 12, desk.State.Reading!.Value, 1e-9);
        desk.Press("PgDn");
        Assert.Equal(39 * Foot / 12, desk.State.Reading!.Value, 1e-9);
    }

    [Fact]
    public void WhenTheBeamIsShortened_TheReadingStaysOnIt()
    {
        Desk desk = new Desk().Press("^N 4 Enter F4 End F3 Up 3 Enter F4");

        Assert.NotNull(ReadingLine.On(desk.State));
        Assert.Equal(3, ReadingLine.On(desk.State)!.Position);
    }

    [Fact]
    public void WhereNothingCanBeReadOff_ItIsSaid()
    {
        Desk desk = new Desk().Press("F4 1");

        Assert.Equal("There is nothing to read off yet: see the results.", desk.Says);
    }

    [Fact]
    public void OptionsChangeTheDrawing_NeverTheFigures()
    {
        Desk desk = Trench().Press("F4");
        string before = desk.Picture;
        Assert.Contains("sag up", before, StringComparison.Ordinal);
        Assert.Contains(":", Row(before, "+6.81"), StringComparison.Ordinal);

        desk.Press("f u");
        Assert.Contains("\ndown ", desk.Picture, StringComparison.Ordinal);
        Assert.Contains("+6.81", desk.Picture, StringComparison.Ordinal);
        Assert.DoesNotContain("::", desk.Picture, StringComparison.Ordinal);

        desk.Press("h");
        Assert.Contains("█", desk.Picture, StringComparison.Ordinal);

        desk.Press("v");
        Assert.Equal([Curve.Moment, Curve.Deflection, Curve.Axial], desk.State.Preferences.Plots.Curves);
        Assert.DoesNotContain("-13.58\n", desk.Picture, StringComparison.Ordinal);
        Assert.Equal(
            new PlotOptions
            {
                IsFilled = false,
                IsSagDown = true,
                Glyphs = PlotGlyphs.HalfBlocks,
                Curves = [Curve.Moment, Curve.Deflection, Curve.Axial],
            },
            Kept(desk).Plots);
    }

    [Fact]
    public void OneCurveStays()
    {
        Desk desk = Trench().Press("F4 v d n b");

        Assert.Equal([Curve.Moment], desk.State.Preferences.Plots.Curves);
        Assert.Equal("One curve stays.", desk.Says);
    }

    [Theory]
    [InlineData("F4 d d", "Deflection needs a section and a material: none is known.")]
    [InlineData("F4 n n", "Nothing acts along this beam: there is no axial force to draw.")]
    public void ACurveThatCannotBeDrawn_IsSaidToBeSo(string keys, string said) =>
        Assert.Equal(said, Trench().Press(keys).Says);

    /// <summary>A leaning load of 10 kN at 30 degrees pushes 5 kN to the right, and the pin at the left end holds it: tension up to the load.</summary>
    [Fact]
    public void AxialForce_IsDrawnWhereThereIsAny()
    {
        BeamDocument beam = new()
        {
            Spans = [new SpanEntry { Length = "4 m" }],
            Supports = [new SupportEntry { Joint = "0", Kind = "pin" }, new SupportEntry { Joint = "1", Kind = "roller" }],
            Loads = [new LoadEntry { Kind = "point", At = "2 m", Force = "10 kN", Angle = "30 deg" }],
        };
        Desk desk = new Desk(beam, BeamOrigin.NewBeam).Press("F4 1 Enter");

        Assert.Contains("axial", desk.Picture, StringComparison.Ordinal);
        Assert.Contains("At 1.00 m: axial force +5.00 kN   shear +4.33 kN   moment +4.33 kNm", desk.Picture, StringComparison.Ordinal);
    }

    [Fact]
    public void WhereOnlyAsciiCanBeShown_BlocksStayAway()
    {
        Desk desk = Trench();
        ScreenState ascii = desk.Press("F4 h").State with { IsAsciiOnly = true };

        Assert.DoesNotContain("█", ScreenPicture.Of(ascii, 80, 24).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherBeam_KeepsWhatThePersonWants()
    {
        Desk desk = Trench().Press("F4 u ^N");

        Assert.True(desk.State.Preferences.Plots.IsSagDown);
    }

    private static Preferences Kept(Desk desk) => desk.Effects.OfType<Effect.KeepPreferences>().Last().Preferences;

    private static Desk Trench() => new(Beams.Trench, new BeamOrigin("trench-bearer"));

    private static double[] Marks(IEnumerable<double> positions) =>
        [.. positions.Select(position => Math.Round(position, 3))];

    private static string Row(string picture, string from) => picture[picture.IndexOf(from, StringComparison.Ordinal)..];
}
