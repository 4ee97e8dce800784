using FieldCheck.CommandLine;

namespace FieldCheck.Tests.CommandLine;

/// <summary>
/// XDG base directory specification 0.8 for the variables, their defaults and what a relative path in them counts for;
/// the Windows folders are common practice, no source.
/// </summary>
public sealed class FoldersTests : IDisposable
{
    private readonly Surroundings _around = new();

    [Fact]
    public void NothingSet_FoldersAreBelowHome()
    {
        Folders folders = Of(isWindows: false);

        Assert.Equal(Home(".local", "share", "fieldcheck", "presets"), folders.PersonalPresets);
        Assert.Equal(Home(".local", "state", "fieldcheck"), folders.State);
    }

    [Fact]
    public void VariablesSet_TheyAreFollowed()
    {
        _around.Variables["XDG_DATA_HOME"] = Under("data");
        _around.Variables["XDG_STATE_HOME"] = Under("state");

        Folders folders = Of(isWindows: false);

        Assert.Equal(Path.Combine(Under("data"), "fieldcheck", "presets"), folders.PersonalPresets);
        Assert.Equal(Path.Combine(Under("state"), "fieldcheck"), folders.State);
    }

    [Fact]
    public void VariableWithARelativePath_CountsAsNotSet()
    {
        _around.Variables["XDG_DATA_HOME"] = "data";

        Assert.Equal(Home(".local", "share", "fieldcheck", "presets"), Of(isWindows: false).PersonalPresets);
    }

    [Fact]
    public void Windows_UsesItsOwnVariables()
    {
        _around.Variables["APPDATA"] = Under("roaming");
        _around.Variables["LOCALAPPDATA"] = Under("local");
        _around.Variables["XDG_DATA_HOME"] = Under("data");

        Folders folders = Of(isWindows: true);

        Assert.Equal(Path.Combine(Under("roaming"), "fieldcheck", "presets"), folders.PersonalPresets);
        Assert.Equal(Path.Combine(Under("local"), "fieldcheck"), folders.State);
    }

    [Fact]
    public void SitePresets_AreBesideTheOpenedFileAndInTheCurrentFolder() =>
        Assert.Equal<string>(
            [Path.Combine(Under("job"), "presets"), Under("presets")],
            Of(isWindows: false, Path.Combine(Under("job"), "bearer.toml")).SitePresets);

    [Fact]
    public void OpenedFileInTheCurrentFolder_ItsPresetsStandOnce() =>
        Assert.Equal<string>([Under("presets")], Of(isWindows: false, Under("bearer.toml")).SitePresets);

    [Fact]
    public void SiteVariable_ReplacesTheFoldersFound()
    {
        string[] named = [Under("one"), "two", "", Under("one")];
        _around.Variables["FIELDCHECK_PRESETS"] = string.Join(Path.PathSeparator, named);

        Assert.Equal<string>([Under("one"), Under("two")], Of(isWindows: false, Under("bearer.toml")).SitePresets);
    }

    public void Dispose() => _around.Dispose();

    private Folders Of(bool isWindows, string? openedFile = null) =>
        Folders.Of(_around.Environment(), openedFile, isWindows);

    private string Under(string name) => Path.Combine(_around.Folder.FullName, name);

    private string Home(params string[] names) => Path.Combine([Under("home"), .. names]);
}
