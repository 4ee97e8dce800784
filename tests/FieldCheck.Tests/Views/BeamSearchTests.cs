using FieldCheck.CommandLine;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;
using FieldCheck.Tests.CommandLine;
using FieldCheck.Views;

namespace FieldCheck.Tests.Views;

/// <summary>Beams found on a real disk, and what is remembered of them there.</summary>
public sealed class BeamSearchTests : IDisposable
{
    private const string Beam = "format = 1\n\n[[span]]\nlength = \"2 m\"\n";

    private readonly Surroundings _around = new() { IsTerminal = true };

    public void Dispose() => _around.Dispose();

    [Fact]
    public void EveryPlace_IsLookedInto()
    {
        _around.Write("here.toml", Beam);
        _around.Write("presets/site deck.toml", Beam);
        _around.Write("home/.local/share/fieldcheck/presets/mine.toml", Beam);
        string beside = _around.Write("job/beside.toml", Beam);
        _around.Write("job/deeper/not.toml", Beam);

        FoundBeams found = new BeamSearch(Started()).Find(beside);

        Assert.Equal(
            [
                ("here", BeamPlace.Here, "here.toml"),
                ("beside", BeamPlace.Elsewhere, beside),
                ("mine", BeamPlace.Personal, Path.Combine(
                    _around.Folder.FullName, "home", ".local", "share", "fieldcheck", "presets", "mine.toml")),
                ("site deck", BeamPlace.Site, Path.Combine(_around.Folder.FullName, "presets", "site deck.toml")),
            ],
            found.Choices.Where(choice => choice.Place != BeamPlace.BuiltIn)
                .Select(choice => (choice.Name, choice.Place, choice.Path!)));
        Assert.Equal(
            PresetLibrary.BuiltIn().Select(preset => preset.Name),
            found.Choices.Where(choice => choice.Place == BeamPlace.BuiltIn).Select(choice => choice.Name));
    }

    [Fact]
    public void WhatWasOpenedOrSaved_IsRememberedAcrossStarts_AndGoneFilesAreLeftOut()
    {
        string far = _around.Write("far/away.toml", Beam);
        _around.Write("here.toml", Beam);
        string gone = _around.Write("far/gone.toml", Beam);
        ScreenEffects effects = new(Started());
        effects.Perform(new Effect.Remember(far, IsFile: true));
        effects.Perform(new Effect.Remember(gone, IsFile: true));
        effects.Perform(new Effect.Remember("floor-joist", IsFile: false));
        effects.Perform(new Effect.Remember("here.toml", IsFile: true));
        File.Delete(gone);

        BeamChoice[] used = [.. Found(new ScreenEffects(Started())).Choices.TakeWhile(choice => choice.UsedAt is not null)];

        Assert.Equal(["away", "floor-joist", "here"], used.Select(choice => choice.Name).Order());
        Assert.Equal([BeamPlace.Here], used.Where(choice => choice.Name == "here").Select(choice => choice.Place));
        Assert.Equal(["far"], used.Where(choice => choice.Name == "away").Select(OpenListWords.From));
        Assert.All(used, choice => Assert.InRange(choice.UsedAt!.Value, DateTimeOffset.UnixEpoch, TimeProvider.System.GetUtcNow()));
    }

    [Fact]
    public void NothingOpened_WritesNothing()
    {
        ScreenEffects effects = new(Started());
        effects.RememberStart();
        Found(effects);

        Assert.False(Directory.Exists(Path.Combine(_around.Folder.FullName, "home")));
    }

    [Fact]
    public void FileOfTheCommandLine_IsRemembered()
    {
        _around.Write("here.toml", Beam);
        ScreenEffects effects = new(Started("here.toml"));
        effects.RememberStart();

        Assert.Equal("here", Found(effects).Choices[0].Name);
        Assert.NotNull(Found(effects).Choices[0].UsedAt);
    }

    [Fact]
    public void StateFolderThatCannotBeWritten_IsDoneWithout()
    {
        _around.Write("home/.local/state", "a file, where a folder should be");
        _around.Write("here.toml", Beam);
        ScreenEffects effects = new(Started());

        Assert.Null(effects.Perform(new Effect.Remember("here.toml", IsFile: true)));
        Assert.Contains(Found(effects).Choices, choice => choice.Name == "here");
    }

    [Theory]
    [InlineData("job/bay.toml", "job/bay.toml")]
    [InlineData("job/bay", "job/bay.toml")]
    [InlineData("~/bay.toml", "~/bay.toml")]
    public void PathTyped_IsOpened(string typed, string opened)
    {
        _around.Write("job/bay.toml", Beam);
        _around.Write("home/bay.toml", Beam);

        ScreenEvent.Opened answer = Assert.IsType<ScreenEvent.Opened>(
            new ScreenEffects(Started()).Perform(new Effect.Open(typed)));

        Assert.Equal((opened, opened), (answer.Path, answer.Origin.Path));
        Assert.Equal("2 m", answer.Document.Spans[0].Length);
    }

    [Fact]
    public void PathThatIsNotThere_IsNamedWithItsEnding() => Assert.Equal(
        new ScreenEvent.FileMissing("job/bay.toml"), new ScreenEffects(Started()).Perform(new Effect.Open("job/bay")));

    [Fact]
    public void FolderTyped_IsSaidToBeOne()
    {
        _around.Write("job/bay.toml", Beam);

        ScreenEvent.OpenRefused answer = Assert.IsType<ScreenEvent.OpenRefused>(
            new ScreenEffects(Started()).Perform(new Effect.Open("job/")));

        Assert.Equal("job/: it is a folder, not a file.", Assert.Single(answer.Problems).ToString());
    }

    private StartRequest Started(params string[] words)
    {
        Assert.Equal(ExitStatus.Holds, _around.Run(words));
        return _around.Form!;
    }

    private static FoundBeams Found(ScreenEffects effects) =>
        Assert.IsType<ScreenEvent.BeamsFound>(effects.Perform(new Effect.FindBeams(null))).Beams;
}
