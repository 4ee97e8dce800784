using System.Runtime.CompilerServices;

namespace FieldCheck.Tests.Plain;

/// <summary>Where the sources lie.</summary>
internal static class Repository
{
    internal static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "../../.."));

    private static string Here([CallerFilePath] string file = "") => file;
}
