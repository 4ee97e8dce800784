namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Pages of the repository that tests read, and write with FIELDCHECK_ACCEPT=1.</summary>
internal static class RepositoryFile
{
    internal static bool IsAccepting => Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1";

    internal static string Root { get; } = FindRoot();

    internal static string Read(string name) => File.ReadAllText(Path.Combine(Root, name)).ReplaceLineEndings("\n");

    internal static void Write(string name, string text) => File.WriteAllText(Path.Combine(Root, name), text);

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found");
    }
}
