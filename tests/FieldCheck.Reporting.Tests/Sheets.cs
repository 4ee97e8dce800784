using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tests;

/// <summary>Calculations put together from a beam and what was typed for it.</summary>
internal static class Sheets
{
    internal static BeamDocument TrenchTyped { get; } = new()
    {
        Title = "Bearer over the service trench",
        Notes = "Measured on the north side.",
        Spans = [new SpanEntry { Length = "3.60 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", At = "300 mm" },
            new SupportEntry { Kind = "roller", At = "end - 0.9 m" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "0.25 kN/m", Label = "decking" },
            new LoadEntry { Kind = "distributed", Total = "12 kN", From = "0.60 m", To = "1.60 m", Label = "pallets L" },
            new LoadEntry { Kind = "distributed", Pressure = "10 kPa", Width = "1.2 m", From = "1.80 m", To = "2.80 m" },
            new LoadEntry { Kind = "point", Force = "1.5 kN", At = "3.40 m", Label = "chain block" },
        ],
    };

    internal static Calculation Trench(params Message[] messages) => Of(TrenchTyped, Bench.Trench(), messages);

    internal static Calculation Of(BeamDocument document, BuiltBeam beam, params Message[] messages) => new()
    {
        Document = document,
        Problems = [],
        Beam = beam,
        Outcome = new BeamSolver().Solve(beam.Model),
        Messages = [.. messages],
    };

    /// <summary>A calculation of a beam alone; every row of its sheet is empty.</summary>
    internal static Calculation Of(BuiltBeam beam, params Message[] messages) => Of(Blank(beam.Model), beam, messages);

    internal static Calculation Unread(BeamDocument document, params Problem[] problems) => new()
    {
        Document = document,
        Problems = [.. problems],
        Beam = null,
        Outcome = null,
        Messages = [],
    };

    private static BeamDocument Blank(BeamModel model) => new()
    {
        Spans = RowsBuilder.Of<SpanEntry>([.. model.Spans.Select(_ => new SpanEntry())]),
        Supports = RowsBuilder.Of<SupportEntry>([.. model.Supports.Select(_ => new SupportEntry())]),
        Loads = RowsBuilder.Of<LoadEntry>([.. model.Cases.SelectMany(one => one.Loads).Select(_ => new LoadEntry())]),
    };
}
