using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Benchmarks;

/// <summary>Which sections would do: the whole catalogue tried in the place of one, weight and stiffness counted anew.</summary>
internal static class CatalogueSection
{
    private const double MostCalculations = 1.5;

    private static readonly BeamDocument Beam = new()
    {
        Spans = [new() { Length = "5 m" }, new() { Length = "6 m" }, new() { Length = "4 m" }],
        Supports =
        [
            new() { Kind = "pin", Joint = "0" },
            new() { Kind = "roller", Joint = "1" },
            new() { Kind = "roller", Joint = "2" },
            new() { Kind = "roller", Joint = "3" },
        ],
        Loads =
        [
            new() { Kind = "distributed", Intensity = "4 kN/m", Case = "dead" },
            new() { Kind = "distributed", Intensity = "6 kN/m" },
            new() { Kind = "point", At = "8 m", Force = "12 kN" },
        ],
        Sections = [new() { Name = "beam", Shape = "IPE 240" }],
        Materials = [new() { Name = "steel", Grade = "S235" }],
        SelfWeight = new() { Case = "dead" },
        Combinations =
        [
            new() { Name = "service", Factors = [new("dead", "1"), new("live", "1")] },
            new() { Name = "strength", Basis = "factored", Factors = [new("dead", "1.35"), new("live", "1.5")] },
        ],
        Limits = new() { Rules = "EN 1993-1-1", Deflection = "L/300" },
    };

    internal static void Run(Report report)
    {
        report.Section("Sections that would do: 3 spans, 2 combinations, the whole catalogue");
        report.Row("problem", "median", "fastest", "tried", "a section");
        BeamSolver solver = new();

        // A code of many small parts: it takes more than a call's own warming to be compiled anew.
        Timing.Of(() => Run(solver).WhatIf!.SectionsThatDo([]), repeats: 5);
        Timing one = Timing.Of(() => Run(solver));
        WhatIf asked = Run(solver).WhatIf!;
        int tried = asked.SectionsThatDo([]).Tried;
        Timing all = Timing.Of(() => asked.SectionsThatDo([]), repeats: 5);
        double share = all.Fastest / tried / one.Fastest;
        report.Row("one calculation", Report.Time(one.Median), Report.Time(one.Fastest), "", "");
        report.Row(
            "the whole catalogue",
            Report.Time(all.Median),
            Report.Time(all.Fastest),
            $"{tried}",
            Report.Time(all.Fastest / tried));
        report.Promise("A section tried, in calculations", share, MostCalculations, share <= MostCalculations);
    }

    private static Calculation Run(BeamSolver solver) => Calculation.Run(Beam, SectionCatalogue.BuiltIn(), solver);
}
