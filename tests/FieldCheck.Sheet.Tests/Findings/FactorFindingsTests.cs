using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Findings;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

public sealed class FactorFindingsTests
{
    [Theory]
    [InlineData("NDS", "Factors of m that change no figure: kmod (NDS takes none of these).")]
    [InlineData("EN 1995-1-1", "Factors of m that change no figure: duration, wet_service (EN 1995-1-1 takes none of these).")]
    [InlineData(
        "EN 1993-1-1", "Factors of m that change no figure: duration, wet_service, kmod (EN 1993-1-1 takes none of these).")]
    [InlineData(null, "Factors of m that change no figure: duration, wet_service, kmod (no rules are chosen).")]
    public void FactorOfOtherRules_IsNoted(string? rules, string note)
    {
        BeamDocument document = Beams.With(new MaterialEntry
        {
            Name = "m",
            Modulus = "11 GPa",
            Factors = [new("duration", "1.25"), new("wet_service", "1"), new("kmod", "0.8")],
        }) with
        { Limits = new() { Rules = rules } };

        Message message = CalculationTests.Run(document).Messages.Single(one => one.Code == "factor_not_taken");

        Assert.Equal((Severity.Note, note), (message.Severity, message.Text));
        Assert.Equal(CheckStatus.Holds, MessageCodes.StatusOf(message.Code));
    }

    // Greatest of the tables: NDS Table 2.3.2 and EN 1995-1-1 Table 3.1 as they ship; 4.3.9, 4.3.7 and 6.1.7 from memory.
    [Theory]
    [InlineData("DF-L No.2", "1.5 in", "9.25 in", "C_D", "2.0", null)]
    [InlineData("DF-L No.2", "1.5 in", "9.25 in", "C_D", "2.5", "C_D 2.5, and NDS Table 2.3.2 has 2.0 at most")]
    [InlineData("DF-L No.2", "1.5 in", "9.25 in", "C_r", "1.15", null)]
    [InlineData("DF-L No.2", "1.5 in", "9.25 in", "C_r", "1.3", "C_r 1.3, and NDS 4.3.9 has 1.15 at most")]
    [InlineData("DF-L B&S No.1", "5.5 in", "11.5 in", "C_r", "1.15", "C_r 1.15, and NDS 4.3.9 has it for pieces 2 to 4 in thick")]
    [InlineData("DF-L B&S No.1", "5.5 in", "11.5 in", "C_r", "1", null)]
    [InlineData("DF-L No.2", "1.5 in", "9.25 in", "C_fu", "1.2", "C_fu 1.2, and NDS 4.3.7 has it for loads on the wide face")]
    [InlineData("DF-L No.2", "9.25 in", "1.5 in", "C_fu", "1.2", null)]
    [InlineData("C24", "75 mm", "200 mm", "k_mod", "1.1", null)]
    [InlineData("C24", "75 mm", "200 mm", "k_mod", "1.3", "k_mod 1.3, and EN 1995-1-1 Table 3.1 has 1.1 at most")]
    [InlineData("C24", "75 mm", "200 mm", "k_cr", "1.5", "k_cr 1.5, and EN 1995-1-1 6.1.7 has 1.0 at most")]
    [InlineData("C24", "75 mm", "200 mm", "gamma_M", "0.9", "gamma_M 0.9, and EN 1995-1-1 Table 2.3 has 1.0 at least")]
    [InlineData("C24", "75 mm", "200 mm", "k_h", "1.2", null)]
    [InlineData("GL24h", "75 mm", "200 mm", "k_h", "1.2", "k_h 1.2, and EN 1995-1-1 3.3 has 1.1 at most")]
    [InlineData("C24", "75 mm", "200 mm", "C_D", "2.5", null)]
    public void FactorBeyondTheTables_IsTold(string grade, string width, string depth, string factor, string value, string? told)
    {
        bool isNds = grade.StartsWith("DF-L", StringComparison.Ordinal);
        BeamDocument document = Beams.Simple with
        {
            Sections = [new() { Name = "s", Width = width, Depth = depth }],
            Materials = [new() { Name = "m", Grade = grade, Factors = [new(factor, value)] }],
            Combinations = [new() { Name = "u", Basis = isNds ? "service" : "factored", Factors = [new("live", "1")] }],
            Limits = new() { Rules = isNds ? "NDS" : "EN 1995-1-1" },
        };

        string[] found =
            [.. CalculationTests.Run(document).Messages.Where(one => one.Code == "factor_beyond_table").Select(one => one.Text)];

        Assert.Equal(
            told is null ? [] : [$"Factors of m that let more than the rules do: {told}. Each is taken as given."], found);
    }

    [Fact]
    public void FactorThatIsTaken_IsNotNoted() => Assert.Empty(FactorFindings.NotTaken(new BeamDocument
    {
        Materials = [new() { Name = "m", Factors = [new("duration", "1.25"), new("C_r", "1.15")] }],
        Limits = new() { Rules = "NDS" },
    }));
}
