using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed partial class ExplanationSearchTests
{
    // One load of 1000 kN lifts the beam off supports beyond its bay, so that each slip is a solve of the whole beam.
    [Theory]
    [InlineData(40, false)]
    [InlineData(4, true)]
    public void SearchOnALargeBeamThatLiftsOff_EndsAndSaysSo(int spans, bool isEverySlipTried)
    {
        BeamModel model = Said.On(
            [.. Enumerable.Repeat(4.0, spans)],
            [.. Enumerable.Range(0, spans + 1).Select(i => 4.0 * i)],
            [Said.Point(6, 1000), .. Enumerable.Range(0, 10 * spans).Select(i => Said.Point(0.4 * i + 0.1, 1))]);
        model = model with
        {
            Supports = [.. model.Supports.Select(one => one with { Action = SupportAction.PushesOnly })],
        };

        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(
            new ExplanationSearch().Explain(Said.Verticals(model, "7.123")));

        Assert.Equal(isEverySlipTried, differs.IsEverySlipTried);
    }
}
