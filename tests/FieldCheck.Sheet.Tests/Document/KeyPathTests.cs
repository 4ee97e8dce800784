using CsCheck;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Document;

public sealed class KeyPathTests
{
    [Fact]
    public void Built_IsWrittenAsTheFileCountsIt()
    {
        Assert.Equal("load[2].at", KeyPath.Top.Into("load").At(2).Into("at").ToString());
        Assert.Equal("section.bearer.width", KeyPath.Top.Into("section").Into("bearer").Into("width").ToString());
        Assert.Equal("""material."C24 \"wet\"".density""",
            KeyPath.Top.Into("material").Into("C24 \"wet\"").Into("density").ToString());
    }

    [Theory]
    [InlineData("load[2")]
    [InlineData("load[0].at")]
    [InlineData("load[-1].at")]
    [InlineData("load[x]")]
    [InlineData("load[99999999999]")]
    [InlineData("[1]")]
    [InlineData(".at")]
    [InlineData("load..at")]
    [InlineData("load.")]
    [InlineData("load[1]at")]
    [InlineData("load at")]
    [InlineData("section.\"open")]
    [InlineData("section.\"bad \\q\"")]
    [InlineData("section.\"bad \\UFFFFFFFF\"")]
    [InlineData("a.b.c.d.e.f.g.h.i")]
    public void NoPath_ParsesToNothing(string text) => Assert.Null(KeyPath.Parse(text));

    [Fact]
    public void HalfASurrogatePairBehindABackslash_ParsesToNothing() => Assert.Null(KeyPath.Parse("section.\"half \\\uD800\""));

    [Fact]
    public void EightKeys_AreTheMost() => Assert.NotNull(KeyPath.Parse("a.b.c.d.e.f.g[1].h"));

    [Fact]
    public void AnyPath_ReadsBackAsItWasWritten()
    {
        Gen<KeyPath> path = Gen.Select(Gen.String, Gen.Select(Gen.Bool, Gen.Int[1, 99], Gen.String).Array[0, 6],
            (first, more) => more.Aggregate(KeyPath.Top.Into(first), (made, next) =>
                next.Item1 ? made.At(next.Item2) : made.Into(next.Item3)));

        path.Sample(made => Assert.Equal(made, KeyPath.Parse(made.ToString())));
    }

    [Fact]
    public void AnyText_ParsesToAPathThatIsWrittenAlike_OrToNothing()
    {
        Gen<string> text = Gen.OneOf(Gen.String, Gen.String["ab.[]12\"\\"]);

        text.Sample(typed =>
        {
            if (KeyPath.Parse(typed) is KeyPath path)
            {
                Assert.Equal(path, KeyPath.Parse(path.ToString()));
            }
        });
    }
}
