using FieldCheck.Reporting.Record;

namespace FieldCheck.Reporting.Tests.Record;

public sealed class SpokenAnswerTests
{
    [Fact]
    public void InShort_OfABeamThatStands_IsItsReactions() =>
        Assert.StartsWith("Reactions", SpokenAnswer.InShort(Sheets.Preset("loading-platform"), 0), StringComparison.Ordinal);

    [Fact]
    public void InShort_OfTwoCombinations_SaysWhich()
    {
        Assert.StartsWith(
            "Reactions under platform full, combination 1 of 2: A ",
            SpokenAnswer.InShort(Sheets.Preset("loading-platform"), 0),
            StringComparison.Ordinal);
        Assert.StartsWith(
            "Reactions under boards only, combination 2 of 2: A ",
            SpokenAnswer.InShort(Sheets.Preset("loading-platform"), 1),
            StringComparison.Ordinal);
    }

    [Fact]
    public void InShort_OfABeamThatCanMove_SaysWhatIsFreeAndTheWayOut() =>
        Assert.Equal(
            "CAN MOVE: the whole beam turns about A: add a support, or make A fixed.",
            SpokenAnswer.InShort(Sheets.Run(Sheets.OnePin), 0));

    [Fact]
    public void Lines_OfOneCombination_LeaveTheOthersOut()
    {
        string[] one = [.. SpokenAnswer.Lines(Sheets.Preset("loading-platform"), 1)];
        string[] all = [.. SpokenAnswer.Lines(Sheets.Preset("loading-platform"), null)];

        Assert.DoesNotContain(one, line => line.Contains("platform full:", StringComparison.Ordinal));
        Assert.Contains(one, line => line.StartsWith("Combination boards only:", StringComparison.Ordinal));
        Assert.Equal(2, all.Count(line => line.StartsWith("Combination ", StringComparison.Ordinal)));
    }
}
