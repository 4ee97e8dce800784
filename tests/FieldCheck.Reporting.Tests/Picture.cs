using System.Text;

namespace FieldCheck.Reporting.Tests;

/// <summary>Compares lines with a picture in Expected/; FIELDCHECK_ACCEPT=1 writes the picture instead.</summary>
internal static class Picture
{
    internal static void Matches(string name, IEnumerable<string> lines) =>
        MatchesFile(name + ".txt", string.Concat(lines.Select(line => line + "\n")));

    /// <summary>Compares a whole file.</summary>
    internal static void MatchesFile(string name, string actual)
    {
        string path = Path.Combine(Folder(), name);
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, actual, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }

        Assert.True(File.Exists(path), $"No picture {name} yet; set FIELDCHECK_ACCEPT=1 to write it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }

    private static string Folder()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        string root = folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found.");
        return Path.Combine(root, "tests", "FieldCheck.Reporting.Tests", "Expected");
    }
}
