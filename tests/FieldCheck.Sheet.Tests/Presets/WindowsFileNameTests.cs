using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Microsoft, "Naming Files, Paths, and Namespaces": reserved names and characters, and what stands at the end.</summary>
public sealed class WindowsFileNameTests
{
    [Theory]
    [InlineData("con.toml", "con")]
    [InlineData("nul", "nul")]
    [InlineData("NUL.toml", "NUL")]
    [InlineData("com1.beam.toml", "com1")]
    [InlineData("Lpt9.pdf", "Lpt9")]
    [InlineData("com\u00b2.toml", "com\u00b2")]
    [InlineData("prn .toml", "prn")]
    [InlineData("aux.", "aux")]
    [InlineData("conin$.toml", "conin$")]
    public void NameOfADevice_IsOneWhateverStandsBehindIt(string name, string device)
    {
        Assert.Equal(device, WindowsFileName.DeviceOf(name));
        Assert.Equal(
            $"Windows keeps the name {device} for a device, whatever stands behind its dot.", WindowsFileName.ProblemOf(name));
    }

    [Theory]
    [InlineData("bay 3:1.toml", "Windows takes no : in the name of a file.")]
    [InlineData("what?.toml", "Windows takes no ? in the name of a file.")]
    [InlineData("a*b.toml", "Windows takes no * in the name of a file.")]
    [InlineData("a\"b.toml", "Windows takes no \" in the name of a file.")]
    [InlineData("<a>.toml", "Windows takes no < in the name of a file.")]
    [InlineData("a>.toml", "Windows takes no > in the name of a file.")]
    [InlineData("a|b.toml", "Windows takes no | in the name of a file.")]
    [InlineData("yard\\a.toml", "Windows takes no \\ in the name of a file.")]
    [InlineData("a\tb.toml", "Windows takes no control character in the name of a file.")]
    [InlineData("beam.toml.", "Windows drops a dot or a blank at the end of a name.")]
    [InlineData("beam.toml ", "Windows drops a dot or a blank at the end of a name.")]
    public void WhatWindowsDoesNotTake_IsSaid(string name, string expected) =>
        Assert.Equal(expected, WindowsFileName.ProblemOf(name));

    [Theory]
    [InlineData("bearer.toml")]
    [InlineData("con-crete.toml")]
    [InlineData("beam.con.toml")]
    [InlineData("com.toml")]
    [InlineData("com10.toml")]
    [InlineData("null.toml")]
    [InlineData(".toml")]
    [InlineData("B\u00fchne 12'-6 (2) #3 & 4, 5 %.toml")]
    public void OtherNames_AreGood(string name) => Assert.Null(WindowsFileName.ProblemOf(name));

    [Theory]
    [InlineData("con.toml")]
    [InlineData("bay 3:1.toml")]
    public void Saving_IsRefusedOnWindowsOnly(string name)
    {
        Assert.Equal(WindowsFileName.ProblemOf(name), BeamFileStore.RefusedName(Path.Combine("yard", name), isWindows: true));
        Assert.Null(BeamFileStore.RefusedName(Path.Combine("yard", name), isWindows: false));
        Assert.Null(BeamFileStore.RefusedName(Path.Combine("yard", "bearer.toml"), isWindows: true));
    }

    [Fact]
    public void Reading_DoesNotReachADevice()
    {
        string path = Path.Combine(Path.GetTempPath(), "con.toml");

        Assert.Equal(
            "con is a device, not a file.",
            Assert.IsType<Reading<byte[]>.Refused>(BeamFileOnDisk.Bytes(path, isWindows: true)).Text);
        Assert.Equal(
            "there is no such file.",
            Assert.IsType<Reading<byte[]>.Refused>(BeamFileOnDisk.Bytes(path, isWindows: false)).Text);
    }
}
