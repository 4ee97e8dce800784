using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Pages;

public sealed class RecordBuilderTests
{
    private static readonly string[] SectionsOfEvery =
    [
        "What it comes to", "The beam as idealised", "Input as typed, and as read", "Sections and materials", "Statics",
        "Methods and rules", "Taken for granted", "Not checked", "Working by hand, in short", "Before you use these figures", "Signed",
    ];

    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void EveryPreset_HasTheSectionsThatNoRecordMayLack(string name)
    {
        CheckRecord record = Records.OfPreset(name);

        Assert.Equal(SectionsOfEvery, Headings(record).Intersect(SectionsOfEvery));
        Assert.IsType<RecordBlock.Signatures>(record.Blocks[^1]);
    }

    /// <summary>A pushes with 0.15 kN, and within the plus or minus has to hold 0.12 kN down: (9.6 - 6 · 1.12 · 1.5) / 4.</summary>
    [Theory]
    [InlineData(null, "A may have to hold 0.12 kN down within what was measured (12 % of load 1): is it tied?")]
    [InlineData("up", "Within what was measured the beam tips: with +12 % of load 1. The bands are without that.")]
    public void WhatMayBeWithinThePlusOrMinus_IsNotPassedOverAtTheHead(string? acts, string said)
    {
        CheckRecord record = Records.Of(new BeamDocument
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "1.5 m" }],
            Supports = [new() { Kind = "pin", Joint = "0", Acts = acts }, new() { Kind = "roller", Joint = "1" }],
            Loads =
            [
                new() { Kind = "point", At = "end", Force = "6 kN ± 12 %" },
                new() { Kind = "distributed", To = "B", Intensity = "1.2 kN/m" },
            ],
        });

        ImmutableArray<string> head = record.Blocks.OfType<RecordBlock.Sentences>().First().All;

        Assert.Contains(said, head);
        Assert.DoesNotContain("All that was asked for holds.", head);
    }

    [Fact]
    public void ThatRollingLoadsRollOneAtATime_AndThatModuliAreOne_IsTakenForGranted()
    {
        RollingEntry cart = new() { Label = "Cart", Axles = [new() { Offset = "0 m", Force = "4 kN" }] };
        BeamDocument document = new()
        {
            Spans = [new() { Length = "4 m", Section = "s" }],
            Supports = [new() { Kind = "fixed", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Sections = [new() { Name = "s", Inertia = "4000 cm4" }],
            Rolling = [cart, cart with { Label = "Hoist" }],
        };

        string[] granted = [.. Under(Records.Of(document), "Taken for granted")];
        string[] one = [.. Under(Records.Of(document with { Rolling = [cart] }), "Taken for granted")];

        const string rolls = "Of the rolling loads one is on the beam at a time, never two together.";
        Assert.Contains(rolls, granted);
        Assert.DoesNotContain(rolls, one);
        Assert.Contains("No modulus was given: all of the beam was taken to have the same one, and deflections are not known.", granted);
    }

    /// <summary>W12x26 between props 12 ft apart: between Lp = 5.3 ft and Lr = 14.9 ft of the AISC Manual, Table 3-2 (from memory).</summary>
    [Fact]
    public void WorkingOfACheck_NamesTheFormulasAndTheSizesTheySpeakOf()
    {
        BeamDocument document = new()
        {
            Display = "us",
            Spans = [new() { Length = "24 ft", Unbraced = "12 ft" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads = [new() { Kind = "distributed", Intensity = "900 lbf/ft" }],
            Sections = [new() { Name = "joist", Shape = "W12x26" }],
            Materials = [new() { Name = "m", Grade = "A992" }],
            Limits = new() { Rules = "AISC 360-16 ASD" },
        };

        string working = Working(document);

        Assert.Contains(" Lp = 1.76*ry*sqrt(E/Fy) = 5.312 ft, unbraced length up to which it yields first ", working);
        Assert.Contains(" Mn = min(Mp, Cb*(Mp - (Mp - 0.7*Fy*S)*(Lb - Lp)/(Lr - Lp))) = 114.726 kip-ft, ", working);
        Assert.Contains(" allowed = Mn/Omega = 68.698 kip-ft ", working);
        Assert.Contains(
            " sizes of the sections in the formulas joist: bf = 6.490 in, tf = 0.380 in, tw = 0.230 in, d = 12.200 in, hw = 11.440 in, ", working);
        Assert.DoesNotContain(
            "sizes of the sections", Working(document with { Limits = new() { Rules = "elastic allowable" } }));
    }

    private static string Working(BeamDocument document) => string.Join(
        " ", Records.Of(document).Blocks.OfType<RecordBlock.Lines>().SelectMany(block => block.All).Select(line => line.Text.Trim()));

    [Fact]
    public void Head_SaysWhoseItIsAndOfWhichFile()
    {
        BeamDocument document = Sheets.Trench with
        {
            Title = "Bearer",
            Record = new()
            {
                Job = "Yard 7",
                Location = "Gate",
                Date = "1 May",
                PreparedBy = "Ana Sol",
                CheckedBy = "Bo Fen",
                Category = "1",
            },
        };

        CheckRecord record = Records.Of(document);

        Assert.Equal("Check of a beam: Bearer", record.Title);
        Assert.Equal(
            $"""
            job: Yard 7
            place: Gate
            date: 1 May
            prepared by: Ana Sol
            checked by: Bo Fen
            category: 1 (unless another scale is agreed, of 0 to 3 in BS 5975-1:2024, Table 2: another of the same team)
            units: SI
            file: beam.toml
            SHA-256: {Records.Digest}
            made by: fieldcheck 9.8.7
            """,
            string.Join('\n', Facts(record).Select(fact => $"{fact.Name}: {fact.Text}")));
        Assert.Equal(
            [new RecordSignature("prepared by", "Ana Sol"), new RecordSignature("checked by", "Bo Fen")],
            record.Blocks.OfType<RecordBlock.Signatures>().Single().All.ToArray());
    }

    /// <summary>Categories of design check: BS 5975-1:2024, Table 2. All but its bare numbers stands as typed.</summary>
    [Theory]
    [InlineData("0", "0 (unless another scale is agreed, of 0 to 3 in BS 5975-1:2024, Table 2: a standard solution)")]
    [InlineData(" 2 ", "2 (unless another scale is agreed, of 0 to 3 in BS 5975-1:2024, Table 2: a person independent of the team)")]
    [InlineData("3", "3 (unless another scale is agreed, of 0 to 3 in BS 5975-1:2024, Table 2: another organisation)")]
    [InlineData("4", "4")]
    [InlineData("12", "12")]
    [InlineData("2, by the site's own rules", "2, by the site's own rules")]
    [InlineData("B", "B")]
    [InlineData(null, "")]
    public void Category_NamesTheScaleOfABareNumber(string? typed, string shown) =>
        Assert.Contains(new RecordFact("category", shown), Facts(Records.Of(Sheets.Trench with { Record = new() { Category = typed } })));

    [Fact]
    public void DateAsked_StandsInPlaceOfTheFilesOwn()
    {
        BeamDocument document = Sheets.Trench with { Record = new() { Date = "1 May" } };

        CheckRecord record = Records.Of(Sheets.Run(document), Records.Request with { Date = "2 June" });

        Assert.Contains(new RecordFact("date", "2 June"), Facts(record));
    }

    [Fact]
    public void NothingGiven_IsLeftToBeFilledIn() =>
        Assert.Contains(new RecordFact("date", ""), Facts(Records.Of(Sheets.Trench with { Record = new() })));

    [Fact]
    public void NotJudgedOrOver_IsSaidAtTheHead()
    {
        RecordBlock.Sentences comesTo = Records.OfPreset("opening-header").Blocks.OfType<RecordBlock.Sentences>().First();

        Assert.Contains(comesTo.All, line => line.StartsWith("NOT ALL THAT WAS ASKED FOR HOLDS", StringComparison.Ordinal));
    }

    [Fact]
    public void CanMove_HasNoReactionAndSaysHowItMoves()
    {
        CheckRecord record = Records.Of(Sheets.OnePin);

        Assert.Contains("CAN MOVE: no reaction can be told.", Sentences(record));
        Assert.DoesNotContain(record.Blocks, block => block is RecordBlock.Table);
        Assert.Contains(record.Blocks, block => block is RecordBlock.Figure);
    }

    /// <summary>Of a beam without an answer nothing is said that only an answer has.</summary>
    [Theory]
    [InlineData("moves")]
    [InlineData("tips")]
    public void WithoutAnswer_SpeaksOfNoProofThatIsThere(string kind)
    {
        BeamDocument tips = Sheets.Overhang with { Supports = [.. Sheets.Overhang.Supports.Select(support => support with { Acts = "up" })] };
        CheckRecord record = Records.Of(kind == "tips" ? tips : Sheets.OnePin with { Limits = new() { Rules = "EN 1993-1-1" } });
        string[] methods = [.. Under(record, "Methods and rules")];

        Assert.Equal("There is no reaction, and so neither a proof of one nor a second opinion.", methods[1]);
        Assert.StartsWith(kind == "tips" ? "That it tips: " : "That it can move: ", methods[0], StringComparison.Ordinal);
        Assert.Equal(3, methods.Length);
        Assert.DoesNotContain(Sentences(record), line => line.StartsWith("Proof", StringComparison.Ordinal)
            || line.StartsWith("Second opinion", StringComparison.Ordinal) || line.StartsWith("Strengths are", StringComparison.Ordinal));
        Assert.Equal(kind == "tips", Under(record, "Taken for granted").Contains("The flexibility in shear is not counted."));
    }

    [Fact]
    public void Unread_SaysWhatIsToBeMendedAndGivesNoFigure()
    {
        CheckRecord record = Records.Of(Sheets.Trench with { Spans = [new SpanEntry { Length = "nonsense" }] });

        Assert.Contains("To mend before there is an answer", Headings(record));
        Assert.DoesNotContain(record.Blocks, block => block is RecordBlock.Table or RecordBlock.Figure or RecordBlock.Lines);
        Assert.Contains("Signed", Headings(record));
    }

    /// <summary>The table of shear and moment tells which line is its head, and the names of steps that they are headings.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Working_TellsWhichLinesAreHeadsAndRows(string name)
    {
        ImmutableArray<RecordLine> lines = Records.Of(Sheets.Preset(name), Records.Request with { IsWorkingShort = false })
            .Blocks.OfType<RecordBlock.Lines>().Last().All;
        int[] heads = [.. Enumerable.Range(0, lines.Length).Where(i => lines[i].Text.Contains("V left, ", StringComparison.Ordinal))];

        Assert.NotEmpty(heads);
        Assert.All(heads, head => Assert.Null(lines[head].Head));
        Assert.All(heads, head => Assert.Equal(lines[head].Text, lines[head + 2].Head));
        Assert.All(
            Enumerable.Range(1, lines.Length - 1).Where(i => lines[i].Head is not null),
            i => Assert.Contains(lines[i].Head, (string?[])[lines[i - 1].Text, lines[i - 1].Head]));
        Assert.All(
            lines.Where(line => line.Text.EndsWith(". Shear and moment along the beam", StringComparison.Ordinal)),
            line => Assert.True(line.IsHeading));
    }

    [Fact]
    public void Cautions_AreThoseOfEveryCheck()
    {
        CheckRecord record = Records.OfPreset("pump-skid");

        Assert.Superset(
            Cautions.For(Sheets.Preset("pump-skid")).ToHashSet(),
            Sentences(record).ToHashSet());
    }

    /// <summary>In a table of figures there is one row for each support, and every cell has its column.</summary>
    [Theory]
    [MemberData(nameof(Sheets.PresetNames), MemberType = typeof(Sheets))]
    public void Tables_HaveACellForEachColumn(string name) => Assert.All(
        Records.OfPreset(name).Blocks.OfType<RecordBlock.Table>(),
        table =>
        {
            Assert.NotEmpty(table.Rows);
            Assert.All(table.Rows, row => Assert.Equal(table.Columns.Length, row.Length));
        });

    [Fact]
    public void StatedFigures_StandWithVerdictAndWhatWouldExplainThem()
    {
        CheckRecord record = Records.Of(Sheets.Everything);

        Assert.Contains("Stated figures", Headings(record));
        RecordBlock.Table stated = record.Blocks.OfType<RecordBlock.Table>()
            .Single(table => table.Caption == "Stated figures beside the computed ones");
        Assert.Equal(Sheets.Run(Sheets.Everything).Stated.Length + Sheets.Run(Sheets.Everything).Unstated.Length, stated.Rows.Length);
    }

    [Fact]
    public void SameBeam_SameRecord()
    {
        CheckRecord first = Records.Of(Sheets.Everything);
        CheckRecord second = Records.Of(Sheets.Everything);

        Assert.Equal(TextRecord.Of(first), TextRecord.Of(second));
        Assert.Equal(HtmlRecord.Of(first), HtmlRecord.Of(second));
        Assert.Equal(MarkdownRecord.Of(first), MarkdownRecord.Of(second));
    }

    private static ImmutableArray<string> Under(CheckRecord record, string heading) => record.Blocks
        .SkipWhile(block => block is not RecordBlock.Heading one || one.Text != heading)
        .OfType<RecordBlock.Sentences>()
        .First()
        .All;

    private static IEnumerable<string> Headings(CheckRecord record) =>
        record.Blocks.OfType<RecordBlock.Heading>().Select(heading => heading.Text);

    private static IEnumerable<string> Sentences(CheckRecord record) =>
        record.Blocks.OfType<RecordBlock.Sentences>().SelectMany(block => block.All);

    private static ImmutableArray<RecordFact> Facts(CheckRecord record) =>
        record.Blocks.OfType<RecordBlock.Facts>().First().All;
}
