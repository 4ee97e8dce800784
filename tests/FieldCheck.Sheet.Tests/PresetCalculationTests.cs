using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests;

/// <summary>What ships must be usable as it stands.</summary>
public sealed class PresetCalculationTests
{
    public static TheoryData<string> Names => [.. PresetLibrary.BuiltIn().Select(preset => preset.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Preset_StandsAndBalances(string name)
    {
        Preset preset = PresetLibrary.BuiltIn().Single(preset => preset.Name == name);
        var opened = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(name, preset.Text.Text));
        Calculation calculation = CalculationTests.Run(opened.Document);

        Assert.Empty(calculation.Problems);
        var stands = Assert.IsType<BeamOutcome.Stands>(calculation.Outcome);
        Assert.All(stands.Combinations, answer => Assert.InRange(answer.Response.Proof.Residual, 0, 1e-9));
    }
}
