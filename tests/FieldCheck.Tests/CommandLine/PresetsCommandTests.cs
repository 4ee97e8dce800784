using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.CommandLine;

public sealed class PresetsCommandTests : IDisposable
{
    private const string Bench = "format = 1\ntitle = \"Bench in the yard\"\n[[span]]\nlength = \"2 m\"\n";

    private readonly Surroundings _around = new();

    [Fact]
    public void BuiltInOnes_StandWithTheirTitles()
    {
        int status = _around.Run("presets");

        Assert.Equal((0, ""), (status, _around.Complaints));
        Assert.Matches(@"(?m)^  pipe-rack-beam +Pipe-rack beam with an overhang to one side$", _around.Written);
        Assert.All(PresetLibrary.BuiltIn(), preset => Assert.Contains("  " + preset.Name + " ", _around.Written));
    }

    [Fact]
    public void EveryFolder_IsNamedAndListed()
    {
        string own = _around.Write("home/.local/share/fieldcheck/presets/bench.toml", Bench);
        string site = _around.Write("presets/kerb.toml", Bench.Replace("yard", "lane", StringComparison.Ordinal));
        _around.Variables["APPDATA"] = Path.Combine(_around.Folder.FullName, "home", ".local", "share");

        _around.Run("presets");

        Assert.Contains($"\nYour own, in {Path.GetDirectoryName(own)}\n  bench ", _around.Written);
        Assert.Contains($"\nOf the site, in {Path.GetDirectoryName(site)}\n  kerb ", _around.Written);
        Assert.Contains("Bench in the lane\n", _around.Written);
    }

    [Fact]
    public void EmptyFolders_AreNamedToo()
    {
        _around.Run("presets");

        string site = Path.Combine(_around.Folder.FullName, "presets");
        Assert.Contains($"\nOf the site, in {site}\n  none\n", _around.Written);
    }

    [Fact]
    public void FilesThatCannotBeUsed_AreToldOnStandardError()
    {
        string broken = _around.Write("presets/broken.toml", "format = 1\n[[span]\n");
        _around.Write("presets/kerb.toml", Bench);

        int status = _around.Run("presets");

        Assert.Equal(0, status);
        Assert.StartsWith($"{broken}:2:", _around.Complaints, StringComparison.Ordinal);
        Assert.Contains("  kerb ", _around.Written);
        Assert.DoesNotContain("broken", _around.Written);
    }

    [Fact]
    public void Plain_IsOneSentenceAPreset()
    {
        string site = _around.Write("presets/kerb.toml", Bench);

        _around.Run("presets", "--plain");

        Assert.Contains($"Preset kerb, of the site, {site}: Bench in the yard.\n", _around.Written);
        Assert.Contains("Combinations asce-7-16-strength, built in: ASCE 7-16, strength.\n", _around.Written);
        Assert.Equal(
            PresetLibrary.BuiltIn().Length + 1 + CombinationLibrary.BuiltIn().Length,
            _around.Written.Count(letter => letter == '\n'));
    }

    [Fact]
    public void SetsOfCombinations_StandBelow_BuiltInAndOfTheSite()
    {
        string path = _around.Write(
            "presets/combinations/yard.toml", "title = \"Yard rules\"\n[[combination]]\nfactors = { dead = 1.0 }\n");
        string broken = _around.Write("presets/combinations/wrong.toml", "[[combination]]\n");

        _around.Run("presets");

        Assert.Matches(
            @"(?m)^Combinations, built in$\n^  asce-7-16-allowable-stress  ASCE 7-16, allowable stress$", _around.Written);
        Assert.Contains(
            $"\nCombinations, of the site, in {Path.GetDirectoryName(path)}\n  yard ", _around.Written);
        Assert.StartsWith($"{broken}:1:", _around.Complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void TitleThatWouldCommandTheTerminal_IsHarmless()
    {
        _around.Write("presets/evil.toml", "format = 1\ntitle = \"\\u001b[2J\\nnext\"\n[[span]]\nlength = \"2 m\"\n");

        _around.Run("presets");

        Assert.DoesNotContain('\u001b', _around.Written);
        Assert.Contains("?[2J next", _around.Written);
    }

    public void Dispose() => _around.Dispose();
}
