using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>What stays of a file written by hand when a changed beam is saved to it, and where new things go.</summary>
public sealed class KeepingTests
{
    private const string Yard = """
        format = 1

        # ---- Spans ----

        # West bay.
        [[span]]
        length   = "3 m"       # tape, twice
        unbraced = "braced"

        # East bay.
        [[span]]
        # from the drawing
        length = '4 m'   # not measured
        # the decking is nailed down

        # ---- Loads ----

        # The pallet.
        [[load]]
        kind  = "point"
        at    = "1 m"
        force = "2 kN"

        # [[load]]
        # kind = "couple"

        # The decking.
        [[load]]
        kind = "distributed"
        case = "dead"
        intensity = "1 kN/m"

        # The end.

        """;

    public static TheoryData<string> Written() => new(TestFile.Names("Written", "*.toml").Append("example.toml"));

    [Theory]
    [MemberData(nameof(Written))]
    public void AnyCellChanged_ChangesItsOwnLinesOnly_AndNoComment(string name)
    {
        BeamFileText origin = new(name, TestFile.Text(name));
        BeamDocument document = Opened(origin).Document;
        string[] before = origin.Text.Split('\n');
        foreach (DocumentCell cell in DocumentCells.All(document))
        {
            string[] after = origin.With(DocumentCells.Set(document, cell.Key, "7 oxen")!).Text.Split('\n');

            string[] gone = [.. before.Except(after)];
            string[] come = [.. after.Except(before)];
            Assert.True(gone.Length <= LinesOf(cell.Text!), $"{cell.Key}: {string.Join('|', gone)}");
            Assert.Contains("\"7 oxen\"", Assert.Single(come), StringComparison.Ordinal);
            Assert.Equal(Comments(before), Comments(after));
        }
    }

    [Fact]
    public void ChangedValue_KeepsTheCommentBehindIt() => AssertEdit(
        beam => beam with { Spans = beam.Spans.SetItem(0, beam.Spans[0] with { Length = "12'-6 1/2\"" }) },
        Yard.Replace("\"3 m\"       #", "\"12'-6 1/2\\\"\"       #", StringComparison.Ordinal));

    [Fact]
    public void LengthThatBecomesATapeReading_KeepsItsLineAndComments() => AssertEdit(
        beam => beam with { Spans = beam.Spans.SetItem(1, beam.Spans[1] with { Length = null, To = "7 m" }) },
        Yard.Replace("length = '4 m'   #", "to     = \"7 m\"   #", StringComparison.Ordinal));

    [Fact]
    public void NewKeys_StandWhereANewFileHasThem_InTheStyleOfTheirNeighbours() => AssertEdit(
        beam => beam with
        {
            Spans = beam.Spans.SetItem(0, beam.Spans[0] with { Section = "bearer" }),
            Loads = beam.Loads.SetItem(0, beam.Loads[0] with { Label = "Pallet", Case = "live", Angle = "10 deg" }),
        },
        Yard.Replace("twice\n", "twice\nsection  = \"bearer\"\n", StringComparison.Ordinal)
            .Replace("\"point\"\n", "\"point\"\nlabel = \"Pallet\"\ncase  = \"live\"\n", StringComparison.Ordinal)
            .Replace("\"2 kN\"\n", "\"2 kN\"\nangle = \"10 deg\"\n", StringComparison.Ordinal));

    [Fact]
    public void ClearedCell_TakesItsLine() => AssertEdit(
        beam => beam with { Spans = beam.Spans.SetItem(0, beam.Spans[0] with { Unbraced = null }) },
        Yard.Replace("unbraced = \"braced\"\n", "", StringComparison.Ordinal));

    [Fact]
    public void DeletedRow_TakesItsOwnComments_AndLeavesTheOthers() => AssertEdit(
        beam => beam with { Spans = beam.Spans.RemoveAt(1), Loads = beam.Loads.RemoveAt(0) },
        Yard.Replace("""
            # East bay.
            [[span]]
            # from the drawing
            length = '4 m'   # not measured
            # the decking is nailed down


            """, "", StringComparison.Ordinal)
            .Replace("""
            # The pallet.
            [[load]]
            kind  = "point"
            at    = "1 m"
            force = "2 kN"


            """, "", StringComparison.Ordinal));

    [Fact]
    public void MovedRow_TakesItsCommentsAlong_AndHeadingsStay() => AssertEdit(
        beam => beam with { Spans = [beam.Spans[1], beam.Spans[0]] },
        """
        format = 1

        # ---- Spans ----

        # East bay.
        [[span]]
        # from the drawing
        length = '4 m'   # not measured
        # the decking is nailed down

        # West bay.
        [[span]]
        length   = "3 m"       # tape, twice
        unbraced = "braced"

        """ + Yard[Yard.IndexOf("\n# ---- Loads", StringComparison.Ordinal)..]);

    [Fact]
    public void NewRows_StandAmongTheirOwn() => AssertEdit(
        beam => beam with
        {
            Spans = [new() { Length = "1 m" }, beam.Spans[0], new() { Length = "2 m", Unbraced = "1 m" }, beam.Spans[1]],
            Loads = beam.Loads.Add(new() { Kind = "couple", At = "end", Moment = "1 kNm" }),
        },
        Yard.Replace("# West bay.", "[[span]]\nlength = \"1 m\"\n\n# West bay.", StringComparison.Ordinal)
            .Replace("# East bay.", "[[span]]\nlength   = \"2 m\"\nunbraced = \"1 m\"\n\n# East bay.", StringComparison.Ordinal)
            .Replace("\"1 kN/m\"\n", "\"1 kN/m\"\n\n[[load]]\nkind   = \"couple\"\nat     = \"end\"\nmoment = \"1 kNm\"\n", StringComparison.Ordinal));

    [Fact]
    public void RowAddedBesideAnEditedOne_LeavesTheEditedOneItsComments() => AssertEdit(
        beam => beam with { Spans = [beam.Spans[0], new() { Length = "2 m" }, beam.Spans[1] with { Unbraced = "2 m" }] },
        Yard.Replace("# East bay.", "[[span]]\nlength = \"2 m\"\n\n# East bay.", StringComparison.Ordinal)
            .Replace("# not measured\n", "# not measured\nunbraced = \"2 m\"\n", StringComparison.Ordinal));

    [Fact]
    public void NewTables_StandAfterThoseThatANewFileHasBeforeThem() => AssertEdit(
        beam => beam with
        {
            Title = "Yard",
            Record = new() { Job = "7" },
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", At = "end" }],
            SelfWeight = new() { Case = "dead" },
            Sections = [new() { Name = "wide one", Shape = "W10x30", Flat = "true" }],
        },
        Yard.Replace("format = 1\n", "format = 1\ntitle  = \"Yard\"\n\n[record]\njob = \"7\"\n", StringComparison.Ordinal)
            .Replace("nailed down\n", """
                nailed down

                [[support]]
                kind  = "pin"
                joint = 0

                [[support]]
                kind = "roller"
                at   = "end"

                """, StringComparison.Ordinal)
            .Replace("\"1 kN/m\"\n", """
                "1 kN/m"

                [self_weight]
                case = "dead"

                [section."wide one"]
                shape = "W10x30"
                flat  = true

                """, StringComparison.Ordinal));

    [Fact]
    public void EveryRowDeleted_LeavesHeadingsAndTheRest()
    {
        BeamFileText text = new("yard.toml", Yard);

        string saved = text.With(new BeamDocument()).Text;

        Assert.Equal("format = 1\n\n# ---- Spans ----\n\n# ---- Loads ----\n\n# [[load]]\n# kind = \"couple\"\n\n# The end.\n", saved);
    }

    [Theory]
    [InlineData("another figure", "{ dead = 1.4, live = 1.6 }", "dead=1.4,live=1.6")]
    [InlineData("a figure more", "{ dead = 1.2, live = 1.6, wind = 0.5 }", "dead=1.2,live=1.6,wind=0.5")]
    [InlineData("a figure less", "{ live = 1.6 }", "live=1.6")]
    [InlineData("another order", "{ live = 1.6, dead = 1.2 }", "live=1.6,dead=1.2")]
    [InlineData("odd names and texts", "{ dead = \"1,2\", \"roof live\" = 1.0 }", "dead=1,2;roof live=1.0")]
    public void Factors_AreChangedInPlace(string what, string expected, string figures)
    {
        BeamFileText text = new("f.toml", "format = 1\n[[combination]]\nfactors = { dead = 1.2, live = 1.6 }   # all\n");
        char between = what.StartsWith("odd", StringComparison.Ordinal) ? ';' : ',';
        Rows<NamedFigure> factors =
            [.. figures.Split(between).Select(pair => new NamedFigure(pair.Split('=')[0], pair.Split('=')[1]))];

        string saved = text.With(new BeamDocument { Combinations = [new() { Factors = factors }] }).Text;

        Assert.Equal($"format = 1\n[[combination]]\nfactors = {expected}   # all\n", saved);
    }

    [Fact]
    public void ListOverSeveralLines_KeepsTheCommentsOfItsItems()
    {
        const string Start = "format = 1\n[[rolling]]\naxles = [   # front to rear\n  { offset = \"0 m\", force = \"4 kN\" },     # front\n"
            + "  # sits over this one\n  { offset = \"2 m\", force = \"6 kN\" }   # rear\n  # no more\n]\n";
        BeamFileText text = new("r.toml", Start);
        AxleEntry front = new() { Offset = "0 m", Force = "4 kN" };
        AxleEntry rear = new() { Offset = "2 m", Force = "6 kN" };
        string With(params AxleEntry[] axles) => text.With(new BeamDocument { Rolling = [new() { Axles = [.. axles] }] }).Text;

        Assert.Equal(Start.Replace("6 kN", "7 kN", StringComparison.Ordinal), With(front, rear with { Force = "7 kN" }));
        Assert.Equal("format = 1\n[[rolling]]\naxles = [   # front to rear\n  # sits over this one\n"
            + "  { offset = \"2 m\", force = \"6 kN\" },   # rear\n  # no more\n]\n", With(rear));
        Assert.Equal("format = 1\n[[rolling]]\naxles = [   # front to rear\n  { offset = \"0 m\", force = \"4 kN\" },     # front\n"
            + "  { offset = \"1 m\", force = \"5 kN\" },\n  # sits over this one\n  { offset = \"2 m\", force = \"6 kN\" },   # rear\n"
            + "  # no more\n]\n", With(front, new() { Offset = "1 m", Force = "5 kN" }, rear));
    }

    [Fact]
    public void WhatHoldsNothing_StaysWhereAnotherValueChanges()
    {
        BeamFileText text = new("e.toml", """
            format = 1
            title = "a"
            ask = []       # not yet
            section = {}
            span = []
            rename = {}

            [record]

            [[combination]]
            factors = {}

            """);

        Assert.Equal(
            text.Text.Replace("\"a\"", "\"b\"", StringComparison.Ordinal),
            text.With(Opened(text).Document with { Title = "b" }).Text);
    }

    [Fact]
    public void DeletedRow_TakesTheTablesInsideIt()
    {
        const string First = "[[combination]]\nname = \"a\"\n[combination.factors]\ndead = 1\n";
        const string Second = "[[combination]]\nname = \"b\"\n[combination.factors]\ndead = 2\n";
        BeamFileText text = new("i.toml", "format = 1\n" + First + Second);
        BeamDocument document = Opened(text).Document;

        Assert.Equal("format = 1\n" + Second, text.With(document with { Combinations = document.Combinations.RemoveAt(0) }).Text);
        Assert.Equal("format = 1\n" + First, text.With(document with { Combinations = document.Combinations.RemoveAt(1) }).Text);
    }

    [Fact]
    public void RenamedSection_KeepsItsBlock_AndMaterialsTheirOrder()
    {
        BeamFileText text = new("n.toml", "format = 1\n\n# main\n[section.bearer]   # two of them\nshape = \"W10x30\"\n\n[section.joist]\nwidth = \"2 in\"\n");
        BeamDocument document = Opened(text).Document;

        string saved = text.With(document with { Sections = [document.Sections[0] with { Name = "main beam" }, document.Sections[1]] }).Text;

        Assert.Equal(text.Text.Replace("[section.bearer]", "[section.\"main beam\"]", StringComparison.Ordinal), saved);
    }

    [Fact]
    public void LineEndsOfTheFile_AreThoseOfNewLines()
    {
        BeamFileText text = new("c.toml", Yard.Replace("\n", "\r\n", StringComparison.Ordinal));
        BeamDocument document = Opened(text).Document;

        string saved = text.With(document with
        {
            Notes = "one\ntwo",
            Spans = document.Spans.Add(new() { Length = "5 m" }),
        }).Text;

        Assert.Equal(saved.Count(character => character == '\n'), saved.Split("\r\n").Length - 1);
        Assert.Contains("notes  = \"\"\"\r\none\r\ntwo\"\"\"\r\n", saved, StringComparison.Ordinal);
        Assert.Contains("\r\n\r\n[[span]]\r\nlength = \"5 m\"\r\n\r\n# ---- Loads", saved, StringComparison.Ordinal);
    }

    [Fact]
    public void FileWithoutLastLineEnd_StaysWithoutOne()
    {
        BeamFileText text = new("e.toml", "format = 1\n\n[[hinge]]\njoint = 1");

        Assert.Equal("format = 1\n\n[[hinge]]\njoint = 1\nat    = \"2 m\"\n\n[[pattern]]\ncase = \"snow\"",
            text.With(new BeamDocument { Hinges = [new() { Joint = "1", At = "2 m" }], Patterns = [new() { Case = "snow" }] }).Text);
        Assert.Equal("format = 1", text.With(new BeamDocument()).Text.TrimEnd('\n'));
    }

    [Fact]
    public void NewFile_IsTidy()
    {
        BeamDocument document = new()
        {
            Title = "Bearer",
            ShearDeformation = "true",
            Ask = ["span[1].length"],
            Spans = [new() { Length = "12'-6 1/2\"", Unbraced = "braced" }, new() { To = "5 1/4\"" }],
            Combinations = [new() { Name = "all", Factors = [new("dead", "1.2"), new("live load", "1,6")] }],
            Rolling = [new() { Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
            Limits = new(),
        };

        Assert.Equal("""
            format            = 1
            title             = "Bearer"
            shear_deformation = true
            ask               = ["span[1].length"]

            [[span]]
            length   = "12'-6 1/2\""
            unbraced = "braced"

            [[span]]
            to = '5 1/4"'

            [[combination]]
            name    = "all"
            factors = { dead = 1.2, "live load" = "1,6" }

            [[rolling]]
            axles = [ { offset = "0 m", force = "4 kN" } ]

            [limits]

            """, BeamFileText.New("new.toml", document).Text);
    }

    [Fact]
    public void NamesThatStandTwice_AreWrittenWithANumber_SoThatNeitherIsLost()
    {
        SectionEntry section = new() { Name = "b", Depth = "1 in" };
        BeamDocument document = new()
        {
            Sections = [section, section with { Depth = "2 in" }, section with { Name = "b_2" }],
            Combinations = [new() { Factors = [new("dead", "1"), new("dead", "2")] }],
        };

        BeamDocument read = Opened(BeamFileText.New("t.toml", document)).Document;

        Assert.Equal(["b", "b_3", "b_2"], read.Sections.Select(row => row.Name));
        Assert.Equal(["1 in", "2 in", "1 in"], read.Sections.Select(row => row.Depth));
        Assert.Equal([new("dead", "1"), new("dead_2", "2")], read.Combinations[0].Factors);
    }

    [Fact]
    public void HalfASurrogatePair_IsWrittenAsTheSignForIt() => Assert.Equal(
        "a\uFFFDb", Opened(BeamFileText.New("s.toml", new BeamDocument { Title = "a\uD800b" })).Document.Title);

    [Fact]
    public void TextThatDoesNotOpen_IsWrittenAnew() => Assert.Equal(
        "format = 1\ntitle  = \"b\"\n", new BeamFileText("x.toml", "title = broken").With(new BeamDocument { Title = "b" }).Text);

    private static int LinesOf(string text) => text.Contains('\n') ? 2 + text.Count(character => character == '\n') : 1;

    private static IEnumerable<string> Comments(string[] lines) =>
        lines.Where(line => line.Contains("# ", StringComparison.Ordinal)).Select(line => line[line.LastIndexOf("# ", StringComparison.Ordinal)..]);

    private static void AssertEdit(Func<BeamDocument, BeamDocument> change, string expected)
    {
        BeamFileText text = new("yard.toml", Yard);
        BeamDocument changed = change(Opened(text).Document);

        BeamFileText saved = text.With(changed);

        Assert.Equal(expected, saved.Text);
        Assert.Equal(changed, Opened(saved).Document);
    }

    private static BeamFileReading.Opened Opened(BeamFileText text) =>
        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text));
}
