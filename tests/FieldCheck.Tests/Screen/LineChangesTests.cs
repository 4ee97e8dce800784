using CsCheck;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Tests.Screen;

public sealed class LineChangesTests
{
    private static readonly string[] Texts = ["a", "bb", "█", "   ", "a b", "梁", "e\u0301"];

    private static readonly Gen<PictureLine> Lines = Gen.Select(
        Gen.Int[0, 3].Select(role => (Role)role), Gen.Int[0, Texts.Length - 1].Select(index => Texts[index]))
        .Select((role, text) => new PictureRun(text, role))
        .Array[1, 12]
        .Select(runs => new LineWriter(24).Add(new PictureLine([.. runs])).End());

    /// <summary>What is drawn over the old line gives the new one, whatever both are.</summary>
    [Fact]
    public void Changes_DrawnOverTheOldLine_GiveTheNewOne() => Gen.Select(Lines, Lines).Sample((before, after) =>
    {
        string[] cells = Cells(before);
        foreach ((int column, PictureRun run) in LineChanges.Of(before, after))
        {
            string[] drawn = Cells(new PictureLine([run]));
            drawn.CopyTo(cells, column);
        }

        Assert.Equal(Cells(after), cells);
    });

    [Fact]
    public void ADigitThatChanges_IsAllThatIsDrawn()
    {
        PictureLine before = LineWriter.Line("A   9.90 kN up        B  16.50 kN up", 40);
        PictureLine after = LineWriter.Line("A   9.90 kN up        B  17.50 kN up", 40);

        Assert.Equal((26, new PictureRun("7", Role.Text)), Assert.Single(LineChanges.Of(before, after)));
    }

    [Fact]
    public void ALineAsItWas_IsLeftAlone() =>
        Assert.Empty(LineChanges.Of(LineWriter.Line("梁 1", 10), LineWriter.Line("梁 1", 10)));

    [Fact]
    public void LooksThatChange_AreDrawn() => Assert.Equal(
        (0, new PictureRun("ab", Role.Focus)),
        Assert.Single(LineChanges.Of(LineWriter.Line("ab", 2), LineWriter.Line("ab", 2, Role.Focus))));

    private static string[] Cells(PictureLine line) =>
    [
        .. line.Runs.SelectMany(run => Keys.Typed(run.Text).OfType<KeyStroke.Text>().SelectMany(text =>
            Enumerable.Repeat($"{text.Grapheme}/{run.Role}", TextColumns.Of(text.Grapheme)))),
    ];
}
