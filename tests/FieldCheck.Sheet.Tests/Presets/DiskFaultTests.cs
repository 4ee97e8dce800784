using System.Security;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>What is told of disks; the numbers are those of errno.h (POSIX) and winerror.h.</summary>
public sealed class DiskFaultTests
{
    private const string Full = "the disk is full. Nothing was written; a file that stood there still stands.";
    private const string Protected = "the disk is write-protected.";

    [Theory]
    [InlineData(28, false, Full)]
    [InlineData(30, false, Protected)]
    [InlineData(unchecked((int)0x80070070), true, Full)]
    [InlineData(unchecked((int)0x80070027), true, Full)]
    [InlineData(unchecked((int)0x80070013), true, Protected)]
    [InlineData(28, true, "it cannot be written: As the system says.")]
    public void Writing_IsToldByTheNumberOfTheSystem(int number, bool isWindows, string told) => Assert.Equal(
        told, DiskFault.OfWriting(new IOException("As the system says : '/tmp/.beam.toml.x1y2'", number), isWindows));

    [Theory]
    [InlineData(28, false, "the disk is full, and what was written before may be cut short.")]
    [InlineData(unchecked((int)0x80070070), true, "the disk is full, and what was written before may be cut short.")]
    [InlineData(5, false, "Input/output error")]
    public void Output_IsToldByTheNumberOfTheSystem(int number, bool isWindows, string told) =>
        Assert.Equal(told, DiskFault.OfOutput(new IOException("Input/output error", number), isWindows));

    [Fact]
    public void WhatIsForbidden_IsToldSo()
    {
        Assert.Equal("writing there is not allowed.", DiskFault.OfWriting(new UnauthorizedAccessException("Access to the path is denied")));
        Assert.Equal("writing there is not allowed.", DiskFault.OfWriting(new SecurityException()));
        Assert.Equal("reading it is not allowed.", DiskFault.OfReading(new UnauthorizedAccessException("Access to the path is denied")));
        Assert.Equal("there is no such folder.", DiskFault.OfWriting(new FileNotFoundException("Could not find file '/proc/.x.txt.1qd'")));
        Assert.Equal("it is a folder, not a file.", DiskFault.OfReading(new IOException("Is a directory", 21)));
        Assert.Equal("it cannot be read: Input/output error.", DiskFault.OfReading(new IOException("Input/output error : '/mnt/beam.toml'")));
        Assert.Equal(
            "the folder cannot be read: reading it is not allowed.",
            DiskFault.OfFolder(new UnauthorizedAccessException("Access to the path '/mnt/beams' is denied.")));
        Assert.Equal(
            "the folder cannot be read: Host is down.", DiskFault.OfFolder(new IOException("Host is down : '/mnt/beams'")));
    }
}
