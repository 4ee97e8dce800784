using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using Drawn = FieldCheck.Reporting.Pictures.Picture;

namespace FieldCheck.Reporting.Tests.Pictures;

/// <summary>
/// The drawings of docs/conventions.md are those that records show. FIELDCHECK_ACCEPT=1 writes them anew; then look at them.
/// </summary>
public sealed class ConventionPicturesTests
{
    /// <summary>Every support there is, each with its kind for a label; the hinges keep it readable as a beam that stands.</summary>
    private static readonly BeamDocument Supports = Sheets.Trench with
    {
        Spans = [new() { Length = "8.2 m" }],
        Supports =
        [
            new() { Kind = "fixed", At = "0 m", Label = "fixed" },
            new() { Kind = "pin", At = "1.2 m", Label = "pin" },
            new() { Kind = "roller", At = "2.4 m", Label = "roller" },
            new() { Kind = "roller", At = "3.6 m", Surface = "20 deg", Label = "slope_20deg" },
            new() { Kind = "spring", At = "4.8 m", Stiffness = "1 kN/mm", Label = "spring" },
            new() { Kind = "pin", At = "6 m", RotationalStiffness = "100 kNm/rad", Label = "turn_spring" },
            new() { Kind = "roller", At = "7 m", Acts = "down", Label = "strap" },
            new() { Kind = "guide", At = "end", Label = "guide" },
        ],
        Hinges = [new() { At = "5.4 m" }],
        Loads = [],
    };

    /// <summary>A load of every kind and sense; those without a word in their label have none to be had.</summary>
    private static readonly BeamDocument Loads = Sheets.Trench with
    {
        Spans = [new() { Length = "10 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads =
        [
            new() { Kind = "point", Force = "1 kN", At = "0.6 m" },
            new() { Kind = "point", Force = "2 kN", At = "1.8 m", Angle = "30 deg" },
            new() { Kind = "point", Force = "-3 kN", At = "2.8 m" },
            new() { Kind = "distributed", Intensity = "4 kN/m", From = "3.4 m", To = "4.6 m" },
            new() { Kind = "distributed", Intensity = "1 kN/m", IntensityEnd = "5 kN/m", From = "5 m", To = "6.2 m" },
            new() { Kind = "distributed", Intensity = "6 kN/m", Axial = "true", From = "6.6 m", To = "7.8 m" },
            new() { Kind = "couple", Moment = "7 kNm", At = "8.4 m" },
            new() { Kind = "couple", Moment = "-8 kNm", At = "9.4 m" },
        ],
    };

    [Theory]
    [InlineData("supports", "The supports as they are drawn", "From left to right: fixed, pin, roller, roller on a slope that rises to the right, spring, pin with a spring against turning, strap, guide; a hinge before the last pin.")]
    [InlineData("loads", "The loads as they are drawn", "From left to right: a force down, one that leans to the right, one up, an even load, one that grows, one along the beam to the right, a couple counter-clockwise, a couple clockwise.")]
    [InlineData("signs-beam", "A beam that sags and hogs", "A bearer over a trench with an overhang: reactions up at both supports.")]
    [InlineData("signs-shear", "Its shear", "Above the line where the forces to the left together push up; below where they push down.")]
    [InlineData("signs-moment", "Its moment", "Above the line where it sags, below where it hogs.")]
    [InlineData("signs-deflection", "Its deflection", "Drawn as the beam moves: down is down.")]
    public void DrawingOnThePage_IsTheOneThatRecordsShow(string name, string title, string description)
    {
        string path = Path.Combine(Root(), "docs", "pictures", name + ".svg");
        Drawn picture = PictureOf(name);
        Assert.All(
            picture.Marks.OfType<PictureMark.Line>().SelectMany(line => line.Points),
            point => Assert.InRange(point.Y, 0, picture.Height));
        string svg = SvgPicture.Of(picture, name, title, description) + "\n";
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, svg);
            return;
        }

        Assert.Equal(svg, File.ReadAllText(path).ReplaceLineEndings("\n"));
        Assert.Contains($"](pictures/{name}.svg)", File.ReadAllText(Path.Combine(Root(), "docs", "conventions.md")), StringComparison.Ordinal);
    }

    private static Drawn PictureOf(string name)
    {
        Calculation calculation = Sheets.Run(name switch
        {
            "supports" => Supports,
            "loads" => Loads,
            _ => Sheets.Trench,
        });
        CombinationResponse answer = ((BeamOutcome.Stands)calculation.Outcome!).Combinations[0];
        return name switch
        {
            "supports" or "loads" => BeamPicture.Of(calculation.Beam!, null),
            "signs-beam" => BeamPicture.Of(calculation.Beam!, answer),
            "signs-shear" => Diagram(Curve.Shear),
            "signs-moment" => Diagram(Curve.Moment),
            _ => Diagram(Curve.Deflection),
        };

        Drawn Diagram(Curve curve) => DiagramPicture.Of(PlotCurve.Of(calculation.Beam!, answer.Response, curve));
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found");
    }
}
