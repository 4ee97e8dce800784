using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine.Batch;

/// <summary>Finds the files of a batch, one after the other as they are asked for.</summary>
internal static class BatchNames
{
    private const string Pattern = "*.toml";

    /// <summary>The files in the order named; every name gives one at least, if only to say what is wrong with it.</summary>
    /// <param name="operands">Files, folders, and "-" for names on standard input.</param>
    /// <param name="environment">Where they lie.</param>
    internal static IEnumerable<BatchName> Of(ImmutableArray<string> operands, CommandEnvironment environment) =>
        operands
            .SelectMany(operand => operand == CheckRun.StandardInput ? Listed(environment) : [new(operand)])
            .SelectMany(name => name.Refusal is null ? FilesOf(name.Name, environment) : [name]);

    private static IEnumerable<BatchName> Listed(CommandEnvironment environment)
    {
        using StreamReader reader = new(environment.OpenInput(), environment.InputEncoding);
        foreach (BatchName name in NameLines.Of(CheckRun.Named(CheckRun.StandardInput), reader))
        {
            yield return name;
        }
    }

    private static IEnumerable<BatchName> FilesOf(string name, CommandEnvironment environment)
    {
        string path = Path.GetFullPath(name, environment.CurrentFolder);
        return Directory.Exists(path) ? InFolder(name, path) : [new(name)];
    }

    private static IEnumerable<BatchName> InFolder(string name, string path)
    {
        try
        {
            // As a shell's *.toml: hidden files are left out. Sorting is why the names of one folder are all held at once.
            string[] files =
            [
                .. new DirectoryInfo(path)
                    .EnumerateFiles(Pattern, new EnumerationOptions { IgnoreInaccessible = false })
                    .Select(file => file.Name),
            ];
            Array.Sort(files, StringComparer.Ordinal);
            return files.Length > 0
                ? files.Select(file => new BatchName(
                    Path.Combine(name, file),
                    BeamFileOnDisk.HoldsNothing(Path.Combine(path, file)) ? BeamFileOnDisk.Nothing : null))
                : [new(name, $"there is no {Pattern} in this folder.")];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [new(name, DiskFault.OfFolder(fault))];
        }
    }
}
