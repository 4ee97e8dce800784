using CsCheck;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class FigureTextTests
{
    private static readonly Gen<Rows<NamedFigure>> Figures =
        Gen.Select(
            OneOf("duration", "wet service", "k_mod", "roof_live", "live", "2x12 size", "ψ2"),
            OneOf("1.25", "0", "L/360", "30", "-2", "1e-3", "L/87.5", "x"))
        .Select((name, text) => new NamedFigure(name, text))
        .Array[1, 6]
        .Select(figures => (Rows<NamedFigure>)[.. figures.DistinctBy(figure => figure.Name)]);

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(index => texts[index]);

    [Theory]
    [InlineData("duration 1.25", "duration=1.25")]
    [InlineData("duration 1.25, size 1.1", "duration=1.25|size=1.1")]
    [InlineData("1.25 duration, 1.1 size", "duration=1.25|size=1.1")]
    [InlineData("duration=1.25,size = 1.1", "duration=1.25|size=1.1")]
    [InlineData("wet service 0.9", "wet service=0.9")]
    [InlineData("live L/360, snow L/250", "live=L/360|snow=L/250")]
    [InlineData(" , live 0.3 ,, ", "live=0.3")]
    [InlineData("case 1 0.3", "case 1=0.3")]
    [InlineData("duration much", "duration=much")]
    [InlineData("", "")]
    [InlineData(" , ", "")]
    public void Read_IsAFigureForEachName(string text, string figures) => Assert.Equal(
        figures, string.Join('|', FigureText.Read(text)!.Select(figure => $"{figure.Name}={figure.Text}")));

    [Theory]
    [InlineData("duration")]
    [InlineData("1.25")]
    [InlineData("duration 1.25, size")]
    [InlineData("live 0.3, live 0.4")]
    [InlineData("live 0.3, 0.4 live")]
    [InlineData("L/360")]
    public void Read_WithoutANameOrAFigureOrTwice_IsNone(string text) => Assert.Null(FigureText.Read(text));

    [Fact]
    public void Of_IsAllOfThemByCommas_AndNothingOfNone()
    {
        Assert.Equal("duration 1.25, size 1.1", FigureText.Of([new("duration", "1.25"), new("size", "1.1")]));
        Assert.Null(FigureText.Of([]));
        Assert.Null(FigureText.Of(null));
    }

    [Fact]
    public void WhatIsWritten_ReadsTheSame() => Figures.Sample(
        figures => Assert.Equal(figures, FigureText.Read(FigureText.Of(figures)!)), iter: 3000);
}
