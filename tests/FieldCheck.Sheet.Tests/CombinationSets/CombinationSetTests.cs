using System.Globalization;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.CombinationSets;

/// <summary>
/// The rows that the shipped sets give a beam, against the lists of the standards written out: ASCE 7-16 2.3.1, 2.3.6,
/// 2.4.1 and 2.4.5; EN 1990 6.10, 6.10a, 6.10b, 6.14b to 6.16b with the recommended factors 1.35 and 1.5, xi = 0.85, and
/// the psi of its Table A1.1.
/// </summary>
public sealed class CombinationSetTests
{
    [Fact]
    public void AllowableStress_OfDeadAndLive_IsTwoRows() =>
        Assert.Equal(["dead", "dead + live"], Names("asce-7-16-allowable-stress", "dead", "live"));

    [Fact]
    public void AllowableStress_OfRoofLoadsAndWind_TakesOneRoofLoadAtATime() => Assert.Equal(
        [
            "dead",
            "dead + live",
            "dead + roof live",
            "dead + snow",
            "dead + 0.75 live + 0.75 roof live",
            "dead + 0.75 live + 0.75 snow",
            "dead + 0.6 wind",
            "dead + 0.75 live + 0.75 roof live + 0.45 wind",
            "dead + 0.75 live + 0.75 snow + 0.45 wind",
            "dead + 0.75 live + 0.45 wind",
            "dead + 0.75 roof live + 0.45 wind",
            "dead + 0.75 snow + 0.45 wind",
            "0.6 dead + 0.6 wind",
        ],
        Names("asce-7-16-allowable-stress", "dead", "live", "roof_live", "snow", "wind"));

    [Fact]
    public void AllowableStress_OfEarthquake_IsItsThreeRows() => Assert.Equal(
        [
            "dead", "dead + live", "dead + 0.7 earthquake", "dead + 0.75 live + 0.525 earthquake", "0.6 dead + 0.7 earthquake",
        ],
        Names("asce-7-16-allowable-stress", "dead", "live", "earthquake"));

    [Fact]
    public void Strength_OfDeadAndLive_IsTwoRows()
    {
        CombinationSetRows rows = Rows("asce-7-16-strength", "dead", "live");

        Assert.Equal(["1.4 dead", "1.2 dead + 1.6 live"], Names(rows));
        Assert.All(rows.Rows, row => Assert.Equal("factored", row.Entry.Basis));
        Assert.Equal([new("dead", "1.2"), new("live", "1.6")], rows.Rows[1].Entry.Factors);
        Assert.Equal("1.2 D + 1.6 L + 0.5 (Lr or S or R)", rows.Rows[1].Expression);
    }

    [Fact]
    public void Strength_OfSnowWindAndEarthquake_IsTheList() => Assert.Equal(
        [
            "1.4 dead",
            "1.2 dead + 1.6 live + 0.5 snow",
            "1.2 dead + 1.6 live",
            "1.2 dead + 1.6 snow + live",
            "1.2 dead + 1.6 snow",
            "1.2 dead + 1.6 snow + 0.5 wind",
            "1.2 dead + live + 0.5 snow + wind",
            "1.2 dead + live + wind",
            "1.2 dead + 0.5 snow + wind",
            "1.2 dead + wind",
            "0.9 dead + wind",
            "1.2 dead + live + 0.2 snow + earthquake",
            "1.2 dead + live + earthquake",
            "1.2 dead + 0.2 snow + earthquake",
            "1.2 dead + earthquake",
            "0.9 dead + earthquake",
        ],
        Names("asce-7-16-strength", "dead", "live", "snow", "wind", "earthquake"));

    [Fact]
    public void Equilibrium_TakesThePermanentLoadLowAndHigh() => Assert.Equal(
        [
            "0.9 dead + 1.5 live + 0.9 wind",
            "0.9 dead + 1.5 wind + 1.05 live",
            "0.9 dead + 1.5 live",
            "0.9 dead + 1.5 wind",
            "1.1 dead + 1.5 live + 0.9 wind",
            "1.1 dead + 1.5 wind + 1.05 live",
            "1.1 dead + 1.5 live",
            "1.1 dead + 1.5 wind",
        ],
        Names("en-1990-equilibrium", "dead", "live", "wind"));

    [Fact]
    public void Strength610_LetsEachVariableLoadLead() => Assert.Equal(
        [
            "1.35 dead",
            "1.35 dead + 1.5 live + 0.9 wind",
            "1.35 dead + 1.5 wind + 1.05 live",
            "1.35 dead + 1.5 live",
            "1.35 dead + 1.5 wind",
            "dead + 1.5 live + 0.9 wind",
            "dead + 1.5 wind + 1.05 live",
            "dead + 1.5 live",
            "dead + 1.5 wind",
        ],
        Names("en-1990-strength-6-10", "dead", "live", "wind"));

    [Fact]
    public void Sources_AreThoseOfTheRowsForTheBeam() => Assert.Equal(
        "ASCE 7-16 2.4.1; read in the source",
        Assert.Single(Rows("asce-7-16-allowable-stress", "dead", "live").Sources));

    [Fact]
    public void SourcesOfPsi_AreThoseOfTheCasesOfTheBeam() => Assert.Equal(
        ["EN 1990 Table A1.1, categories A and B, recommended; from memory: confirm against the standard"],
        Rows("en-1990-strength-6-10", "dead", "live").Sources.Where(source => source.Contains("A1.1")));

    [Fact]
    public void Strength610ab_TakesXiOffThePermanentLoad() => Assert.Equal(
        [
            "1.35 dead + 1.05 live",
            "1.35 dead",
            "1.1475 dead + 1.5 live",
            "dead + 1.5 live",
        ],
        Names("en-1990-strength-6-10ab", "dead", "live"));

    [Fact]
    public void Serviceability_OfLiveAndSnow_IsByTheirPsi() => Assert.Equal(
        [
            "dead + live + 0.7 snow",
            "dead + snow + 0.7 live",
            "dead + live",
            "dead + snow",
            "dead + 0.5 live + 0.2 snow",
            "dead + 0.5 snow + 0.3 live",
            "dead + 0.5 live",
            "dead + 0.5 snow",
            "dead + 0.3 live + 0.2 snow",
            "dead + 0.3 live",
            "dead + 0.2 snow",
            "dead",
        ],
        Names("en-1990-serviceability", "dead", "live", "snow"));

    /// <summary>
    /// EN 1990 6.4.3.1(4): each combination has a leading variable action; actions that are not unfavourable are left out.
    /// So there is a row for every leader and every subset of its companions: n 2^(n-1) of n variable loads.
    /// </summary>
    [Theory]
    [InlineData("1.35", 1, "live")]
    [InlineData("1.35", 4, "live", "snow")]
    [InlineData("1.35", 12, "live", "snow", "wind")]
    [InlineData("1.0", 12, "live", "snow", "wind")]
    public void LeadingLoad_GoesWithEveryChoiceOfTheOthers(string dead, int count, params string[] variable)
    {
        Dictionary<string, double> psi0 = new() { ["live"] = 0.7, ["snow"] = 0.7, ["wind"] = 0.6 };
        HashSet<string> wanted =
        [
            .. from leader in variable
               let others = variable.Where(name => name != leader).ToArray()
               from left in Enumerable.Range(0, 1 << others.Length)
               let some = others.Where((_, index) => (left >> index & 1) == 1)
               select string.Join(' ', some.Select(name => $"{name}={1.5 * psi0[name]:0.###}").Append($"{leader}=1.5").Order()),
        ];

        string[] found =
        [
            .. Rows("en-1990-strength-6-10", ["dead", .. variable]).Rows
                .Select(row => row.Entry.Factors)
                .Where(factors => factors.Count > 1 && factors[0] == new NamedFigure("dead", dead))
                .Select(factors => string.Join(' ', factors.Skip(1)
                    .Select(factor => $"{factor.Name}={double.Parse(factor.Text, CultureInfo.InvariantCulture):0.###}").Order())),
        ];

        Assert.Equal(count, wanted.Count);
        Assert.Equal(wanted.Order(), found.Order());
    }

    [Fact]
    public void KindsOfUse_AreSetsOfTheirOwn()
    {
        CombinationSet[] sets =
            [.. CombinationLibrary.BuiltIn().Where(set => set.Name == "en-1990-strength-6-10ab")];

        Assert.Equal(
            [
                "EN 1990, strength by 6.10a and 6.10b: homes, offices",
                "EN 1990, strength by 6.10a and 6.10b: halls, shops",
                "EN 1990, strength by 6.10a and 6.10b: storage",
            ],
            sets.Select(set => set.Title));
        Assert.Contains("1.35 dead + 1.5 live", Names(sets[2].For(Beam("dead", "live"))));
    }

    [Fact]
    public void RoofsThatNobodyWalksOn_GoWithNothing() => Assert.Equal(
        ["1.35 dead + 1.5 live", "1.35 dead + 1.5 roof live + 1.05 live"],
        Names("en-1990-strength-6-10", "dead", "live", "roof_live").Skip(1).Take(2));

    [Fact]
    public void CaseThatTheSetDoesNotKnow_IsToldAsLeftOut()
    {
        CombinationSetRows rows = Rows("asce-7-16-strength", "dead", "stack", "live");

        Assert.Equal("stack", Assert.Single(rows.LeftOut));
        Assert.Equal(["1.4 dead", "1.2 dead + 1.6 live"], Names(rows));
    }

    [Fact]
    public void OwnWeightAndRollingLoads_AreCasesToo()
    {
        BeamDocument beam = Beams.Simple with
        {
            Loads = [],
            SelfWeight = new() { Case = "dead" },
            Rolling = [new() { Axles = [new() { Offset = "0 m", Force = "2 kN" }] }],
        };

        Assert.Equal(["1.4 dead", "1.2 dead + 1.6 live"], Names(Of("asce-7-16-strength").For(beam)));
    }

    [Fact]
    public void BeamWithoutLoads_HasNoRows() => Assert.Empty(Rows("asce-7-16-strength").Rows);

    [Fact]
    public void Rows_StandAfterThoseThatStand_AndNotTwice()
    {
        CombinationSetRows rows = Rows("asce-7-16-strength", "dead", "live");
        CombinationEntry same = new() { Name = "U2", Basis = "factored", Factors = [new("live", "1.60"), new("dead", "1.2")] };
        CombinationEntry service = new() { Name = "1.4 dead", Factors = [new("dead", "1.4")] };

        Rows<CombinationEntry> now = rows.AddedTo([same, service]);

        Assert.Equal(["U2", "1.4 dead", "1.4 dead (2)"], now.Select(row => row.Name));
        Assert.Equal("factored", now[2].Basis);
        Assert.Equal(now, rows.AddedTo(now));
    }

    [Fact]
    public void RowsOfEverySet_ReadOnTheBeamTheyAreMadeFor()
    {
        BeamDocument beam = Beam("dead", "live", "roof_live", "snow", "rain", "wind", "earthquake", "construction");
        foreach (CombinationSet set in CombinationLibrary.BuiltIn())
        {
            CombinationSetRows rows = set.For(beam);

            Assert.NotEmpty(rows.Rows);
            Assert.Equal(
                rows.Rows.Length, Beams.Built(beam with { Combinations = rows.AddedTo([]) }).Model.Combinations.Length);
            Assert.Equal(rows.Rows.Length, rows.Rows.DistinctBy(row => row.Entry.Name).Count());
        }
    }

    [Fact]
    public void EveryShippedRow_NamesItsSourceAndWhetherItWasReadThere()
    {
        BeamDocument beam = Beam("dead", "live", "roof_live", "snow", "rain", "wind", "earthquake");
        Assert.All(CombinationLibrary.BuiltIn(), set =>
        {
            Assert.NotEmpty(set.Notes);
            Assert.NotEmpty(set.For(beam).Sources);
            Assert.All(set.For(beam).Sources, source => Assert.Matches(@"^(ASCE 7-16|EN 1990) .+; (read in|from memory).+$", source));
        });
        Assert.Equal(14, CombinationLibrary.BuiltIn().Length);
    }

    internal static BeamDocument Beam(params string[] cases) => Beams.Simple with
    {
        Loads = [.. cases.Select(name => new LoadEntry { Kind = "point", At = "2 m", Force = "1 kN", Case = name })],
    };

    private static CombinationSet Of(string name) => CombinationLibrary.BuiltIn().First(set => set.Name == name);

    private static CombinationSetRows Rows(string name, params string[] cases) => Of(name).For(Beam(cases));

    private static string[] Names(string name, params string[] cases) => Names(Rows(name, cases));

    private static string[] Names(CombinationSetRows rows) => [.. rows.Rows.Select(row => row.Entry.Name!)];
}
