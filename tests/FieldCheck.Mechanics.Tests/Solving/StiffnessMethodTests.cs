using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>The numeric core allocates nothing once it is warm.</summary>
public sealed class StiffnessMethodTests
{
    private static readonly Curve[] Curves = Enum.GetValues<Curve>();
    private static readonly double[] Once = [1.0];

    private readonly Kinematics _kinematics = new();
    private readonly StiffnessMethod _method = new();
    private Extreme[] _stations = [];

    [Fact]
    public void WarmCore_AllocatesNothing()
    {
        BeamModel large = Beam(
            [new Span(6, 2e7, 1e9), new Span(8, 1e7, 1e9, 1e7), new Span(5, 2e7, 1e9)],
            [
                Support.Fixed(0),
                Support.Roller(6) with { Settlement = 0.01 },
                Support.Roller(14, 0.2),
                Support.Spring(19, 1e6),
            ],
            [
                Uniform(0, 19, 1e3),
                new Load.Distributed(7, 12, 0, 900),
                new Load.Distributed(1, 3, 50, 20, true),
                new Load.Point(9, 4e3, 100),
                new Load.Point(2, 4e3),
                new Load.Couple(10, 700, Side.Right),
            ],
            [10]);
        BeamModel small = Beam(6, [Support.Pin(0), Support.Roller(6)], [new Load.Point(4, 10), new Load.Point(2, 10)]);
        Run(large);
        Run(small);

        long before = GC.GetAllocatedBytesForCurrentThread();
        double moment = Run(large) + Run(small);
        long after = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(0, after - before);
        Assert.Equal(Stands(large).Combinations[0].Response.ExtremesOf(Curve.Moment).Max.Value + 20, moment, 1e-9);
    }

    /// <summary>
    /// Everything that counts: kinematic verdict, cut, number, assemble, factor, load, solve, trace, extremes.
    /// </summary>
    private double Run(BeamModel model)
    {
        Span<bool> touching = stackalloc bool[model.Supports.Length];
        touching.Fill(true);
        _kinematics.Examine(model, touching);
        _method.Prepare(model);
        _method.Hold(touching, wantsAlong: true);
        _method.Load(Once);
        _method.Move(withImposed: true);
        _method.Trace();
        double moment = 0;
        foreach (Curve curve in Curves)
        {
            int count = CurveScan.Stations(_method.Pieces, curve, ref _stations);
            Extremes extremes = CurveScan.Extremes(_stations.AsSpan(0, count));
            moment = curve == Curve.Moment ? extremes.Max.Value : moment;
        }

        return moment;
    }
}
