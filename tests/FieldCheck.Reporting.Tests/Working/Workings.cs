using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Working;

/// <summary>Workings of beams built straight from the model.</summary>
internal static class Workings
{
    /// <summary>So wide that no line is broken.</summary>
    internal const int Unbroken = 100_000;

    internal static Calculation Calculation(BuiltBeam beam) => new()
    {
        Document = new BeamDocument
        {
            Spans = [.. beam.Model.Spans.Select(_ => new SpanEntry())],
            Supports = [.. beam.Supports.Select(_ => new SupportEntry())],
            Loads = [.. beam.Loads.Select(_ => new LoadEntry())],
        },
        Problems = [],
        Beam = beam,
        Outcome = new BeamSolver().Solve(beam.Model),
        Messages = [],
    };

    internal static WorkingLine[] Of(BuiltBeam beam, int width = Unbroken, double? about = null) =>
        [.. WorkingText.Lines(Calculation(beam), 0, new WorkingRequest(width) { About = about })];
}
