using System.Runtime.CompilerServices;

namespace FieldCheck.Tests.Views;

/// <summary>Keeps the toolkit off the terminal that the tests were started from.</summary>
internal static class WithoutTerminal
{
    [ModuleInitializer]
    internal static void Arrange() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
}
