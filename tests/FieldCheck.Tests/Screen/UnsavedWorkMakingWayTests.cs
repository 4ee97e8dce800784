using FieldCheck.Recovery;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Tests.Screen;

public sealed class UnsavedWorkMakingWayTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldcheck-aside").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void WorkThatANewBeamTakesThePlaceOf_IsKeptAside()
    {
        Desk desk = Trench().Press("9 Enter ^N l");

        int kept = desk.Effects.FindIndex(effect => effect is Effect.KeepRecovery);
        Assert.Contains("9 m", Assert.IsType<Effect.KeepRecovery>(desk.Effects[kept]).Text, StringComparison.Ordinal);
        Assert.IsType<Effect.SetRecoveryAside>(desk.Effects[kept + 1]);
    }

    [Theory]
    [InlineData("9 Enter ^Z")]
    [InlineData("9 Enter ^N Esc")]
    [InlineData("^N")]
    public void WhereNothingUnsavedMakesWay_NothingIsSetAside(string keys) =>
        Assert.DoesNotContain(Trench().Press(keys).Effects, effect => effect is Effect.SetRecoveryAside);

    [Fact]
    public void WorkSetAside_IsFoundBesideWhatIsKeptLater()
    {
        RecoveryFolder folder = new(_folder, TimeProvider.System);
        folder.Keep(new BeamOrigin("first"), "one");
        folder.SetAside();
        folder.Keep(new BeamOrigin("second"), "two");

        Assert.Equal("one", Assert.Single(folder.FindLeftBehind()).Text);
        folder.SetAside();
        Assert.Equal(["two", "one"], folder.FindLeftBehind().Select(work => work.Text));
    }

    [Fact]
    public void OfSeveralOffers_TheNextCanBeHad()
    {
        Desk desk = Trench().Happen(
            new ScreenEvent.RecoveryFound(Beams.Trench, new BeamOrigin("left"), "Unsaved work 1 of 2.", HasMore: true));
        Assert.Contains("n the next one", KeyLine.Of(desk.State, 100), StringComparison.Ordinal);

        desk.Press("n");

        Assert.IsType<Effect.OfferNextRecovery>(desk.Effects[^1]);
        Assert.Null(desk.State.Draft);
    }

    private static Desk Trench() => new(Beams.Trench, BeamOrigin.File("trench.toml", null));
}
