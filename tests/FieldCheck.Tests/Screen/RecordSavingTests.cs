namespace FieldCheck.Tests.Screen;

/// <summary>The record saved from the form.</summary>
public sealed class RecordSavingTests
{
    private const string ToTxt = "Backspace Backspace Backspace txt Enter";

    [Fact]
    public void Saved_SaysOfWhichFileAndWhatItHolds()
    {
        Desk desk = WorkingViewTests.OfFile().Press($"^P {ToTxt}");

        Assert.Equal("Saved site/trench-record.txt 09:41", desk.Says);
        string text = desk.Texts["site/trench-record.txt"];
        Assert.Contains("file         trench.toml\n", text, StringComparison.Ordinal);
        Assert.Contains($"SHA-256      {desk.State.Origin.Text!.Digest()}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Unsaved_IsSaidAndHasTheDigestOfWhatSavingWrites()
    {
        Desk desk = WorkingViewTests.OfFile().Press($"Enter 3.7 Enter ^P {ToTxt}");

        string text = desk.Texts["site/trench-record.txt"];
        Assert.Contains("file         trench.toml, with changes that are not saved\n", text, StringComparison.Ordinal);
        desk.Press("^S");
        Assert.Contains($"SHA-256      {desk.Files["site/trench.toml"].Digest()}\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("one.html", "<!DOCTYPE html>")]
    [InlineData("one.md", "# Check of a beam")]
    [InlineData("one.TXT", "CHECK OF A BEAM")]
    public void EndingTyped_SaysWhatItIs(string name, string start)
    {
        Desk desk = WorkingViewTests.OfFile().Press($"^P \" {name}\" Enter");

        string saved = Assert.Single(desk.Texts.Keys);
        Assert.EndsWith(name, saved, StringComparison.Ordinal);
        Assert.StartsWith(start, desk.Texts[saved], StringComparison.Ordinal);
    }

    [Fact]
    public void ShortWorkingShown_MakesTheRecordShort()
    {
        Desk desk = WorkingViewTests.OfFile().Press($"F5 f F3 ^P {ToTxt}");

        Assert.Contains("WORKING BY HAND, IN SHORT", desk.Texts["site/trench-record.txt"], StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutABeam_ThereIsNothingToRecord()
    {
        Desk desk = new Desk().Press("^P");

        Assert.Equal("There is no beam to record yet: see the results.", desk.Says);
        Assert.Null(desk.State.Overlay);
    }

    [Fact]
    public void FileThatIsThere_IsAskedAboutAndAnotherNameIsOfTheRecordToo()
    {
        Desk desk = WorkingViewTests.OfFile();
        desk.Texts["site/trench-record.txt"] = "mine";

        desk.Press($"^P {ToTxt} n other.md Enter");

        Assert.Equal("mine", desk.Texts["site/trench-record.txt"]);
        Assert.StartsWith("# Check of a beam", desk.Texts["other.md"], StringComparison.Ordinal);
        desk.Press($"^P {ToTxt} o");
        Assert.StartsWith("CHECK OF A BEAM", desk.Texts["site/trench-record.txt"], StringComparison.Ordinal);
    }
}
