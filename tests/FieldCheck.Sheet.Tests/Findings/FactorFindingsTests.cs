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

    [Fact]
    public void FactorThatIsTaken_IsNotNoted() => Assert.Empty(FactorFindings.NotTaken(new BeamDocument
    {
        Materials = [new() { Name = "m", Factors = [new("duration", "1.25"), new("C_r", "1.15")] }],
        Limits = new() { Rules = "NDS" },
    }));
}
