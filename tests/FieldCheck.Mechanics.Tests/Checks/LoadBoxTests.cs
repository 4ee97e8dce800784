using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class LoadBoxTests
{
    private static readonly LoadIndex First = new(0, 0);

    [Fact]
    public void Place_IsWithinTheSumOfItsHalfWidths_OnTheBeam()
    {
        Assert.Equal((1.25, 2.75), Of(new Load.Point(2, 1), Place(0.5), Place(0.25)).From);
        Assert.Equal((0, 1), Of(new Load.Point(0.25, 1), Place(0.75)).From);
        Assert.Equal((9, 10), Of(new Load.Couple(9.75, 1), Place(0.75)).To);
        Assert.True(Of(new Load.Couple(9.75, 1), Place(0.75)).Moves);
        Assert.False(Of(new Load.Point(2, 1), new InputSpread.LoadSize(First, 0.1)).Moves);
    }

    [Fact]
    public void SizeOfWhatActsAtAPlace_IsAFactor()
    {
        Assert.Equal([(0.75, 0.75), (1.25, 1.25)], Of(new Load.Point(2, 8), Size(0.25)).Sizes.AsEnumerable());
        Assert.Equal([(0.375, 0.375), (1.875, 1.875)], Of(new Load.Couple(2, 8), Size(0.25), Size(0.5)).Sizes.AsEnumerable());
        // Beyond its own size it turns round: -0.5 to 2.5, and a quarter more of either.
        Assert.Equal([(-0.625, -0.625), (3.125, 3.125)], Of(new Load.Point(2, 8), Size(1.5), Size(0.25)).Sizes.AsEnumerable());
    }

    [Fact]
    public void SizeOfASpreadLoad_HasItsFactorAndItsTwoEndsApart()
    {
        Load spread = new Load.Distributed(4, 6, 100, 300);

        Assert.Equal([(50, 150), (150, 450)], Of(spread, Size(0.5)).Sizes.AsEnumerable());
        Assert.Equal([(80, 300), (120, 300)], Of(spread, new InputSpread.StartIntensity(First, 20)).Sizes.AsEnumerable());
        Assert.Equal(
            [(40, 145), (40, 155), (60, 145), (60, 155), (120, 435), (120, 465), (180, 435), (180, 465)],
            Of(spread, Size(0.5), new InputSpread.StartIntensity(First, 20), new InputSpread.EndIntensity(First, 10)).Sizes.AsEnumerable());
    }

    // On 2 m the ends stay apart by a fiftieth of it, shared by both: 4.98 and 5.02.
    [Theory]
    [InlineData(0.5, 0.25, 3.5, 4.5, 5.75, 6.25, false)]
    [InlineData(0.5, 0.5, 3.5, 4.5, 5.5, 6.5, true)]
    [InlineData(1.5, 0, 2.5, 4.98, 6, 6, true)]
    [InlineData(0, 1.5, 4, 4, 5.02, 7.5, true)]
    [InlineData(5, 5, 0, 4.98, 5.02, 10, true)]
    public void EndsOfASpreadLoad_ReachNoFartherThanItsMiddle(
        double from, double to, double fromLow, double fromHigh, double toLow, double toHigh, bool isCut)
    {
        LoadBox box = Of(new Load.Distributed(4, 6, 100, 300), new InputSpread.LoadFrom(First, from), new InputSpread.LoadTo(First, to));

        Assert.Equal((fromLow, fromHigh), box.From);
        Assert.Equal((toLow, toHigh), box.To);
        Assert.Equal(isCut, box.IsCut);
        Assert.True(box.Moves);
    }

    [Fact]
    public void Total_IsKeptWhereEitherEndKeepsIt()
    {
        Load spread = new Load.Distributed(4, 6, 100, 300);

        Assert.True(Of(spread, new InputSpread.LoadFrom(First, 0.1, KeepsTotal: true)).KeepsTotal);
        Assert.True(Of(spread, new InputSpread.LoadFrom(First, 0.1), new InputSpread.LoadTo(First, 0.1, KeepsTotal: true)).KeepsTotal);
        Assert.False(Of(spread, new InputSpread.LoadFrom(First, 0.1), new InputSpread.LoadTo(First, 0.1)).KeepsTotal);
    }

    [Fact]
    public void EachLoad_HasOneBox_AndWhatIsOfNoLoadHasNone()
    {
        BeamModel model = Said.Simple(10, Said.Point(2, 1), Said.Point(3, 1), Said.Point(4, 1));
        LoadIndex third = new(0, 2);

        var boxes = LoadBox.Of(
            model,
            [
                new InputSpread.LoadPosition(third, 0.5), new InputSpread.AllLoads(0.1), new InputSpread.LoadSize(First, 0.1),
                new InputSpread.Settlement(0, 0.01), new InputSpread.LoadSize(third, 0.2), new InputSpread.OfBeam(1),
            ]);

        Assert.Equal([third, First], boxes.Select(box => box.Index));
        Assert.Equal([(3.5, 4.5), (2, 2)], boxes.Select(box => box.From));
        Assert.Equal([0.8, 0.9], boxes.Select(box => box.Sizes[0].Start));
    }

    private static InputSpread.LoadPosition Place(double half) => new(First, half);

    private static InputSpread.LoadSize Size(double share) => new(First, share);

    private static LoadBox Of(Load load, params InputSpread[] inputs) =>
        Assert.Single(LoadBox.Of(Said.Simple(10, load), [.. inputs]));
}
