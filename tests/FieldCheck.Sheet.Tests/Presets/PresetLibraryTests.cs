using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class PresetLibraryTests : IDisposable
{
    private const string Beam = """
        format = 1
        title  = "Bench"
        [[span]]
        length = "2 m"
        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    [Fact]
    public void FoldersThatDoNotExist_LeaveTheBuiltInOnes()
    {
        PresetSearch found = new PresetLibrary(At("mine"), [At("site")]).Search();

        Assert.Equal<Preset>(PresetLibrary.BuiltIn(), found.Presets);
        Assert.Empty(found.Unreadable);
    }

    [Fact]
    public void Presets_ComeByPlaceAndName()
    {
        Write("site/beta.toml", Beam);
        Write("mine/zeta.toml", Beam);
        Write("mine/eta.toml", Beam);
        Write("other/alpha.toml", Beam);

        IEnumerable<(string, PresetPlace, string?)> own = new PresetLibrary(At("mine"), [At("site"), At("other")])
            .Find()
            .Where(preset => preset.Place != PresetPlace.BuiltIn)
            .Select(preset => (preset.Name, preset.Place, preset.Path));

        Assert.Equal(
        [
            ("eta", PresetPlace.Personal, At("mine", "eta.toml")),
            ("zeta", PresetPlace.Personal, At("mine", "zeta.toml")),
            ("beta", PresetPlace.Site, At("site", "beta.toml")),
            ("alpha", PresetPlace.Site, At("other", "alpha.toml")),
        ],
            own);
    }

    [Fact]
    public void OnlyTomlFilesOfTheFolderItself_ArePresets()
    {
        Write("mine/notes.txt", Beam);
        Write("mine/deeper/beam.toml", Beam);
        Write("mine/beam.toml", Beam);

        Assert.Equal(["beam"], Own().Select(preset => preset.Name));
    }

    [Fact]
    public void UnfinishedBeam_IsAPreset()
    {
        Write("mine/half.toml", "format = 1\n[[span]]\nlength = \"long\"\n");

        Assert.Equal(["half"], Own().Select(preset => preset.Name));
    }

    [Fact]
    public void FilesThatCannotBeUsed_AreToldAndNotHidden()
    {
        Write("mine/good.toml", Beam);
        Write("mine/broken.toml", "format = 1\n[[span]\n");
        File.WriteAllBytes(Write("mine/latin.toml", ""), [0x66, 0x3d, 0xe9]);

        PresetSearch found = new PresetLibrary(At("mine"), []).Search();

        Assert.Equal(["good"], Own().Select(preset => preset.Name));
        Assert.Contains(found.Unreadable, problem => problem.File == At("mine", "broken.toml") && problem.Line == 2);
        Assert.Contains(found.Unreadable, problem => problem.File == At("mine", "latin.toml"));
    }

    [Fact]
    public void FolderInTheWay_IsTold()
    {
        Directory.CreateDirectory(At("mine", "folder.toml"));

        Assert.Empty(Own());
    }

    [Fact]
    public void BuiltIn_AreTheFilesOfTheRepository()
    {
        string beams = Path.Combine(RepositoryRoot(), "presets", "beams");

        Assert.Equal(
            Directory.GetFiles(beams, "*.toml")
                .Order(StringComparer.Ordinal)
                .Select(path => (Path.GetFileName(path), File.ReadAllText(path))),
            PresetLibrary.BuiltIn().Select(preset => (preset.Text.Name, preset.Text.Text)));
    }

    [Fact]
    public void Example_IsOneOfTheBuiltIn() => Assert.Contains(PresetLibrary.Example(), PresetLibrary.BuiltIn());

    public void Dispose() => _folder.Delete(recursive: true);

    private Preset[] Own() =>
        [.. new PresetLibrary(At("mine"), []).Find().Where(preset => preset.Place == PresetPlace.Personal)];

    private string At(params string[] names) => Path.Combine([_folder.FullName, .. names]);

    private string Write(string name, string text)
    {
        string path = At(name.Split('/'));
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    private static string RepositoryRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName
            ?? throw new DirectoryNotFoundException("FieldCheck.sln not found above " + AppContext.BaseDirectory);
    }
}
