using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Each file of the folder Broken is refused with exactly the lines that stand in the file beside it.</summary>
public sealed class BrokenFilesTests
{
    public static TheoryData<string> Names() => new(TestFile.Names("Broken", "*.toml"));

    [Theory]
    [MemberData(nameof(Names))]
    public void BrokenFile_IsRefused_WithEveryProblemAtItsPlace(string name)
    {
        string file = Path.GetFileName(name);
        string expected = TestFile.Text(Path.ChangeExtension(name, ".problems"));

        BeamFileReading reading = BeamFileText.ReadBytes(file, TestFile.Bytes(name));

        BeamFileReading.Refused refused = Assert.IsType<BeamFileReading.Refused>(reading);
        Assert.Equal(expected, string.Concat(refused.Problems.Select(problem => problem + "\n")));
    }

    [Fact]
    public void Folder_HoldsFortyFilesAndMore() => Assert.InRange(TestFile.Names("Broken", "*.toml").Count(), 40, 400);
}
