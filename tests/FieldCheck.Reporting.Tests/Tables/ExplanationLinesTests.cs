using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>Why stated figures may differ, as it stands in the check and as it is read aloud.</summary>
public sealed class ExplanationLinesTests
{
    private const string Title = "WHY THEY MAY DIFFER";

    // The trench bearer carries A 9.90, B 16.50. Without load 4 (chain block): A 10.34, B 14.56.
    private static readonly BeamDocument Weighed = Sheets.Trench with
    {
        SelfWeight = new SelfWeightEntry { Case = "dead" },
        Sections = [new SectionEntry { Name = "bearer", Width = "75 mm", Depth = "225 mm" }],
        Materials = [new MaterialEntry { Name = "concrete", Modulus = "30 GPa", Density = "2500 kg/m3" }],
    };

    private static readonly Dictionary<string, BeamDocument> Documents = new()
    {
        ["left-out"] = Stated(Sheets.Trench, Of("A", "10.3 kN"), Of("B", "14.6 kN")),
        ["swapped"] = Stated(Sheets.Trench, Of("A", "16.5 kN"), Of("B", "9.9 kN")),
        ["own-weight"] = Stated(Weighed, Of("A", "9.90 kN"), Of("B", "16.5 kN")),
        ["tied"] = Stated(
            Sheets.Trench with { Loads = [.. Sheets.Trench.Loads, Sheets.Trench.Loads[3]] },
            Of("A", "9.90 kN"),
            Of("B", "16.50 kN")),
        ["nothing"] = Stated(Sheets.Trench, Of("A", "10.87 kN"), Of("B", "17.93 kN")),
        ["two-sources"] = Stated(
            Sheets.Trench,
            Of("A", "10.3 kN") with { Source = "rev A" },
            Of("B", "14.6 kN") with { Source = "rev A" },
            Of("A", "9.9 kN") with { Source = "rev B" },
            Of("B", "16.5 kN") with { Source = "rev B" }),
        ["agrees"] = Stated(Sheets.Trench, Of("A", "9.9 kN"), Of("B", "16.5 kN")),
    };

    public static TheoryData<string> Names => new(Documents.Keys.Where(name => name != "agrees"));

    [Theory]
    [MemberData(nameof(Names))]
    public void Explanations_AreTheSection(string name) => Picture.Matches(
        $"explained-{name}",
        [
            "-- 80", .. Figures(name), "-- 40", .. Section(name, 40), "-- sentences", .. Spoken(name),
        ]);

    // 0.97 kN more at A and 1.43 at B than they carry: 2.40 kN in all, at 1.73 m (see ExplanationWordsTests).
    [Fact]
    public void SizeAndPlaceOfWhatIsLacking_AreToldOnce()
    {
        string page = string.Join('\n', Figures("nothing"));

        Assert.Single(page.Split("2.40 kN down at 1.73 m")[1..]);
        Assert.DoesNotContain("than acts", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Explanations_KeepToEveryWidthAndToAscii(string name)
    {
        for (int width = 40; width <= 120; width += 8)
        {
            Assert.All(Section(name, width), line => Assert.InRange(line.Length, 1, width));
        }

        Assert.All(string.Concat(Section(name, 80)), c => Assert.InRange(c, ' ', '~'));
        Assert.All(Spoken(name), line => Assert.Matches(@"^Why they may differ: [ -~]*[.?!]$", line));
    }

    [Fact]
    public void OwnWeightLeftOut_IsSaid() =>
        Assert.Contains("consistent with own weight left out", string.Join(' ', Spoken("own-weight")), StringComparison.Ordinal);

    [Fact]
    public void FiguresThatAgree_HaveNoSection()
    {
        Assert.Empty(Section("agrees", 80));
        Assert.Empty(Spoken("agrees"));
        Assert.Contains(Title, CheckText.Lines(Sheets.Run(Documents["left-out"]), new CheckRequest("", [])));
    }

    /// <summary>What is stated, judged, and below it why it may differ.</summary>
    private static string[] Figures(string name) =>
    [
        .. CheckText.Lines(Sheets.Run(Documents[name]), new CheckRequest("", []) { Width = 80 })
            .SkipWhile(line => line != "STATED FIGURES")
            .TakeWhile(line => line is not ("REMARKS" or "BEFORE YOU USE THESE FIGURES"))
            .SkipLast(1),
    ];

    private static string[] Section(string name, int width) =>
    [
        .. CheckText.Lines(Sheets.Run(Documents[name]), new CheckRequest("", []) { Width = width })
            .SkipWhile(line => line != Title)
            .TakeWhile(line => line.Length > 0),
    ];

    private static string[] Spoken(string name)
    {
        Calculation calculation = Sheets.Run(Documents[name]);
        return
        [
            .. SpokenAnswer.Stated(calculation, calculation.Beam!)
                .Where(line => line.StartsWith("Why they", StringComparison.Ordinal)),
        ];
    }

    private static StatedEntry Of(string support, string vertical) => new() { Support = support, Vertical = vertical };

    private static BeamDocument Stated(BeamDocument document, params StatedEntry[] rows) =>
        document with { Stated = [.. rows] };
}
