using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>How what is new is written: as its neighbours in the file are.</summary>
public sealed class KeepingStyleTests
{
    [Theory]
    [InlineData("[\"title\"]", "[\"title\", \"notes\", \"display\"]")]
    [InlineData("[ \"title\" ]", "[ \"title\", \"notes\", \"display\" ]")]
    [InlineData("[]", "[\"title\", \"notes\", \"display\"]")]
    [InlineData("[\n    \"title\"]", "[\n    \"title\",\n    \"notes\",\n    \"display\",\n]")]
    [InlineData("[\n\"title\"]", "[\n  \"title\",\n  \"notes\",\n  \"display\",\n]")]
    [InlineData("[\"title\",\n    # then\n    \"notes\",\n]", "[\n  \"title\",\n    # then\n  \"notes\",\n  \"display\",\n]")]
    [InlineData("[\n  \"title\"   # one, two\n#three, four\n  ,\n  \"notes\",\n]",
        "[\n  \"title\",   # one, two\n#three, four\n  \"notes\",\n  \"display\",\n]")]
    public void ItemsAdded_AreWrittenAsTheListIs(string list, string expected)
    {
        BeamFileText text = new("l.toml", $"format = 1\nask = {list}\n");

        Assert.Equal($"format = 1\nask = {expected}\n", text.With(new BeamDocument { Ask = ["title", "notes", "display"] }).Text);
    }

    [Theory]
    [InlineData("{}", "{ dead = 1.2, live = 1.6 }")]
    [InlineData("{dead = 1.2}", "{dead = 1.2, live = 1.6}")]
    [InlineData("{ dead = 1.2 }", "{ dead = 1.2, live = 1.6 }")]
    public void FigureAdded_IsWrittenAsTheTableIs(string table, string expected)
    {
        BeamFileText text = new("t.toml", $"format = 1\n[[combination]]\nfactors = {table}\n");
        BeamDocument document = new() { Combinations = [new() { Factors = [new("dead", "1.2"), new("live", "1.6")] }] };

        Assert.Equal($"format = 1\n[[combination]]\nfactors = {expected}\n", text.With(document).Text);
    }

    [Theory]
    [InlineData("to=\"3 m\"", "length=\"3 m\"")]
    [InlineData("to = \"3 m\"", "length = \"3 m\"")]
    [InlineData("to          = \"3 m\"", "length      = \"3 m\"")]
    public void KeyExchanged_KeepsWhatStandsRoundTheEqualsSign(string line, string expected)
    {
        BeamFileText text = new("x.toml", $"format = 1\n[[span]]\n{line}\n");

        Assert.Equal($"format = 1\n[[span]]\n{expected}\n", text.With(new BeamDocument { Spans = [new() { Length = "3 m" }] }).Text);
    }

    [Theory]
    [InlineData("", "label = \"B\"\n")]
    [InlineData("kind=\"pin\"\n", "label=\"B\"\n")]
    [InlineData("kind=\"pin\"\njoint=0\n", "label=\"B\"\n")]
    [InlineData("kind = \"pin\"\njoint = 0\n", "label = \"B\"\n")]
    [InlineData("kind      = \"pin\"\njoint     = 0\n", "label     = \"B\"\n")]
    [InlineData("  kind  = \"pin\"\n  joint = 0\n", "  label = \"B\"\n")]
    public void KeyAdded_IsWrittenAsItsNeighboursAre(string pairs, string expected)
    {
        BeamFileText text = new("k.toml", $"format = 1\n[[support]]\n{pairs}");
        BeamDocument document = Opened(text);

        BeamFileText saved = text.With(document with { Supports = [document.Supports[0] with { Label = "B" }] });

        Assert.Equal(text.Text + expected, saved.Text);
    }

    [Theory]
    [InlineData("[[hinge]]\njoint = 1\n", "\n")]
    [InlineData("[[hinge]]\njoint = 1\n[[hinge]]\njoint = 2\n", "")]
    [InlineData("[[hinge]]\njoint = 1\n\n# two\n\n\n[[hinge]]\njoint = 2\n", "\n\n")]
    public void RowAdded_StandsAsFarBelowAsTheOthersDo(string rows, string gap)
    {
        BeamFileText text = new("g.toml", "format = 1\n\n" + rows);
        BeamDocument document = Opened(text);

        BeamFileText saved = text.With(document with { Hinges = document.Hinges.Add(new() { Joint = "3" }) });

        Assert.Equal($"{text.Text}{gap}[[hinge]]\njoint = 3\n", saved.Text);
    }

    [Fact]
    public void CommentsUnderTheLastRow_AreItsOwn()
    {
        BeamFileText text = new("c.toml", "format = 1\n\n[[hinge]]\njoint = 1\n# by the wall\n");

        Assert.Equal(text.Text.Replace("joint = 1", "joint = 2", StringComparison.Ordinal),
            text.With(new BeamDocument { Hinges = [new() { Joint = "2" }] }).Text);
        Assert.DoesNotContain("wall", text.With(new BeamDocument()).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void RenamedTable_WithATableUnderAHeaderInside_IsWrittenAnew()
    {
        BeamFileText text = new("r.toml", "format = 1\n\n[material.a]\nmodulus = \"1 GPa\"\n[material.a.factors]\nwet = 0.7\n");
        BeamDocument document = Opened(text);

        BeamFileText saved = text.With(document with { Materials = [document.Materials[0] with { Name = "b" }] });

        Assert.Equal("format = 1\n\n[material.b]\nmodulus = \"1 GPa\"\nfactors = { wet = 0.7 }\n", saved.Text);
    }

    [Fact]
    public void MovedRow_TakesTheTablesInsideItAlong()
    {
        const string First = "[[combination]]\nname = \"a\"\n[combination.factors]\ndead = 1\n";
        const string Second = "[[combination]]\nname = \"b\"\n[combination.factors]\ndead = 2\n";
        BeamFileText text = new("m.toml", "format = 1\n" + First + Second);
        BeamDocument document = Opened(text);

        BeamFileText saved = text.With(document with { Combinations = [document.Combinations[1], document.Combinations[0]] });

        Assert.Equal("format = 1\n" + Second + First, saved.Text);
    }

    [Fact]
    public void RowThatIsQuiteAnother_StandsInThePlaceOfTheOld()
    {
        BeamFileText text = new("q.toml",
            "format = 1\n\n[[load]]\nkind = \"point\"\nat = \"1 m\"\nforce = \"2 kN\"\n\n[[pattern]]\ncase = \"live\"\n");
        BeamDocument document = Opened(text);

        BeamFileText saved = text.With(document with { Loads = [new() { Kind = "couple", At = "end", Moment = "1 kNm" }] });

        Assert.Equal(
            "format = 1\n\n[[load]]\nkind   = \"couple\"\nat     = \"end\"\nmoment = \"1 kNm\"\n\n[[pattern]]\ncase = \"live\"\n",
            saved.Text);
    }

    [Theory]
    [InlineData(96, "ask    = [\"{0}\"]\n")]
    [InlineData(97, "ask    = [\n  \"{0}\",\n]\n")]
    public void ListInANewFile_StandsOnALineOfAHundredCharactersAtMost(int letters, string expected)
    {
        string item = new('x', letters);

        Assert.Equal(
            "format = 1\n" + expected.Replace("{0}", item, StringComparison.Ordinal),
            BeamFileText.New("n.toml", new BeamDocument { Ask = [item] }).Text);
    }

    private static BeamDocument Opened(BeamFileText text) =>
        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text)).Document;
}
