using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Rolls axles over a beam, one solve a position: slow, but it knows nothing of influence lines.</summary>
internal static class MovingTrain
{
    private const int Steps = 2000;

    internal static double Worst(PublishedCase example, string what)
    {
        Extreme worst = WorstMoment(example);
        return what switch
        {
            "absolute_max_moment" => worst.Value,
            "x_of_max_moment" => Math.Min(worst.Position, example.Beam!.Length - worst.Position),
            _ => throw new InvalidDataException($"Unknown quantity {what}."),
        };
    }

    private static Extreme WorstMoment(PublishedCase example)
    {
        (double Force, double Offset)[] behind = [.. example.Axles.Select(axle => (axle.Force, -axle.Offset))];
        (double Force, double Offset)[] ahead = [.. example.Axles];
        return new[] { behind, ahead }
            .Select(axles => Search(example.Beam!, axles))
            .MaxBy(extreme => extreme.Value);
    }

    private static Extreme Search(BeamModel beam, (double Force, double Offset)[] axles)
    {
        double reach = axles.Max(axle => Math.Abs(axle.Offset));
        double step = (beam.Length + (2 * reach)) / Steps;
        double best = Enumerable.Range(0, Steps + 1)
            .Select(i => -reach + (i * step))
            .MaxBy(at => MomentWith(beam, axles, at).Value);

        return MomentWith(beam, axles, Refined(at => MomentWith(beam, axles, at).Value, best - step, best + step));
    }

    // Golden section: the moment under an axle is a single hump between two neighbouring events.
    private static double Refined(Func<double, double> value, double low, double high)
    {
        double ratio = (Math.Sqrt(5) - 1) / 2;
        while (high - low > 1e-7)
        {
            double left = high - (ratio * (high - low));
            double right = low + (ratio * (high - low));
            (low, high) = value(left) < value(right) ? (left, high) : (low, right);
        }

        return (low + high) / 2;
    }

    private static Extreme MomentWith(BeamModel beam, (double Force, double Offset)[] axles, double first)
    {
        Load[] standing =
        [
            .. axles
                .Where(axle => first + axle.Offset >= 0 && first + axle.Offset <= beam.Length)
                .Select(axle => new Load.Point(first + axle.Offset, axle.Force)),
        ];
        return Answer.To(beam with { Cases = [new LoadCase("axles", [.. standing])] })
            .ExtremesOf(Curve.Moment).Max;
    }
}
