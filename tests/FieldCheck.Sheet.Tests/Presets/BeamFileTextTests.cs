using System.Text;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Tests.Document;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class BeamFileTextTests
{
    [Fact]
    public void Example_OfTheContract_IsReadCellByCell()
    {
        BeamDocument expected = new()
        {
            Title = "Bearer over the service trench",
            Notes = "Two pallets parked on the east half. Measure from middle to middle of the bearings.",
            Display = "us",
            Ask = ["span[1].length", "load[1].force"],
            Spans =
            [
                new() { Length = "14 ft 6 in", Unbraced = "braced" },
                new() { Length = "3 ft", Unbraced = "3 ft" },
            ],
            Supports =
            [
                new() { Joint = "0", Kind = "pin" },
                new() { Joint = "1", Kind = "roller", Acts = "up", Bearing = "3 1/2 in" },
            ],
            Loads =
            [
                new() { Label = "Pallet", Case = "live", Kind = "point", At = "A + 4 ft", Force = "1850 lbf" },
                new() { Label = "Decking", Case = "dead", Kind = "distributed", Pressure = "12 psf", Width = "5 ft" },
            ],
            SelfWeight = new() { Case = "dead" },
            Sections = [new() { Name = "bearer", Shape = "W10x30" }],
            Materials = [new() { Name = "steel", Grade = "A992" }],
            Combinations =
                [new() { Name = "service", Basis = "service", Factors = [new("dead", "1.0"), new("live", "1.0")] }],
            Stated =
            [
                new() { Support = "A", Vertical = "2.0 kip", Combination = "service", Source = "Hire firm's sheet, rev B" },
            ],
            Limits = new() { Deflection = "L/360", DeflectionOverhang = "L/180", Rules = "AISC 360-16 ASD" },
        };

        Assert.Equal(expected, Opened(TestFile.Text("example.toml")).Document);
    }

    [Fact]
    public void EveryKeyOfTheContract_IsKnownWhereItStands()
    {
        foreach (string key in ContractKeys.All)
        {
            string text = BeamFileText.New("one.toml", DocumentCells.Set(FullBeam.Document, key, "7 oxen")!).Text;

            Assert.Equal("7 oxen", DocumentCells.Get(Opened(text).Document, key));
        }
    }

    [Theory]
    [InlineData("span[1].length", "[[span]]\nlength = 12", "12")]
    [InlineData("span[1].length", "[[span]]\nlength = \"12 furlongs\"", "12 furlongs")]
    [InlineData("support[1].joint", "[[support]]\njoint = \"one\"", "one")]
    [InlineData("support[1].joint", "[[support]]\njoint = 0x1F", "31")]
    [InlineData("support[1].joint", "[[support]]\njoint = 1_000", "1000")]
    [InlineData("support[1].kind", "[[support]]\nkind = true", "true")]
    [InlineData("combination[1].factors.dead", "[[combination]]\nfactors = { dead = 1.20 }", "1.20")]
    [InlineData("combination[1].factors.dead", "[[combination]]\nfactors = { dead = \"nan\" }", "nan")]
    [InlineData("combination[1].factors.dead", "[combination.factors]\ndead = 1", null)]
    [InlineData("record.date", "[record]\ndate = 2031-03-04", "2031-03-04")]
    [InlineData("record.job", "[record]\njob = 'C:\\yard'", "C:\\yard")]
    [InlineData("record.job", "[record]\njob = \"bell \\u0007, tab \\t\"", "bell \u0007, tab \t")]
    [InlineData("record.job", "[record]\njob = \"\"\"\r\none\r\ntwo\"\"\"", "one\ntwo")]
    public void ValueThatMayNotFitItsCell_IsKeptAsItsText(string key, string toml, string? expected)
    {
        BeamFileReading reading = BeamFileText.Read("unfinished.toml", "format = 1\n" + toml + "\n");

        string? actual = reading is BeamFileReading.Opened opened ? DocumentCells.Get(opened.Document, key) : null;
        Assert.Equal(expected, actual);
    }

    [Theory]
    [InlineData("record.job = \"7\"", "[record]\njob = \"7\"")]
    [InlineData("record = { job = \"7\" }", "[record]\njob = \"7\"")]
    [InlineData("span = [ { length = \"3 m\" }, { length = \"4 m\" } ]", "[[span]]\nlength = \"3 m\"\n[[span]]\nlength = \"4 m\"")]
    [InlineData("[section]\nbearer.shape = \"W10x30\"", "[section.bearer]\nshape = \"W10x30\"")]
    [InlineData("[[combination]]\n[combination.factors]\ndead = 1", "[[combination]]\nfactors = { dead = 1 }")]
    [InlineData("[[rolling]]\n[[rolling.axles]]\noffset = \"0 m\"", "[[rolling]]\naxles = [ { offset = \"0 m\" } ]")]
    [InlineData("[[combination]]\nfactors.dead = 1\n[[combination]]\nfactors.dead = 1",
        "[[combination]]\nfactors = { dead = 1 }\n[[combination]]\nfactors = { dead = 1 }")]
    public void OtherWayOfWritingTheSameInToml_IsTheSameBeam(string one, string other) =>
        Assert.Equal(Opened($"format = 1\n{other}\n").Document, Opened($"format = 1\n{one}\n").Document);

    [Fact]
    public void FileOfNothingButItsFormat_IsAnEmptyBeam() => Assert.Equal(new BeamDocument(), Opened("format = 1").Document);

    [Fact]
    public void ByteOrderMark_IsReadOver_AndStaysWhenSaved()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. "format = 1\ntitel = 1\n"u8];
        BeamFileReading.Refused refused = Assert.IsType<BeamFileReading.Refused>(BeamFileText.ReadBytes("m.toml", bytes));
        Assert.Equal("m.toml:2:1: titel: unknown key; did you mean title?", refused.Problems.Single().ToString());

        bytes = [0xEF, 0xBB, 0xBF, .. "format = 1\ntitle = \"a\"\n"u8];
        BeamFileReading.Opened opened = Assert.IsType<BeamFileReading.Opened>(BeamFileText.ReadBytes("m.toml", bytes));
        byte[] saved = opened.Origin.With(opened.Document with { Title = "b" }).ToBytes();
        Assert.Equal([0xEF, 0xBB, 0xBF, .. "format = 1\ntitle = \"b\"\n"u8], saved);
    }

    [Fact]
    public void BytesThatAreNoUtf8_AreRefusedAtTheirPlace()
    {
        byte[] bytes = [.. "format = 1\ntitle = \"é"u8, 0xE9, .. "\"\n"u8];

        BeamFileReading.Refused refused = Assert.IsType<BeamFileReading.Refused>(BeamFileText.ReadBytes("b.toml", bytes));

        Assert.Equal("b.toml:2:11: this is not UTF-8 text; save the file as UTF-8", refused.Problems.Single().ToString());
    }

    [Theory]
    [InlineData("format = 1\ntitle = \"a\u0001b\"\n", "f:2:9: title: a control character stands here; in \"…\" it is written as \\u and four digits")]
    [InlineData("format = 1\rtitle = \"a\"\n", "f:1:11: format: a carriage return stands alone; a line ends in a line feed, with or without one before it")]
    [InlineData("\uFEFF\uFEFFformat = 1\n", "f:1:1: a byte order mark stands here for the second time")]
    public void StrangeCharacters_AreRefusedAtTheirPlace(string text, string expected) =>
        Assert.Equal(expected, Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read("f", text)).Problems[0].ToString());

    [Fact]
    public void FileOfOneMebibyte_IsRead_AndOfOneByteMoreRefused()
    {
        string most = "format = 1\n#".PadRight(BeamFileText.MostBytes, 'x');

        Assert.IsType<BeamFileReading.Opened>(BeamFileText.ReadBytes("l.toml", Encoding.UTF8.GetBytes(most)));
        BeamFileReading[] larger = [BeamFileText.Read("l.toml", most + "x"), BeamFileText.ReadBytes("l.toml", Encoding.UTF8.GetBytes(most + "x"))];
        Assert.All(larger, reading => Assert.Equal("l.toml:1:1: the file is larger than 1 MiB, the most that is read",
            Assert.IsType<BeamFileReading.Refused>(reading).Problems.Single().ToString()));
    }

    [Theory]
    [InlineData("[[hinge]]\n", "hinge")]
    [InlineData("[[rolling]]\naxles = [ {}, {} ]\n", "rolling")]
    public void FileOfTenThousandRows_IsRead_AndOfMoreRefused(string rows, string table)
    {
        int each = rows.Split('{').Length;
        string most = "format = 1\n" + string.Concat(Enumerable.Repeat(rows, BeamFileText.MostRows / each))
            + string.Concat(Enumerable.Repeat("[[span]]\n", BeamFileText.MostRows % each));

        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("r.toml", most));
        BeamFileReading more = BeamFileText.Read("r.toml", most + $"[[{table}]]\n");
        FileProblem problem = Assert.IsType<BeamFileReading.Refused>(more).Problems.Single();
        Assert.Equal(("", "a file has at most 10,000 rows", most.Split('\n').Length), (problem.Key, problem.Text, problem.Line));
    }

    [Fact]
    public void RefusedFile_GivesWhatCouldBeRead_WithMisspeltKeysAsTheyWereMeant()
    {
        const string Text = "format = 1\n[[span]]\nlenght = \"3 m\"\n[[span]]\nlength = \"4 m\"\ncolour = \"red\"\n";

        BeamFileReading.Refused refused = Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read("r.toml", Text));

        Assert.Equal(2, refused.Problems.Length);
        Assert.Equal(new BeamDocument { Spans = [new() { Length = "3 m" }, new() { Length = "4 m" }] }, refused.Rest!.Document);
    }

    [Fact]
    public void BrokenToml_GivesNothing() =>
        Assert.Null(Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read("b.toml", "format = 1\nlength = 3 m\n")).Rest);

    private static BeamFileReading.Opened Opened(string text) =>
        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("beam.toml", text));
}
