using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>
/// The formulas that the working of checks writes: worked out from the numbers before them and the sizes of the section, each
/// gives the number beside it. So a pencil gets there too.
/// </summary>
public sealed class FormulaTests
{
    private const double Closeness = 1e-9;

    public static TheoryData<string> Beams => [.. All.Keys];

    private static ImmutableSortedDictionary<string, BeamDocument> All { get; } = Documents().ToImmutableSortedDictionary();

    [Theory]
    [MemberData(nameof(Beams))]
    public void EveryFormula_GivesTheNumberBesideIt(string beam)
    {
        Calculation calculation = CalculationTests.Run(All[beam]);
        Assert.Empty(calculation.Problems);
        Assert.NotEmpty(calculation.Checks.All);
        Assert.All(calculation.Checks.All, check =>
        {
            Dictionary<string, double> known = Sizes(SectionOf(calculation, check.Figures));
            foreach (StrengthFactor factor in check.Figures.Factors)
            {
                known[FactorWords.Of(factor.Kind).Symbol] = factor.Value;
            }

            foreach (CheckTerm term in check.Figures.Terms)
            {
                IsGiven(term.By, known, term.Value, $"{check.What}, {term.Symbol}");
                known[SymbolWords.Of(term.Symbol).Symbol] = term.Value;
            }

            IsGiven(check.Figures.DemandBy, known, check.Figures.Demand, $"{check.What}, demand");
            IsGiven(check.Figures.LimitBy, known, check.Figures.Limit, $"{check.What}, limit");
        });
    }

    [Fact]
    public void NoFormula_StandsInNoneOfTheseBeams()
    {
        IEnumerable<CheckFormula> used =
            from document in All.Values
            from check in CalculationTests.Run(document).Checks.All
            from formula in check.Figures.Terms.Select(term => term.By).Append(check.Figures.DemandBy).Append(check.Figures.LimitBy)
            where formula is not null
            select formula.Value;

        CheckFormula[] unused = [.. Enum.GetValues<CheckFormula>().Except(used)];
        Assert.True(unused.Length == 0, string.Join(", ", unused));
    }

    [Fact]
    public void WhatIsJudged_HasItsLimitGivenOrByAFormulaOrAsAProduct() => Assert.All(
        from document in All.Values
        from check in CalculationTests.Run(document).Checks.All
        where check.Why is null
        select check.Figures,
        figures => Assert.True(
            figures.LimitBy is not null
                || !figures.Factors.IsEmpty
                || figures.Clause is CheckClause.Given
                || figures.Kind == CheckKind.BendingAndAxial,
            $"{figures.Kind} by {figures.Clause}"));

    private static void IsGiven(CheckFormula? by, Dictionary<string, double> known, double? value, string what)
    {
        if (by is CheckFormula formula && value is double expected)
        {
            double worked = new FormulaReader(FormulaWords.Of(formula), known).Value();
            Assert.True(
                Math.Abs(worked - expected) <= Closeness * Math.Abs(expected),
                FormattableString.Invariant($"{what}: {FormulaWords.Of(formula)} = {worked}, and {expected} is told"));
        }
    }

    private static Section? SectionOf(Calculation calculation, SectionCheck check) =>
        calculation.Beam!.Sticks[check.Span ?? 0].Section;

    private static Dictionary<string, double> Sizes(Section? section) => section is null ? [] : new(
        SectionSizes.Of(section)
            .Select(size => KeyValuePair.Create(size.Sign, size.Metres))
            .Append(KeyValuePair.Create("A", section.Area ?? double.NaN)));

    private static IEnumerable<KeyValuePair<string, BeamDocument>> Documents() => [.. OfSteel(), .. OfTimber(), .. OfGivenStresses()];

    private static IEnumerable<KeyValuePair<string, BeamDocument>> OfSteel()
    {
        string[] steel = ["AISC 360-16 ASD", "AISC 360-16 LRFD", "EN 1993-1-1", "elastic allowable"];
        (string Name, SectionEntry Row)[] sections =
        [
            ("W10x30", new() { Name = "s", Shape = "W10x30" }),
            ("W10x30 flat", new() { Name = "s", Shape = "W10x30", Flat = "true" }),
            ("C10x20", new() { Name = "s", Shape = "C10x20" }),
            ("C10x20 flat", new() { Name = "s", Shape = "C10x20", Flat = "true" }),
            ("IPE 300", new() { Name = "s", Shape = "IPE 300" }),
            ("tube", new() { Name = "s", Shape = "HSS8x4x1/4" }),
            ("round tube", new() { Name = "s", Diameter = "200 mm", Wall = "6 mm" }),
            ("square tube", new() { Name = "s", Shape = "HSS8x8x1/4" }),
            ("thin round tube", new() { Name = "s", Diameter = "400 mm", Wall = "5 mm" }),
            ("thinner round tube", new() { Name = "s", Diameter = "700 mm", Wall = "3.2 mm" }),
            ("thinnest round tube", new() { Name = "s", Diameter = "900 mm", Wall = "3.2 mm" }),
            ("bar", new() { Name = "s", Width = "20 mm", Depth = "150 mm" }),
            ("thin bar", new() { Name = "s", Width = "8 mm", Depth = "200 mm" }),
            ("round bar", new() { Name = "s", Diameter = "80 mm" }),
            ("plates", Plates("200 mm", "12 mm", "8 mm", "400 mm")),
            ("wide plates", Plates("300 mm", "10 mm", "8 mm", "300 mm")),
            ("widest plates", Plates("500 mm", "8 mm", "8 mm", "300 mm")),
            ("wide plates flat", Plates("300 mm", "10 mm", "8 mm", "300 mm") with { Flat = "true" }),
            ("widest plates flat", Plates("500 mm", "8 mm", "8 mm", "300 mm") with { Flat = "true" }),
            ("broad plates flat", Plates("900 mm", "8 mm", "8 mm", "300 mm") with { Flat = "true" }),
            ("thin web", Plates("200 mm", "12 mm", "4 mm", "300 mm")),
        ];
        foreach (string rules in steel)
        {
            foreach ((string name, SectionEntry row) in sections)
            {
                foreach (string unbraced in (string[])["braced", "0.5 m", "3 m", "9 m"])
                {
                    yield return new($"{rules}, {name}, {unbraced}", Steel(rules, row, unbraced));
                }

                yield return new($"{rules}, {name}, pulled", Pulled(Steel(rules, row, "braced")));
                yield return new($"{rules}, {name}, sheared", Sheared(Steel(rules, row, "braced")));
            }

            // No steel yields so late; a tube of the catalogue buckles in every way then.
            foreach (string yield in (string[])["960 MPa", "1200 MPa"])
            {
                yield return new($"{rules}, tube of {yield}", Long(Steel(rules, new() { Name = "s", Shape = "HSS10x4x1/4" }, "40 m"), yield));
            }
        }
    }

    private static BeamDocument Long(BeamDocument steel, string yield) => steel with
    {
        Spans = [steel.Spans[0] with { Length = "40 m" }],
        Materials = [steel.Materials[0] with { Yield = yield }],
    };

    private static BeamDocument Pulled(BeamDocument steel) => steel with
    {
        Loads = [.. steel.Loads, new() { Kind = "point", At = "9 m", Force = "20 kN", Angle = "90 deg", Case = "live" }],
    };

    private static BeamDocument Sheared(BeamDocument steel) => steel with
    {
        Loads = [new() { Kind = "point", At = "0.3 m", Force = "400 kN", Case = "live" }],
    };

    private static SectionEntry Plates(string width, string flange, string web, string depth) => new()
    {
        Name = "s",
        FlangeWidth = width,
        FlangeThickness = flange,
        WebThickness = web,
        Depth = depth,
    };

    private static BeamDocument Steel(string rules, SectionEntry section, string unbraced) => new()
    {
        Display = "si",
        Spans = [new() { Length = "9 m", Unbraced = unbraced }],
        Supports =
        [
            new() { Kind = "pin", Joint = "0", Bearing = "80 mm" }, new() { Kind = "roller", Joint = "1", Bearing = "80 mm" },
        ],
        Loads = [new() { Kind = "distributed", Intensity = "2 kN/m", Case = "live" }],
        Combinations =
        [
            new() { Name = "as it is", Factors = [new("live", "1.0")] },
            new() { Name = "more", Basis = "factored", Factors = [new("live", "1.5")] },
        ],
        Sections = [section],
        Materials = [new() { Name = "m", Modulus = "200 GPa", Yield = "345 MPa" }],
        Limits = new() { Rules = rules, Deflection = "L/250" },
    };

    private static IEnumerable<KeyValuePair<string, BeamDocument>> OfTimber()
    {
        (string Rules, MaterialEntry Material, string Basis)[] rules =
        [
            ("NDS", new() { Name = "m", Grade = "DF-L No.2", Factors = [new("duration", "1.25"), new("repetitive", "1.15")] }, "service"),
            (
                "EN 1995-1-1",
                new() { Name = "m", Grade = "C24", Creep = "0.6", Factors = [new("kmod", "0.8"), new("gamma_M", "1.3"), new("system", "1.1")] },
                "factored"),
        ];
        return
            from rule in rules
            from unbraced in (string[])["braced", "0.5 m", "1.5 m", "2.4 m", "6 m"]
            from bearing in (string[])["50 mm", "100 mm"]
            select KeyValuePair.Create(
                $"{rule.Rules}, {unbraced}, {bearing}",
                new BeamDocument
                {
                    Display = "si",
                    Spans = [new() { Length = "6 m", Unbraced = unbraced }],
                    Supports =
                    [
                        new() { Kind = "pin", Joint = "0", Bearing = bearing },
                        new() { Kind = "roller", At = "4.5 m", Bearing = bearing },
                    ],
                    Loads =
                    [
                        new() { Kind = "distributed", Intensity = "0.6 kN/m", Case = "dead" },
                        new() { Kind = "point", At = "6 m", Force = "2 kN", Angle = "90 deg", Case = "dead" },
                    ],
                    Combinations =
                    [
                        new() { Name = "as it is", Factors = [new("dead", "1.0")] },
                        new() { Name = "more", Basis = "factored", Factors = [new("dead", "1.35")] },
                    ],
                    Sections = [new() { Name = "s", Width = "38 mm", Depth = "184 mm" }],
                    Materials = [rule.Material],
                    Limits = new()
                    {
                        Rules = rule.Rules,
                        Deflection = "L/300",
                        DeflectionOverhang = "L/150",
                        DeflectionFinal = "L/200",
                        DeflectionCases = [new("dead", "L/400")],
                        Lasting = [new("dead", "1.0")],
                    },
                });
    }

    private static IEnumerable<KeyValuePair<string, BeamDocument>> OfGivenStresses() =>
        from axial in (string?[])[null, "5 kN"]
        select KeyValuePair.Create(
            $"given stresses, {axial}",
            new BeamDocument
            {
                Display = "si",
                Spans = [new() { Length = "4 m" }],
                Supports =
                [
                    new()
                    {
                        Kind = "pin", Joint = "0", Bearing = "90 mm", BearingAllowable = "4 MPa", Pad = "0.3 m x 0.3 m",
                        AllowablePressure = "150 kPa",
                    },
                    new() { Kind = "roller", Joint = "1" },
                ],
                Loads =
                [
                    new() { Kind = "distributed", Intensity = "3 kN/m", Case = "live" },
                    .. axial is null ? [] : new LoadEntry[] { new() { Kind = "point", At = "4 m", Force = axial, Angle = "90 deg", Case = "live" } },
                ],
                Sections = [new() { Name = "s", Width = "100 mm", Depth = "200 mm" }],
                Materials = [new() { Name = "m", Modulus = "11 GPa", AllowableBending = "10 MPa", AllowableShear = "1 MPa", AllowableBearing = "3 MPa" }],
            });
}
