using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Stated;

/// <summary>Figures that are right, however coarsely they are written, are never called wrong.</summary>
public sealed class RightFiguresTests
{
    private static readonly int[] Digits = [1, 2, 3, 5, 9];

    public static TheoryData<string> Presets() => new(PresetLibrary.BuiltIn().Select(preset => preset.Name));

    [Theory]
    [MemberData(nameof(Presets))]
    public void EveryReactionOfAPreset_RoundedAndStated_Agrees(string name)
    {
        BeamDocument preset = Document(name) with { Stated = [] };
        Calculation bare = CalculationTests.Run(preset);
        foreach (int digits in Digits)
        {
            Calculation calculation = CalculationTests.Run(preset with
            {
                Stated = [.. Answers(bare).SelectMany(answer => Rows(bare.Beam!, answer, digits))],
            });

            Assert.NotEmpty(calculation.Stated);
            Assert.All(calculation.Stated, figure => Assert.Equal(ReactionVerdict.Agrees, figure.Verdict));
            Assert.Empty(calculation.Unstated);
            Assert.Equal(Answers(bare).Length, calculation.StatedBalances.Length);
            Assert.All(calculation.StatedBalances, stated => Assert.True(stated.Balance.Closes));
            Assert.Equal(bare.Messages.AsEnumerable(), calculation.Messages.Where(message => !IsDoubt(message)));
        }
    }

    // A figure of one digit, or one beside which something rolls, holds and yet calls for a word.
    private static bool IsDoubt(Message message) => message.Code is MessageCodes.StatedRough or MessageCodes.StatedNotWorst;

    private static IEnumerable<StatedEntry> Rows(BuiltBeam beam, CombinationResponse answer, int digits) =>
        beam.Supports.Zip(answer.Response.Reactions, (support, reaction) => new StatedEntry
        {
            Support = support.Label,
            Vertical = Written(reaction.Vertical, "N", digits),
            Horizontal = Written(reaction.Horizontal, "N", digits),
            Moment = Written(reaction.Moment, "Nm", digits),
            Combination = answer.Combination.Name,
            Tolerance = "0 %",
        });

    private static string Written(double value, string unit, int digits) =>
        value.ToString($"0.{new string('0', digits - 1)}e0", CultureInfo.InvariantCulture) + " " + unit;

    private static ImmutableArray<CombinationResponse> Answers(Calculation calculation) =>
        Assert.IsType<BeamOutcome.Stands>(calculation.Outcome).Combinations;

    private static BeamDocument Document(string name)
    {
        BeamFileText text = PresetLibrary.BuiltIn().Single(preset => preset.Name == name).Text;
        return Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text)).Document;
    }
}
