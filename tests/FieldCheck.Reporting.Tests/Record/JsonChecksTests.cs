using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tests.Record;

/// <summary>The checks as other programs read them; the keys are those of docs/command-line.md.</summary>
public sealed class JsonChecksTests
{
    [Fact]
    public void Check_HasSpanPlaceCombinationAndFigures()
    {
        JsonNode check = Of(Checked.Bending);

        Assert.Equal("bending", (string?)check["what"]);
        Assert.Equal(1, (int?)check["span"]);
        Assert.Null(check["bay"]);
        Assert.Equal(2.1, (double?)check["x_m"]);
        Assert.Equal("all loads", (string?)check["combination"]);
        Assert.Equal("service", (string?)check["basis"]);
        Assert.Equal((6e6, 8e6, 0.75), ((double)check["demand"]!, (double)check["limit"]!, (double)check["utilisation"]!));
        Assert.Equal(("Pa", "ok", "exact", ""), ((string)check["unit"]!, (string)check["verdict"]!, (string)check["certainty"]!, (string)check["reason"]!));
        Assert.Equal("all loads", (string?)check["governs"]!["combination"]);
        Assert.Equal("""{"symbol":"S","words":"section modulus","value":0.000433,"unit":"m3","formula":""}""", check["terms"]![0]!.ToJsonString());
        Assert.Equal("""{"symbol":"C_D","words":"load duration","value":1.25}""", check["factors"]![0]!.ToJsonString());
    }

    [Fact]
    public void Overhang_HasNoBayAndItsSide()
    {
        JsonNode right = Of(Checked.Overhang);
        JsonNode left = Of(Checked.Overhang with { Figures = Checked.Overhang.Figures with { Bay = -1 } });

        Assert.Equal(("overhang_deflection", "right", "over"), ((string)right["what"]!, (string)right["overhang"]!, (string)right["verdict"]!));
        Assert.Equal("left", (string?)left["overhang"]);
        Assert.Null(right["bay"]);
        Assert.Null(left["bay"]);
        Assert.Equal(("m", "estimate"), ((string)right["unit"]!, (string)right["certainty"]!));
    }

    [Fact]
    public void BaysAsOne_HaveTheFirstAndTheLast()
    {
        (string?, int?, int?, string?) Of(int bay, int? last)
        {
            JsonNode check = JsonChecksTests.Of(Checked.Overhang with { Figures = Checked.Overhang.Figures with { Bay = bay, LastBay = last } });
            return ((string?)check["what"], (int?)check["bay"], (int?)check["to_bay"], (string?)check["overhang"]);
        }

        // The beam has one bay, which is the first of those up to the right end and the last of those from the left.
        Assert.Equal(("overhang_deflection", 1, null, "right"), Of(0, 1));
        Assert.Equal(("overhang_deflection", null, 1, "left"), Of(-1, 0));
        Assert.Equal(("overhang_deflection", null, null, "left"), Of(-1, null));
    }

    [Fact]
    public void CheckThatIsNotJudged_SaysWhy_AndHasNoFigures()
    {
        JsonNode check = Of(Checked.Bearing);

        Assert.Equal(("not_judged", "B"), ((string)check["verdict"]!, (string)check["support"]!));
        Assert.Equal("the length of the bearing is not given; it needs at least 42.0 mm", (string?)check["reason"]);
        Assert.All(["demand", "limit", "utilisation", "combination", "x_m", "span", "governs", "case"], key => Assert.Null(check[key]));
    }

    [Fact]
    public void CaseAlone_HasItsCaseAndNoCombination()
    {
        JsonNode check = Of(Checked.CaseAlone);

        Assert.Equal(("live", "deflection", 1), ((string)check["case"]!, (string)check["what"]!, (int)check["bay"]!));
        Assert.Null(check["combination"]);
        Assert.Equal("bound", (string?)check["certainty"]);
    }

    private static JsonNode Of(BeamCheck check)
    {
        Calculation calculation = Checked.Trench(check);
        string json = CheckJson.Of(calculation, new CheckRequest("trench.toml", ImmutableArray<AskedPlace>.Empty), isIndented: false);
        return Assert.Single(JsonNode.Parse(json)!["checks"]!.AsArray())!;
    }
}
