namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Files beside these tests, read from the source tree.</summary>
internal static class TestFile
{
    private static readonly string Folder = Path.Combine(Root(), "tests", "FieldCheck.Sheet.Tests", "Presets");

    internal static byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(Folder, name));

    internal static string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));

    internal static IEnumerable<string> Names(string folder, string pattern) =>
        Directory.GetFiles(Path.Combine(Folder, folder), pattern)
            .Select(path => folder + "/" + Path.GetFileName(path))
            .Order(StringComparer.Ordinal);

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found");
    }
}
