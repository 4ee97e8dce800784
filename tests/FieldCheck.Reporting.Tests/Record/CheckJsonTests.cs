using System.Text.Json;
using System.Text.Json.Nodes;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Reporting.Tests.Record;

public sealed class CheckJsonTests
{
    private static readonly BeamDocument Simple = new()
    {
        Title = "Bench 12'-6\"",
        Spans = [new() { Length = "4 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads = [new() { Kind = "point", At = "1 m", Force = "10 kN" }],
    };

    private static readonly BeamDocument Stiff = Simple with
    {
        Spans = [new() { Length = "4 m", Section = "stick", Material = "steel" }],
        Sections = [new() { Name = "stick", Inertia = "1000 cm4" }],
        Materials = [new() { Name = "steel", Modulus = "200 GPa" }],
    };

    private static readonly BeamDocument TwoBases = Simple with
    {
        Loads =
        [
            new() { Kind = "point", At = "1 m", Force = "10 kN", Case = "dead" },
            new() { Kind = "point", At = "3 m", Force = "6 kN", Case = "live" },
        ],
        Combinations =
        [
            new() { Name = "dead", Factors = [new("dead", "1.0")] },
            new() { Name = "both", Factors = [new("dead", "1.0"), new("live", "1.0")] },
            new() { Name = "strength", Basis = "factored", Factors = [new("dead", "1.2"), new("live", "1.6")] },
        ],
    };

    [Fact]
    public void EveryKeyOfTheSample_StandsInTheAnswer()
    {
        Calculation calculation = Solve(TwoBases with
        {
            Stated = [new() { Support = "A", Vertical = "9 kN", Combination = "both" }],
        });
        JsonCheck whole = JsonAnswer.Of(
            calculation, (BeamOutcome.Stands)calculation.Outcome!, new("trench-bearer.toml", [new("1 m", 1)]), 1) with
        {
            Explanations = [new("self_weight_left_out", "", [0], [], 0, false, [0], 0)],
            Checks = [new("bending", 1, 1, 0, "both", "service", 0, 0, "Pa", 0, "ok", "", null, null, null, null, "", "exact", [], [], null, "", "")],
            Messages = [new("note", "uplift", "")],
        };
        JsonNode answer = JsonSerializer.SerializeToNode(whole, JsonKeys.For(isIndented: false).JsonCheck)!;

        Assert.Empty(Missing(Sample(), answer, "$"));
    }

    [Fact]
    public void KeysOfTheTop_StandInTheOrderOfTheSample_AndWhatWasAddedSinceBehindThem() =>
        Assert.Equal(
            [.. Sample().AsObject().Select(pair => pair.Key), "stated_balances", "every_slip_tried"],
            Answer(TwoBases).AsObject().Select(pair => pair.Key));

    [Fact]
    public void Explanation_IsToldWithWhatItGives()
    {
        // 10 kN at 1 m of 4 m: 7.5 and 2.5 kN; stated at the wrong ends.
        JsonNode answer = Answer(Simple with
        {
            Stated = [new() { Support = "A", Vertical = "2.50 kN" }, new() { Support = "B", Vertical = "7.50 kN" }],
        });

        JsonNode first = answer["explanations"]![0]!;
        Assert.Equal("ends_swapped", (string?)first["kind"]);
        Assert.StartsWith(
            "The stated figures are consistent with A and B swapped: it would give A 2.50", (string?)first["text"]);
        Assert.Equal([2500, 7500], first["predicted"]!.AsArray().Select(one => (double)one!), Near);
        Assert.Equal(["load 1 measured from the other end"], first["tied_with"]!.AsArray().Select(one => (string?)one));
        Assert.Equal(FalseClaims.Rate(figures: 2, digits: 3), (double)first["false_claim_rate"]!);
        Assert.False((bool)first["is_fitted"]!);
        Assert.Equal([0, 1], first["stated"]!.AsArray().Select(one => (int)one!));

        JsonNode last = answer["explanations"]!.AsArray()[^1]!;
        Assert.True((bool)last["is_fitted"]!);
        Assert.Null(last["false_claim_rate"]);
        Assert.StartsWith("The stated figures could also be had by ", (string?)last["text"]);
    }

    [Fact]
    public void SimpleBeam_GivesItsReactionsAndPeaks()
    {
        JsonNode answer = Answer(Simple);
        JsonNode only = Assert.Single(answer["combinations"]!.AsArray())!;

        Assert.Equal("Bench 12'-6\"", (string?)answer["title"]);
        Assert.Equal(4.0, (double)answer["length_m"]!, 1e-12);
        Assert.Equal(0, (int)answer["degree_of_indeterminacy"]!);
        Assert.Equal("all loads", (string?)only["name"]);
        Assert.Equal("service", (string?)only["basis"]);
        Assert.Equal([7500, 2500], only["reactions"]!.AsArray().Select(one => (double)one!["vertical_N"]!), Near);
        Assert.Equal(["A", "B"], only["reactions"]!.AsArray().Select(one => (string)one!["support"]!));
        Assert.Equal([0, 1], only["reactions"]!.AsArray().Select(one => (int)one!["joint"]!));
        Same((7500, 0, -2500, 1), only["extremes"]!["shear_N"]!);
        Same((7500, 1, 0, 0), only["extremes"]!["moment_Nm"]!);
        Assert.InRange((double)only["equilibrium_residual"]!, 0, 1e-12);
    }

    [Fact]
    public void NoStiffness_LeavesMovementsNull()
    {
        JsonNode only = Answer(Simple, new AskedPlace("1 m", 1))["combinations"]![0]!;

        Assert.Null(only["extremes"]!["deflection_m"]);
        Assert.All(["slope_left_rad", "slope_right_rad", "deflection_m"], key => Assert.Null(only["at"]![0]![key]));
        Assert.True(only["extremes"]!.AsObject().ContainsKey("deflection_m"));
    }

    [Fact]
    public void PlaceUnderTheLoad_HasBothSidesOfTheJump()
    {
        // P = 10 kN at a = 1 m of L = 4 m, EI = 2 MN m2: M = Pab/L, deflection Pa^2 b^2/(3 EI L), slope there
        // (tangent, positive counter-clockwise) -Pab(b-a)/(3 EI L). Textbook formulas, from memory.
        JsonNode at = Answer(Stiff, new AskedPlace("1 m", 1))["combinations"]![0]!["at"]![0]!;

        Assert.Equal("1 m", (string?)at["place"]);
        Assert.Equal(7500, (double)at["shear_left_N"]!, 1e-6);
        Assert.Equal(-2500, (double)at["shear_right_N"]!, 1e-6);
        Assert.Equal(7500, (double)at["moment_left_Nm"]!, 1e-6);
        Assert.Equal(7500, (double)at["moment_right_Nm"]!, 1e-6);
        Assert.Equal(10000 * 9 / (3 * 2e6 * 4), (double)at["deflection_m"]!, 1e-12);
        Assert.Equal(-10000 * 3 * 2 / (3 * 2e6 * 4), (double)at["slope_left_rad"]!, 1e-12);
        Assert.Equal(-10000 * 3 * 2 / (3 * 2e6 * 4), (double)at["slope_right_rad"]!, 1e-12);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(4.0)]
    public void EndOnASupport_DoesNotMove(double end) =>
        Assert.Equal(
            0,
            (double)Answer(Stiff, new AskedPlace("end", end))["combinations"]![0]!["at"]![0]!["deflection_m"]!,
            1e-12);

    [Fact]
    public void FreeEnd_MovesAsTheTipOfTheOverhang()
    {
        // A cantilever of L = 2 m with P = 3 kN at its tip, EI = 2 MN m2: PL^3/(3EI) = 4 mm down.
        // Textbook formula, from memory.
        BeamDocument cantilever = Stiff with
        {
            Spans = [Stiff.Spans[0] with { Length = "2 m" }],
            Supports = [new() { Kind = "fixed", Joint = "0" }],
            Loads = [new() { Kind = "point", At = "end", Force = "3 kN" }],
        };

        JsonNode at = Answer(cantilever, new AskedPlace("end", 2))["combinations"]![0]!["at"]![0]!;

        Assert.Equal(0.004, (double)at["deflection_m"]!, 1e-12);
    }

    [Fact]
    public void Envelopes_KeepTheBasesApartAndNameWhatGoverns()
    {
        // dead 10 kN at 1 m: A 7.5, B 2.5; live 6 kN at 3 m: A 1.5, B 4.5.
        JsonNode[] envelopes = [.. Answer(TwoBases)["envelopes"]!.AsArray()!];

        Assert.Equal(["service", "factored"], envelopes.Select(one => (string)one["basis"]!));
        JsonNode b = envelopes[0]["reactions"]!.AsArray()
            .Single(one => (string?)one!["support"] == "B" && (string?)one["component"] == "vertical")!;
        Assert.Equal("N", (string?)b["unit"]);
        Assert.Equal(7000, (double)b["max"]!, 1e-6);
        Assert.Equal("both", (string?)b["max_governs"]!["combination"]);
        Assert.Equal(2500, (double)b["min"]!, 1e-6);
        Assert.Equal("dead", (string?)b["min_governs"]!["combination"]);
        Assert.Equal("strength", (string?)envelopes[1]["extremes"]!["moment_Nm"]!["max_governs"]!["combination"]);
        Assert.Equal(1.2 * 7500 + 1.6 * 1500, (double)envelopes[1]["extremes"]!["moment_Nm"]!["max"]!, 1e-6);
    }

    /// <summary>Twice 4 m and an overhang of 1 m; a truck of 2 kN and 1 kN, 1 m apart.</summary>
    [Fact]
    public void WhatGoverns_IsToldByTheKeysThatApply()
    {
        BeamDocument document = Tables.EnvelopePanelTests.Bays(2, "3 kN/m") with
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "4 m" }, new() { Length = "1 m" }],
            Rolling =
            [
                new()
                {
                    Label = "Truck",
                    Case = "truck",
                    Axles = [new() { Offset = "0 m", Force = "2 kN" }, new() { Offset = "1 m", Force = "1 kN" }],
                },
            ],
        };

        JsonNode c = Answer(document)["envelopes"]![0]!["reactions"]!.AsArray()
            .Last(one => (string?)one!["component"] == "vertical")!;

        Assert.Equal(
            """{"combination":"all loads","pattern":[2],"pattern_overhangs":["right"],"rolling":"Truck","rolling_x_m":9,"rolling_reversed":true}""",
            c["max_governs"]!.ToJsonString());
        Assert.Equal("exact", (string?)c["certainty"]);
        Assert.Equal(
            """{"combination":"all loads","pattern":[1]}""", Without(c["min_governs"]!, "rolling", "rolling_x_m", "rolling_reversed"));
    }

    [Fact]
    public void SeveralPatterns_AreToldCaseByCase()
    {
        BeamDocument document = Tables.EnvelopePanelTests.Bays(2, "3 kN/m") with
        {
            Loads =
            [
                new() { Kind = "distributed", Intensity = "3 kN/m" },
                new() { Kind = "point", At = "mid 2", Force = "2 kN", Case = "snow" },
            ],
            Patterns = [new() { Case = "live" }, new() { Case = "snow" }],
        };

        JsonNode a = Answer(document)["envelopes"]![0]!["reactions"]!.AsArray()
            .First(one => (string?)one!["component"] == "vertical")!;

        Assert.Equal(
            """{"combination":"all loads","pattern":[1],"patterns":{"live":[1],"snow":[]}}""", a["max_governs"]!.ToJsonString());
        Assert.Equal(
            """{"combination":"all loads","pattern":[2],"patterns":{"live":[2],"snow":[2]}}""", a["min_governs"]!.ToJsonString());
    }

    [Fact]
    public void Envelopes_NameOnlyWhatASupportCanGive() =>
        Assert.Equal(
            ["A vertical", "A horizontal", "B vertical"],
            Answer(Simple)["envelopes"]![0]!["reactions"]!.AsArray()
                .Select(one => $"{(string?)one!["support"]} {(string?)one["component"]}"));

    [Theory]
    [InlineData("both", null, null, 9000.0, "service", "low")]
    [InlineData("strength", null, null, 11400.0, "factored", "low")]
    [InlineData(null, "max", "service", 9000.0, "service", "low")]
    [InlineData(null, "min", "service", 7500.0, "service", "agrees")]
    [InlineData(null, null, "factored", 11400.0, "factored", "low")]
    [InlineData(null, null, "service", null, "service", "not_judged")]
    [InlineData(null, "max", null, null, "unknown", "not_judged")]
    public void StatedFigure_StandsBesideWhatItIsComparableWith(
        string? combination, string? extreme, string? basis, double? computed, string expectedBasis, string verdict)
    {
        StatedEntry row = new()
        {
            Support = "a",
            Vertical = "8 kN",
            Combination = combination,
            Extreme = extreme,
            Basis = basis,
            Source = "sheet 4",
        };

        JsonNode stated = Assert.Single(Answer(TwoBases with { Stated = [row] })["stated"]!.AsArray())!;

        Assert.Equal("A", (string?)stated["support"]);
        Assert.Equal("vertical", (string?)stated["component"]);
        Assert.Equal("N", (string?)stated["unit"]);
        Assert.Equal(8000, (double)stated["stated"]!, 1e-9);
        Assert.Equal(expectedBasis, (string?)stated["basis"]);
        Assert.Equal(verdict, (string?)stated["verdict"]);
        Assert.Equal(verdict == "not_judged", (string?)stated["reason"] != "");
        Assert.Equal(("8 kN", "sheet 4"), ((string?)stated["text"], (string?)stated["source"]));
        Assert.Equal(extreme, (string?)stated["extreme"]);
        Assert.All(["band_low", "band_high"], key => Assert.Null(stated[key]));
        Assert.All(
            ["computed", "difference", "difference_ratio", "allowed"],
            key => Assert.Equal(computed is null, stated[key] is null));
        if (computed is double value)
        {
            Assert.Equal(value, (double)stated["computed"]!, 1e-6);
            Assert.Equal(8000 - value, (double)stated["difference"]!, 1e-6);
            Assert.Equal((8000 - value) / value, (double)stated["difference_ratio"]!, 1e-9);
            Assert.Equal(500 + (0.02 * value), (double)stated["allowed"]!, 1e-6);
        }
    }

    /// <summary>10 kN ± 10 % at 1 m ± 0.1 m of 4 m: A 9·2.9/4 to 11·3.1/4 kN, by the size alone 0.75, the place 0.25.</summary>
    [Fact]
    public void Bands_StandWithEveryCombination_AndWithWhatIsStated()
    {
        JsonNode answer = Answer(Simple with
        {
            Loads = [new() { Kind = "point", At = "1 m ± 0.1 m", Force = "10 kN ± 10 %" }],
            Stated = [new() { Support = "A", Vertical = "8.4 kN ± 10 N" }],
        });
        JsonNode bands = answer["combinations"]![0]!["bands"]!;
        JsonNode a = bands["reactions"]!.AsArray()
            .Single(one => (string?)one!["support"] == "A" && (string?)one["component"] == "vertical")!;
        JsonNode[] inputs = [.. a["inputs"]!.AsArray()!];
        JsonNode stated = answer["stated"]![0]!;

        Assert.Equal((6525, 8525), (Math.Round((double)a["low"]!, 6), Math.Round((double)a["high"]!, 6)));
        Assert.Equal(("N", "exact"), ((string?)a["unit"], (string?)a["certainty"]));
        Assert.Equal(["load[1].force", "load[1].at"], inputs.Select(one => (string?)one["key"]));
        Assert.Equal(["10 %", "0.1 m"], inputs.Select(one => (string?)one["plus_or_minus"]));
        Assert.Equal([-750, -250], inputs.Select(one => Math.Round((double)one["down"]!, 6)));
        Assert.Equal([750, 250], inputs.Select(one => Math.Round((double)one["up"]!, 6)));
        Assert.InRange((double)bands["extremes"]!["moment_Nm"]!["max_high"]!, 11_000 * 1.1 * 2.9 / 4, 8_780);
        Assert.Null(bands["extremes"]!["deflection_m"]);
        Assert.Equal(
            ("within_band", "exact", 10.0),
            ((string?)stated["verdict"], (string?)stated["band_certainty"], (double)stated["plus_or_minus"]!));
        Assert.Equal(8525, (double)stated["band_high"]!, 1e-6);
    }

    /// <summary>On 4 m and 1.5 m it tips beyond 6.4 kN at the tip.</summary>
    [Theory]
    [InlineData("6 kN ± 12 %", false)]
    [InlineData("6 kN ± 6 %", true)]
    public void Bands_SayWhetherTheyAreWhole(string force, bool isWhole)
    {
        JsonNode answer = Answer(Simple with
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "1.5 m" }],
            Supports = [new() { Kind = "pin", Joint = "0", Acts = "up" }, new() { Kind = "roller", Joint = "1" }],
            Loads =
            [
                new() { Kind = "point", At = "end", Force = force },
                new() { Kind = "distributed", To = "B", Intensity = "1.2 kN/m" },
            ],
        });
        JsonNode bands = answer["combinations"]![0]!["bands"]!;

        Assert.Equal(isWhole, (bool)bands["is_whole"]!);
        Assert.Equal("estimate", (string?)bands["reactions"]![0]!["certainty"]);
    }

    [Fact]
    public void NothingUncertain_NoBands() => Assert.Null(Answer(Simple)["combinations"]![0]!["bands"]);

    [Fact]
    public void FigureStatedForACase_StandsBesideThatCaseAlone()
    {
        StatedEntry row = new() { Support = "B", Vertical = "4.4 kN", Case = "live" };

        JsonNode stated = Answer(TwoBases with { Stated = [row] })["stated"]![0]!;

        Assert.Equal("live", (string?)stated["case"]);
        Assert.Null(stated["combination"]);
        Assert.Equal(4500, (double)stated["computed"]!, 1e-6);
        Assert.Equal("agrees", (string?)stated["verdict"]);
    }

    [Fact]
    public void MomentAndWrongWay_AreJudgedInNewtonMetres()
    {
        BeamDocument cantilever = Simple with
        {
            Supports = [new() { Kind = "fixed", Joint = "0" }],
            Stated = [new() { Support = "A", Horizontal = "0 kN", Moment = "-10 kNm" }],
        };

        JsonNode[] stated = [.. Answer(cantilever)["stated"]!.AsArray()!];

        Assert.Equal(["agrees", "low"], stated.Select(one => (string?)one["verdict"]));
        Assert.Equal("Nm", (string?)stated[1]["unit"]);
        Assert.Equal(10000, (double)stated[1]["computed"]!, 1e-6);
        Assert.Null(stated[0]["difference_ratio"]);
    }

    /// <summary>10 kN at 1 m of 4 m: 7.5 and 2.5 kN; the figures lack 2 kN at 2 m.</summary>
    [Fact]
    public void WholeSet_HasItsBalance()
    {
        JsonNode balance = Answer(Simple with
        {
            Stated =
            [
                new() { Support = "A", Vertical = "6.50 kN" }, new() { Support = "B", Vertical = "1.50 kN" },
            ],
        })["stated_balances"]!.AsArray().Single()!;

        Assert.Equal("all loads", (string?)balance["combination"]);
        Assert.Null(balance["case"]);
        Assert.False((bool)balance["closes"]!);
        Assert.Equal("A", (string?)balance["about_support"]);
        Assert.Equal(
            (8000.0, 10000.0, -2000.0, 210.0),
            ((double)balance["forces_N"]!["stated"]!, (double)balance["forces_N"]!["loads"]!,
                (double)balance["forces_N"]!["difference"]!, Math.Round((double)balance["forces_N"]!["allowed"]!, 6)));
        Assert.Equal(6000, (double)balance["moments_Nm"]!["stated"]!, 1e-6);
        Assert.Equal(2000, (double)balance["lacking_load"]!["down_N"]!, 1e-6);
        Assert.Equal(2, (double)balance["lacking_load"]!["x_m"]!, 1e-9);
    }

    [Fact]
    public void BeamThatCanMove_IsAnErrorWithItsMotions()
    {
        BeamDocument swing = Simple with { Supports = [new() { Kind = "pin", Joint = "0" }] };

        JsonNode error = Answer(swing)["error"]!;

        Assert.Equal("mechanism", (string?)error["kind"]);
        Assert.NotEmpty(error["messages"]!.AsArray());
        Assert.All(error["messages"]!.AsArray(), message => Assert.NotEqual("", (string?)message!["text"]));
        JsonNode part = error["motions"]![0]!["parts"]![0]!;
        Assert.Equal((0.0, 4.0, 0.0), ((double)part["from_m"]!, (double)part["to_m"]!, (double)part["centre_m"]!));
    }

    [Fact]
    public void ProblemsOfAFile_AreAnError()
    {
        FileProblem[] problems =
        [
            new("a.toml", 12, 9, "load[2].at", "this is off the beam."),
            FileProblem.OfWhole("a.toml", "it is longer than 1 MiB."),
        ];

        string json = CheckJson.OfProblems("a.toml", [.. problems], isIndented: false);

        Assert.Equal(
            """{"format":1,"file":"a.toml","error":{"kind":"input","messages":["""
            + """{"line":12,"column":9,"key":"load[2].at","text":"this is off the beam."},"""
            + """{"line":null,"column":null,"key":"","text":"it is longer than 1 MiB."}],"motions":null}}""",
            json);
    }

    [Fact]
    public void NotIndented_IsOneLine()
    {
        Assert.DoesNotContain('\n', CheckJson.Of(Solve(TwoBases), new("a.toml", []), isIndented: false));
        Assert.Contains('\n', CheckJson.Of(Solve(TwoBases), new("a.toml", []), isIndented: true));
    }

    [Fact]
    public void FeetInchesAndSigns_StandAsTyped() =>
        Assert.Contains(
            "\"title\":\"Bench 12'-6\\\"\"", CheckJson.Of(Solve(Simple), new("a.toml", []), isIndented: false));

    [Theory]
    [InlineData(double.NaN, null)]
    [InlineData(double.PositiveInfinity, null)]
    [InlineData(double.NegativeInfinity, null)]
    [InlineData(-0.0, "0")]
    [InlineData(-2.5, "-2.5")]
    public void Figure_IsANumberJsonHasOrNull(double value, string? expected) =>
        Assert.Equal(expected, JsonFigure.Of(value)?.ToString(System.Globalization.CultureInfo.InvariantCulture));

    [Fact]
    public void BeamThatDoesNotRead_HasNoCheck()
    {
        Calculation unread = Run(Simple with { Loads = [new() { Kind = "point", At = "1 m", Force = "heavy" }] });

        Assert.Throws<ArgumentException>(() => CheckJson.Of(unread, new("a.toml", []), isIndented: false));
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-6;

    private static void Same((double Max, double MaxX, double Min, double MinX) expected, JsonNode extremes)
    {
        Assert.Equal(expected.Max, (double)extremes["max"]!, 1e-6);
        Assert.Equal(expected.MaxX, (double)extremes["max_x_m"]!, 1e-9);
        Assert.Equal(expected.Min, (double)extremes["min"]!, 1e-6);
        Assert.Equal(expected.MinX, (double)extremes["min_x_m"]!, 1e-9);
    }

    // Paths of keys that the sample has and the answer lacks; every element of an array is held to the sample's first.
    private static string Without(JsonNode node, params string[] keys)
    {
        JsonObject rest = node.DeepClone().AsObject();
        foreach (string key in keys)
        {
            rest.Remove(key);
        }

        return rest.ToJsonString();
    }

    private static IEnumerable<string> Missing(JsonNode? sample, JsonNode? answer, string path) =>
        (sample, answer) switch
        {
            // Of what governs, keys that do not apply are left out.
            (JsonObject, JsonObject given) when path.EndsWith("_governs", StringComparison.Ordinal) =>
                given.ContainsKey("combination") ? [] : [path],
            (JsonObject wanted, JsonObject given) => wanted.SelectMany(pair => given.ContainsKey(pair.Key)
                ? Missing(pair.Value, given[pair.Key], $"{path}.{pair.Key}")
                : [$"{path}.{pair.Key}"]),
            (JsonArray { Count: > 0 } wanted, JsonArray { Count: > 0 } given) =>
                given.SelectMany((element, index) => Missing(wanted[0], element, $"{path}[{index}]")),
            (JsonArray { Count: > 0 }, JsonArray) => [path + "[0]"],
            _ => [],
        };

    private static JsonNode Sample() =>
        JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Record", "check-sample.json")))!;

    private static JsonNode Answer(BeamDocument document, params AskedPlace[] places) =>
        JsonNode.Parse(CheckJson.Of(Solve(document), new("a.toml", [.. places]), isIndented: false))!;

    private static Calculation Solve(BeamDocument document)
    {
        Calculation calculation = Run(document);
        Assert.Empty(calculation.Problems);
        return calculation;
    }

    private static Calculation Run(BeamDocument document) =>
        Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver());
}
