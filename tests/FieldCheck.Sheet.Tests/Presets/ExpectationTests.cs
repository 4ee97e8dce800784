using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>What is said where a value of the wrong form stands: the words for every kind of cell.</summary>
public sealed partial class ExpectationTests
{
    public static TheoryData<QuantityKind> Kinds => [.. Enum.GetValues<QuantityKind>()];

    [Theory]
    [InlineData("[[span]]\nlength = []", "a length, as \"12 ft 6 in\"")]
    [InlineData("[[span]]\nunbraced = []", "a length, as \"12 ft 6 in\", or \"braced\"")]
    [InlineData("[[span]]\nsection = []", "the name of a section")]
    [InlineData("[[support]]\nkind = []", "one of pin, roller, fixed, guide, spring")]
    [InlineData("[[support]]\njoint = []", "a whole number, 0 or more")]
    [InlineData("[[support]]\nat = []", "a place, as \"A + 4 ft\"")]
    [InlineData("[[support]]\nlabel = []", "a support's label, as \"A\"")]
    [InlineData("[[support]]\nsurface = []", "an angle, as \"10 deg\"")]
    [InlineData("[[support]]\nstiffness = []", "a spring's stiffness, as \"2 kN/mm\"")]
    [InlineData("[[support]]\nrotational_stiffness = []", "a rotational stiffness, as \"30 kNm/rad\"")]
    [InlineData("[[support]]\npad = []", "two lengths, as \"24 in x 24 in\"")]
    [InlineData("[[load]]\nlabel = []", "a text")]
    [InlineData("[[load]]\ncase = []", "the name of a case")]
    [InlineData("[[load]]\nforce = []", "a force, as \"1850 lbf\"")]
    [InlineData("[[load]]\nintensity = []", "a force per length, as \"2.5 kN/m\"")]
    [InlineData("[[load]]\npressure = []", "a pressure or stress, as \"50 psf\"")]
    [InlineData("[[load]]\naxial = []", "true or false")]
    [InlineData("[[load]]\nmoment = []", "a moment, as \"12 kN·m\"")]
    [InlineData("[section.a]\nplies = []", "a whole number, 1 or more")]
    [InlineData("[section.a]\ninertia = []", "a second moment of area, as \"170 in4\"")]
    [InlineData("[section.a]\narea = []", "an area, as \"8.84 in2\"")]
    [InlineData("[section.a]\nsection_modulus = []", "a section modulus, as \"32.4 in3\"")]
    [InlineData("[material.a]\ndensity = []", "a mass or weight per volume, as \"420 kg/m3\"")]
    [InlineData("[material.a]\ncreep = []", "a number, as 1.25")]
    [InlineData("[[rolling]]\nimpact = []", "a share, as \"30 %\"")]
    [InlineData("[tolerance]\nload = []", "a share, as \"2 %\", or a force, as \"1850 lbf\"")]
    [InlineData("[limits]\ndeflection = []", "a share of the span, as \"L/360\"")]
    [InlineData("[limits]\ndeflection_cases = []", "figures by name, as { live = \"L/360\" }")]
    [InlineData("[limits]\nlasting = []", "figures by name, as { dead = 1.2 }")]
    [InlineData("ask = [ [] ]", "a text")]
    [InlineData("[[combination]]\nfactors = []", "figures by name, as { dead = 1.2 }")]
    public void ListInPlaceOfACell_IsAnsweredInTheseWords(string toml, string expected) =>
        Assert.Equal($"expected {expected}, found a list in [ ]", Refused(toml).Text);

    [Theory]
    [InlineData("[[rolling]]\naxles = 3", "rolling[1].axles", "a list of tables, as [ { offset = \"0 m\", force = \"2 kN\" } ]", "3")]
    [InlineData("[[rolling]]\naxles = [ 3 ]", "rolling[1].axles[1]", "a table", "3")]
    [InlineData("span = [ \"3 m\" ]", "span[1]", "a table", "a text")]
    [InlineData("span = { length = \"3 m\" }", "span", "rows, each headed [[span]]", "a table in { }")]
    [InlineData("hinge.at = \"3 m\"", "hinge", "rows, each headed [[hinge]]", "a table")]
    [InlineData("[hinge.a]\nat = \"3 m\"", "hinge", "rows, each headed [[hinge]]", "a table")]
    [InlineData("section = 1", "section", "tables with names, each headed [section.NAME]", "1")]
    [InlineData("section.a = 1", "section.a", "a table with a name, headed [section.NAME]", "1")]
    [InlineData("limits = true", "limits", "a table headed [limits]", "true")]
    [InlineData("[title]\na = 1", "title", "a text", "[title]")]
    [InlineData("[[notes]]\na = 1", "notes", "a text", "[[notes]]")]
    public void WrongForm_IsAnsweredInTheseWords(string toml, string key, string expected, string found)
    {
        FileProblem problem = Refused(toml);

        Assert.Equal((key, $"expected {expected}, found {found}"), (problem.Key, problem.Text));
    }

    /// <summary>What is offered to be written reads as what was asked for.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Example_ReadsAsItsKind(QuantityKind kind)
    {
        string words = Expectation.Of(new Schema.Cell(new Wanted.Measure(kind)), KeyPath.Top);

        Assert.True(Read.Value(Example().Match(words).Groups["text"].Value, kind) > 0);
    }

    private static FileProblem Refused(string toml) =>
        Assert.Single(Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read("f", $"format = 1\n{toml}\n")).Problems);

    [GeneratedRegex("as \"?(?<text>[^\"]+)\"?$", RegexOptions.CultureInvariant)]
    private static partial Regex Example();
}
