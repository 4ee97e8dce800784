using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class ModelBuilderTests
{
    private static readonly (string Unit, double Metres)[] Lengths =
        [("m", 1), ("mm", 0.001), ("cm", 0.01), ("ft", 0.3048), ("in", 0.0254)];

    private static readonly (string Unit, double Newtons)[] Forces =
        [("N", 1), ("kN", 1000), ("lbf", 4.4482216152605), ("kip", 4448.2216152605), ("kg", 9.80665)];

    [Fact]
    public void Display_IsSiUnlessUsIsWritten()
    {
        Assert.Equal(UnitSystem.Si, Beams.Built(Beams.Simple).Display.System);
        Assert.Equal(UnitSystem.Us, Beams.Built(Beams.Simple with { Display = "us" }).Display.System);
    }

    [Fact]
    public void Model_KeepsLoadsByCaseInTheOrderOfTheSheet()
    {
        BeamModel model = Beams.Model(Beams.With(
            new LoadEntry { Kind = "point", At = "1 m", Force = "1 kN" },
            new LoadEntry { Kind = "point", At = "2 m", Force = "2 kN", Case = "snow" },
            new LoadEntry { Kind = "point", At = "3 m", Force = "3 kN", Case = "live" }));

        Assert.Equal(["live", "snow"], model.Cases.Select(loads => loads.Name));
        Assert.Equal<Load>([new Load.Point(1, 1e3), new Load.Point(3, 3e3)], model.Cases[0].Loads);
    }

    /// <summary>Units end here: whatever a beam is typed in, the model is the same.</summary>
    [Fact]
    public void SameBeamTypedInOtherUnits_GivesTheSameModel() =>
        Gen.Select(
            Gen.Double[0.5, 20], Gen.Double[0.05, 0.95], Gen.Double[-50e3, 50e3],
            Gen.Int[0, 4].Select(index => Lengths[index]), Gen.Int[0, 4].Select(index => Forces[index]))
            .Sample((length, share, force, lengths, forces) =>
            {
                string Metres(double value) => $"{value / lengths.Metres:F17} {lengths.Unit}";
                string Newtons(double value) => $"{value / forces.Newtons:F17} {forces.Unit}";
                BeamDocument typed = new()
                {
                    Spans = [new() { Length = Metres(length) }],
                    Supports = [Beams.Pin, new() { Kind = "roller", At = "end" }],
                    Loads =
                    [
                        new() { Kind = "point", At = Metres(length * share), Force = Newtons(force) },
                        new() { Kind = "distributed", From = Metres(length * share), Total = Newtons(force) },
                        new() { Kind = "couple", At = "mid 1", Moment = $"({Newtons(force)}) * {Metres(length)}" },
                    ],
                };
                BeamModel model = Beams.Model(typed);
                Load[] loads = [.. model.Cases.Single().Loads];

                return Near(model.Length, length)
                    && loads is [Load.Point point, Load.Distributed spread, Load.Couple couple]
                    && Near(point.Position, length * share) && Near(point.Down, force)
                    && Near(spread.StartIntensity, force / (length * (1 - share)))
                    && Near(couple.Moment, force * length);
            });

    [Fact]
    public void UnreadableAnywhere_BuildsNothing() =>
        Assert.Equal(["load[1].force"], Beams.ProblemKeys(Beams.With(
            new LoadEntry { Kind = "point", At = "1 m", Force = "12" })));

    private static bool Near(double actual, double expected) =>
        Math.Abs(actual - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected));
}
