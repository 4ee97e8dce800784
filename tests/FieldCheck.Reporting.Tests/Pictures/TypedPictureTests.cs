using FieldCheck.Reporting.Pages;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Reporting.Tests.Pages;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using Drawn = FieldCheck.Reporting.Pictures.Picture;

namespace FieldCheck.Reporting.Tests.Pictures;

/// <summary>The first drawing of a record: the beam with its lengths, places and loads as they were typed.</summary>
public sealed class TypedPictureTests
{
    private const double Near = 1e-9;

    /// <summary>Everything but the places is typed otherwise than it is shown elsewhere; 12' 6" and 30 ft are 3.81 and 9.144 m.</summary>
    private static readonly BeamDocument Odd = new()
    {
        Display = "us",
        Spans = [new() { Length = "12' 6\"" }, new() { To = "30 ft" }],
        Supports =
        [
            new() { Kind = "pin", At = "0 mm" },
            new() { Kind = "roller", Joint = "1", Label = "Jack" },
            new() { Kind = "roller", At = "end - 1 ft" },
        ],
        Hinges = [new() { At = "20 ft" }, new() { At = "216 in" }],
        Loads =
        [
            new() { Kind = "point", At = "Jack + 4 ft", Force = "84 kg", Angle = "20 deg" },
            new() { Kind = "distributed", Pressure = "50 psf", PressureEnd = "70 psf", Width = "16 in", From = "600 mm" },
            new() { Kind = "couple", At = "5 ft", Moment = "-3 kip-ft" },
            new() { Kind = "distributed", Total = "1 t", To = "mid 2" },
        ],
    };

    [Theory]
    [InlineData("12' 6\"", 6.25)]
    [InlineData("to 30 ft", 21.25)]
    [InlineData("A: 0 mm", 0)]
    [InlineData("C: end - 1 ft", 29)]
    [InlineData("hinge: 20 ft", 20)]
    [InlineData("hinge: 216 in", 18)]
    [InlineData("1: Jack + 4 ft", 16.5)]
    [InlineData("1: 84 kg leaning 20 deg", 16.5)]
    [InlineData("2 from 600 mm", 0.6 / 0.3048)]
    [InlineData("2: 50 psf to 70 psf on a width of 16 in", (0.6 / 0.3048 + 30) / 2)]
    [InlineData("3: 5 ft", 5)]
    [InlineData("3: -3 kip-ft", 5)]
    [InlineData("4 to mid 2", 21.25)]
    [InlineData("4: 1 t in all", 21.25 / 2)]
    public void WhatWasTyped_StandsWhereItIs(string words, double feet)
    {
        PictureMark.Text label = Assert.Single(Picture(Odd).Marks.OfType<PictureMark.Text>(), text => text.Words == words);

        // At an end of the picture a label gives way inwards.
        double half = PictureInk.WidthOf(words) / 2;
        Assert.Equal(Math.Clamp(PictureInk.X(feet, 30), half, PictureInk.Width - half), label.At.X, 1e-6);
    }

    /// <summary>And nothing else: no figure that was read, and none of a joint, which its span tells.</summary>
    [Fact]
    public void NothingElse_StandsInIt() => Assert.Equal(14 + 3, Picture(Odd).Marks.OfType<PictureMark.Text>().Count());

    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void OfPreset_HasEverySizeAndPlaceThatWasTyped(string name)
    {
        Calculation calculation = Sheets.Preset(name);
        BeamDocument document = calculation.Document;
        string[] words = [.. Records.Of(calculation).Blocks.OfType<RecordBlock.Figure>().First().Drawing.Marks.OfType<PictureMark.Text>().Select(text => text.Words)];

        IEnumerable<string?> typed = document.Loads
            .SelectMany(load => new[] { load.At, load.From, load.To, load.Force ?? load.Moment ?? load.Total ?? load.Pressure ?? load.Intensity, load.Width })
            .Concat(document.Spans.Select(span => span.Length ?? span.To))
            .Concat(document.Hinges.Select(hinge => hinge.At))
            .Concat(document.Supports.Select(support => support.At));
        Assert.All(typed.OfType<string>(), text => Assert.Contains(words, label => label.Contains(text, StringComparison.Ordinal)));
        Assert.Equal(document.SelfWeight is not null, words.Contains("own weight"));
    }

    /// <summary>Running dimensions begin at the left end (ISO 129-1): a ring there, a tick at each place on the same line.</summary>
    [Fact]
    public void Places_AreDimensionedFromTheLeftEnd()
    {
        Drawn picture = Picture(Odd);
        double[] lines = [.. picture.Marks.OfType<PictureMark.Circle>().Where(ring => ring.Centre.X == PictureInk.X(0, 30)).Select(ring => ring.Centre.Y)];
        PicturePoint[] ticks = [.. picture.Marks.OfType<PictureMark.Line>().Where(IsTick).Select(line => Middle(line))];

        foreach (double feet in (double[])[29, 20, 18, 16.5, 0.6 / 0.3048, 5, 21.25])
        {
            PicturePoint tick = Assert.Single(ticks, tick => Math.Abs(tick.X - PictureInk.X(feet, 30)) < 1e-6 && lines.Contains(tick.Y));
            Assert.Contains(picture.Marks.OfType<PictureMark.Line>(), line => !IsTick(line)
                && line.Points[0].Y == tick.Y && line.Points[0].X == PictureInk.X(0, 30) && line.Points[1].X >= tick.X - Near);
        }
    }

    [Fact]
    public void MoreThanHasRoom_IsSaidAndNotPassedOver()
    {
        BeamDocument many = Odd with
        {
            Loads = [.. Enumerable.Range(1, 200).Select(i => new LoadEntry { Kind = "point", At = $"{i / 10.0 + 4} ft", Force = $"{i} lbf" })],
        };
        Drawn picture = Picture(many);
        int shown = picture.Marks.OfType<PictureMark.Text>().Count(text => text.Words.Contains(": ", StringComparison.Ordinal));

        // The sizes and places of the loads, two hinges and two supports.
        Assert.InRange(shown, 40, 403);
        Assert.Contains(
            $"{404 - shown} loads, places or lengths have no room here (see the input as typed)",
            picture.Marks.OfType<PictureMark.Text>().Select(text => text.Words));
        Assert.InRange(picture.Height, 100, 600);
    }

    [Fact]
    public void TooLongAText_IsCutAtTheEdgeOfTheDrawing()
    {
        string sum = string.Join(" + ", Enumerable.Range(1, 18).Select(i => $"{i} lbf"));
        Drawn picture = Picture(Odd with { Loads = [new() { Kind = "point", At = "5 ft", Force = sum }] });

        PictureMark.Text label = Assert.Single(picture.Marks.OfType<PictureMark.Text>(), text => text.Words.StartsWith("1: 1 lbf", StringComparison.Ordinal));

        Assert.EndsWith("...", label.Words, StringComparison.Ordinal);
        Assert.StartsWith(label.Words[..^3], $"1: {sum}", StringComparison.Ordinal);
        Assert.InRange(PictureInk.WidthOf(label.Words), 0.98 * PictureInk.Width, PictureInk.Width);
    }

    [Fact]
    public void Sketch_HasTheLoadsAsTyped()
    {
        CheckRecord record = Records.Of(Odd);
        string sketch = string.Join('\n', record.Blocks.OfType<RecordBlock.Figure>().First().Sketch);

        Assert.Contains("1: 84 kg leaning 20 deg", sketch);
        Assert.Contains("2: 50 psf to 70 psf on a width of 16 in", sketch);
        Assert.Contains("4: 1 t in all", sketch);
        Assert.Matches(@"(?m)^\|-+ 12' 6"" -+\|-+ to 30 ft -+\|$", sketch);
    }

    /// <summary>Own weight is no load that was typed, however many spans it has; nor is what rolls drawn.</summary>
    [Fact]
    public void Description_CountsTheLoadsThatWereTyped()
    {
        Assert.Contains(" Loads: 4. ", Described(Odd));
        Assert.Contains(" Loads: 5; rolling loads, not drawn: 1; own weight in. ", Described(Sheets.Everything));

        static string Described(BeamDocument document) => Records.Of(document).Blocks.OfType<RecordBlock.Figure>().First().Description;
    }

    private static Drawn Picture(BeamDocument document) => Records.Of(document).Blocks.OfType<RecordBlock.Figure>().First().Drawing;

    private static bool IsTick(PictureMark.Line line) =>
        line.Points.Length == 2 && Math.Abs(line.Points[0].X - line.Points[1].X) is > 2 and < 4 && line.Points[0].Y - line.Points[1].Y == 6;

    private static PicturePoint Middle(PictureMark.Line line) =>
        new((line.Points[0].X + line.Points[1].X) / 2, (line.Points[0].Y + line.Points[1].Y) / 2);
}
