using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Catalogue;

public sealed class OwnCatalogueTests : IDisposable
{
    private const string Mast = """
        family = "masts"

        [shape."Mast 90"]
        form     = "round tube"
        diameter = "90 mm"
        wall     = "5 mm"
        source   = "maker's table"

        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void OwnShape_StandsBeforeTheShipped_WithTheFiguresOfItsSizes()
    {
        string path = Write("masts.toml", Mast);

        OwnCatalogue own = Read();
        CatalogueShape shape = own.Catalogue.Shape("mast90")!;

        Assert.Empty(own.Problems);
        Assert.Equal("Mast 90", own.Catalogue.Names[0]);
        Assert.Equal(SectionCatalogue.BuiltIn().Names.Length + 1, own.Catalogue.Names.Length);
        Assert.Equal(("masts", path, false, false), (shape.Family, shape.File, shape.IsInPlaceOfShipped, shape.IsFromMemory));
        Assert.Equal(Section.Of(new SectionShape.RoundTube(0.09, 0.005)), shape.Upright);
        Assert.Equal("as its owner wrote it", shape.Status);
        Assert.Same(
            SectionCatalogue.BuiltIn().Shape("W10x30"), own.Catalogue.Shape("W10x30"));
    }

    [Fact]
    public void OwnEntryOfAShippedName_Wins_AndTheCheckSaysSo()
    {
        string path = Write("mine.toml", """
            [shape."w10 x 30"]
            form    = "figures"
            inertia = "160 in4"
            source  = "measured, worn flanges"

            [grade.C24]
            modulus = "9 GPa"
            source  = "old stock, tested"
            """);
        SectionCatalogue catalogue = Read().Catalogue;
        BeamDocument beam = new()
        {
            Spans = [new() { Length = "4 m" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads = [new() { Kind = "point", At = "2 m", Force = "10 kN" }],
            Sections = [new() { Name = "s", Shape = "W10x30" }],
            Materials = [new() { Name = "m", Grade = "C24" }],
        };

        Calculation calculation = Calculation.Run(beam, catalogue, new BeamSolver());

        Assert.Equal(160 * Math.Pow(0.0254, 4), calculation.Beam!.Sticks[0].Section!.Inertia!.Value, 1e-12);
        Assert.Equal(9e9, calculation.Beam.Sticks[0].Material!.Modulus!.Value, 1);
        Assert.Equal(
            [
                $"w10 x 30 is of your own catalogue, {path}, in place of the shipped one.",
                $"C24 is of your own catalogue, {path}, in place of the shipped one.",
            ],
            calculation.Messages.Where(message => message.Code == MessageCodes.OwnCatalogue).Select(message => message.Text));
        Assert.DoesNotContain("W10x30", catalogue.Names);
        Assert.Empty(Calculation.Run(beam, SectionCatalogue.BuiltIn(), new BeamSolver())
            .Messages.Where(message => message.Code == MessageCodes.OwnCatalogue));
    }

    [Fact]
    public void BrokenEntry_IsTold_AndTheOthersStillLoad()
    {
        string path = Write("a.toml", Mast + """

            [shape.thin]
            form     = "round tube"
            diameter = "90 mm"
            wall     = "0 mm"
            source   = "maker's table"
            """);
        string broken = Write("b.toml", "[shape.x\n");
        Write("c.toml", "[grade.oak]\nmodulus = \"10 GPa\"\nsource = \"a book\"\n");

        OwnCatalogue own = Read();

        Assert.Equal(
            [(path, 12, 13, "shape.thin.wall"), (broken, 1, 9, "")],
            own.Problems.Select(problem => (problem.File, problem.Line, problem.Column, problem.Key)));
        Assert.Equal("'0 mm' is not greater than zero", own.Problems[0].Text);
        Assert.NotNull(own.Catalogue.Shape("mast 90"));
        Assert.Null(own.Catalogue.Shape("thin"));
        Assert.NotNull(own.Catalogue.Grade("oak"));
    }

    [Fact]
    public void NameThatStandsInTwoFiles_CountsOnce_AndTheSecondIsTold()
    {
        string first = Write("a.toml", Mast);
        string second = Write("b.toml", Mast.Replace("Mast 90", "mast-90", StringComparison.Ordinal));

        OwnCatalogue own = Read();

        Assert.Equal(
            $"{second}: 'mast-90' is found under the same name in {first} already: that one counts",
            Assert.Single(own.Problems).ToString());
        Assert.Equal(first, own.Catalogue.Shape("MAST90")!.File);
    }

    [Fact]
    public void FileThatIsTooLarge_OrNoText_IsToldAndLeftOut()
    {
        File.WriteAllBytes(Path.Combine(_folder.FullName, "a.toml"), new byte[BeamFileText.MostBytes + 1]);
        File.WriteAllBytes(Path.Combine(_folder.FullName, "b.toml"), [0x23, 0xff, 0xfe]);
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "c.toml"));

        OwnCatalogue own = Read();

        Assert.Equal(
            ["it is larger than 1 MiB.", "this is not UTF-8 text; save the file as UTF-8"],
            own.Problems.Select(problem => problem.Text));
        Assert.Equal(SectionCatalogue.BuiltIn().Names, own.Catalogue.Names);
    }

    [Fact]
    public void MoreThanTenThousandEntries_AreRefused()
    {
        Write("a.toml", string.Concat(Enumerable.Range(0, 10_001).Select(number => $"[grade.g{number}]\n")));

        Assert.Equal("a catalogue file has at most 10,000 entries", Assert.Single(Read().Problems).Text);
    }

    [Fact]
    public void FolderThatDoesNotExist_HoldsNothing()
    {
        OwnCatalogue own = OwnCatalogue.Read(Path.Combine(_folder.FullName, "none"));

        Assert.Empty(own.Problems);
        Assert.Equal(SectionCatalogue.BuiltIn().Names, own.Catalogue.Names);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private OwnCatalogue Read() => OwnCatalogue.Read(_folder.FullName);

    private string Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
