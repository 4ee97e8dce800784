using System.Diagnostics;
using System.Net;

namespace FieldCheck.Tests.Architecture;

/// <summary>The program talks to no network, starts no other program and loads no code: there is nothing in it that could.</summary>
public sealed class ClosedProgramTests
{
    private static readonly string[] Opening =
    [
        "System.Diagnostics.Process.Start", "System.Diagnostics.ProcessStartInfo", "System.Reflection.Assembly.Load",
        "System.Runtime.Loader.AssemblyLoadContext", "System.Reflection.Emit", "System.Activator.CreateInstance",
        "System.Runtime.InteropServices.NativeLibrary",
    ];

    private static readonly string[] Files =
        ["FieldCheck.Mechanics.dll", "FieldCheck.Sheet.dll", "FieldCheck.Reporting.dll", "fieldcheck.dll"];

    public static TheoryData<string> Assemblies => [.. Files];

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Assembly_UsesNothingOfTheNetwork(string file) => Assert.Empty(OfNetwork(Uses(file)));

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Assembly_StartsAndLoadsNothing(string file) => Assert.Empty(OfOpening(Uses(file)));

    [Fact]
    public void SystemsOwnFunctions_AreThoseOfTheTerminal() => Assert.Equal(
        ["libc:poll", "libc:tcgetattr", "libc:tcsetattr"],
        Files.SelectMany(file => (IEnumerable<string>)Uses(file).Imports).Order(StringComparer.Ordinal));

    // What would be found, were it there: these tests themselves do both.
    [Fact]
    public void UsesThatAreThere_AreSeen()
    {
        Assert.Equal("::1", IPAddress.IPv6Loopback.ToString());
        Assert.NotNull(new ProcessStartInfo());

        CompiledUses tests = CompiledUses.Of(typeof(ClosedProgramTests).Assembly.Location);

        Assert.Contains("System.Net.IPAddress", OfNetwork(tests));
        Assert.Contains("System.Net.Primitives", OfNetwork(tests));
        Assert.Contains("System.Diagnostics.Process.Start", OfOpening(tests));
        Assert.Contains("System.Diagnostics.ProcessStartInfo", OfOpening(tests));
    }

    private static CompiledUses Uses(string file) => CompiledUses.Of(Path.Combine(AppContext.BaseDirectory, file));

    private static IEnumerable<string> OfNetwork(CompiledUses uses) => uses.Assemblies.Concat(uses.Types)
        .Where(name => name.StartsWith("System.Net.", StringComparison.Ordinal) || name == "System.Net"
            || name.StartsWith("System.IO.Pipes.", StringComparison.Ordinal));

    private static IEnumerable<string> OfOpening(CompiledUses uses) => uses.Types.Concat(uses.Members)
        .Where(name => Opening.Any(opening => name.StartsWith(opening, StringComparison.Ordinal)));
}
