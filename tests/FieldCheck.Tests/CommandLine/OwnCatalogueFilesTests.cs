using System.Text.RegularExpressions;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Tests.CommandLine;

public sealed partial class OwnCatalogueFilesTests : IDisposable
{
    private const string Beam = """
        format = 1
        [[span]]
        length = "4 m"
        [[support]]
        joint = 0
        kind = "pin"
        [[support]]
        joint = 1
        kind = "roller"
        [[load]]
        kind = "point"
        at = "2 m"
        force = "2 kN"
        [section.beam]
        shape = "h20 beam"
        [material.wood]
        grade = "D30 oak"

        """;

    private const string Sections = "data/fieldcheck/presets/sections/";

    private readonly Surroundings _around = new() { IsTerminal = true };

    public OwnCatalogueFilesTests()
    {
        _around.Variables["XDG_DATA_HOME"] = _around.Variables["APPDATA"] = Path.Combine(_around.Folder.FullName, "data");
    }

    [Fact]
    public void ExampleOfTheDocumentation_ReadsWhole_AndABeamCanNameWhatItHolds()
    {
        string path = _around.Write(Sections + "yard.toml", Example());
        _around.Write("beam.toml", Beam);

        int status = _around.Run("check", "beam.toml");

        Assert.Equal((0, ""), (status, _around.Complaints));
        string written = WhiteSpace().Replace(_around.Written, " ");
        Assert.Contains("H20 beam is of your own catalogue, " + path + ".", written);
        Assert.Contains("D30 oak is of your own catalogue, " + path + ".", written);

        SectionCatalogue catalogue = OwnCatalogue.Read(Path.GetDirectoryName(path)!).Catalogue;
        Assert.Equal(["Alu mast 60x6", "H20 beam", "S10x25.4 salvaged"], catalogue.Names.Take(3));
        Assert.Equal(5.3e6, catalogue.Grade("d30 oak")!.Material.Timber!.Bearing, 1);
        Assert.True(catalogue.Shape("S10x25.4 salvaged")!.IsFromMemory);
    }

    [Fact]
    public void BrokenFile_IsToldByTheCheck_WhichGoesOn()
    {
        string broken = _around.Write(Sections + "a.toml", "[shape.x]\nform = \"round bar\"\ndiameter = \"0 mm\"\nsource = \"me\"\n");
        _around.Write("data/fieldcheck/presets/materials/b.toml", Example());
        _around.Write("beam.toml", Beam);

        int status = _around.Run("check", "beam.toml");

        Assert.Equal(0, status);
        Assert.Equal(
            $"{broken}:3:13: shape.x.diameter: '0 mm' is not greater than zero\n", _around.Complaints.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void WithoutTheFile_TheNameIsNotKnown()
    {
        _around.Write("beam.toml", Beam);

        Assert.Equal(2, _around.Run("check", "beam.toml"));
        Assert.Contains("the catalogue has no shape 'h20 beam'", _around.Complaints);
        Assert.Contains("the catalogue has no grade 'D30 oak'", _around.Complaints);
    }

    [Fact]
    public void Form_OpensWithTheCatalogue_AndTellsWhatIsWrongInIt()
    {
        string broken = _around.Write(Sections + "a.toml", "[shape.x]\n[shape.y]\n");
        _around.Write(Sections + "b.toml", Example());
        _around.Write("beam.toml", Beam);

        _around.Run("beam.toml");

        Assert.NotNull(_around.Form!.Catalogue.Shape("H20 beam"));
        Assert.Equal(
            $"{broken}:1:1: shape.x: needs its source, as \"maker's table of 2024\": a figure without one helps nobody "
                + "- this and 3 more are left out of the catalogue.",
            _around.Form.Problem);
    }

    [Fact]
    public void Paths_NamesBothFolders()
    {
        _around.Run("--paths");

        Assert.Contains(Path.Combine(_around.Folder.FullName, "data", "fieldcheck", "presets", "sections"), _around.Written);
        Assert.Contains(Path.Combine(_around.Folder.FullName, "data", "fieldcheck", "presets", "materials"), _around.Written);
    }

    public void Dispose() => _around.Dispose();

    private static string Example()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        string page = File.ReadAllText(Path.Combine(folder!.FullName, "docs", "catalogue.md"));
        return TomlBlock().Match(page).Groups["text"].Value;
    }

    [GeneratedRegex(@"```toml\r?\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex TomlBlock();

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();
}
