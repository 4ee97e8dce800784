using System.Globalization;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Benchmarks;

/// <summary>How long it takes to find how well a beam is known, and what that costs at every keystroke.</summary>
internal static class BandSection
{
    internal static void Run(Report report)
    {
        report.Section("Plus or minus");
        report.Row("beam", "calculated", "with bands", "+ reactions", "+ what matters", "+ peaks");
        Row(report, "1 span, 2 loads, 4 inputs", Sheet(1, 2, uncertainLoads: 2, uncertainSpans: 0));
        Row(report, "3 spans, 10 loads, 10 inputs", Sheet(3, 10, uncertainLoads: 5, uncertainSpans: 0));
        Row(report, "3 spans, 10 loads, 10 inputs, 2 spans", Sheet(3, 10, uncertainLoads: 4, uncertainSpans: 2));
        Row(report, "50 spans, 500 loads, 10 inputs", Sheet(50, 500, uncertainLoads: 5, uncertainSpans: 0));
        Row(report, "50 spans, 500 loads, 10 inputs, 2 spans", Sheet(50, 500, uncertainLoads: 4, uncertainSpans: 2));
        Row(report, "50 spans, 500 loads, 10 inputs, 10 spans", Sheet(50, 500, uncertainLoads: 0, uncertainSpans: 10));
        Row(report, "3 spans, 10 loads, all", Sheet(3, 10, 0, 0) with { Tolerance = All });
        Row(report, "50 spans, 500 loads, all", Sheet(50, 500, 0, 0) with { Tolerance = All });
        Row(report, "10 spans, 30 loads, all", Sheet(10, 30, 0, 0) with { Tolerance = All });
    }

    private static ToleranceEntry All => new() { Position = "20 mm", Load = "5 %" };

    // Bands are found once for each beam, so each time is that of all up to there; the differences are what counts.
    private static void Row(Report report, string name, BeamDocument sheet)
    {
        SectionCatalogue catalogue = SectionCatalogue.BuiltIn();
        BeamSolver solver = new();
        int supports = sheet.Supports.Count;
        report.Row(
            name,
            Time(_ => { }),
            Time(calculation => _ = calculation.Bands),
            Time(calculation => Each(calculation, (bands, support) => bands.Reaction(0, support))),
            Time(calculation => Each(calculation, (bands, support) => bands.Ranking(0, support, ReactionPart.Vertical))),
            Time(calculation => calculation.Bands!.Peaks(0)));

        string Time(Action<Calculation> ask) =>
            Report.Time(Timing.Of(() => ask(Calculation.Run(sheet, catalogue, solver)), 3).Median);

        void Each(Calculation calculation, Action<ToleranceBands, int> ask)
        {
            for (int support = 0; support < supports; support++)
            {
                ask(calculation.Bands!, support);
            }
        }
    }

    private static BeamDocument Sheet(int spans, int loads, int uncertainLoads, int uncertainSpans) => new()
    {
        Spans = [.. Enumerable.Range(0, spans).Select(span => new SpanEntry
        {
            Length = span < uncertainSpans ? "3 m ± 10 mm" : "3 m",
        })],
        Supports = [.. Enumerable.Range(0, spans + 1).Select(joint => new SupportEntry
        {
            Kind = joint == 0 ? "pin" : "roller",
            Joint = joint.ToString(CultureInfo.InvariantCulture),
        })],
        Loads = [.. Enumerable.Range(0, loads).Select(load => Load(load, 3.0 * spans * (load + 0.5) / loads, load < uncertainLoads))],
    };

    private static LoadEntry Load(int load, double at, bool isUncertain) => new()
    {
        Kind = "point",
        At = string.Create(CultureInfo.InvariantCulture, $"{at:0.###} m{(isUncertain ? " ± 50 mm" : "")}"),
        Force = string.Create(CultureInfo.InvariantCulture, $"{1 + load % 7} kN{(isUncertain ? " ± 10 %" : "")}"),
    };
}
