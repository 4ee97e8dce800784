using System.Collections.Immutable;
using System.Text;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>Remembers in a file which beams were opened or saved, and when.</summary>
/// <remarks>
/// The file is read again before each writing, so of two programs that write at one moment one loses its newest entry,
/// no more. A broken file counts as empty and is written anew.
/// </remarks>
public static class OpenedBeams
{
    /// <summary>How many beams are remembered at most, the latest.</summary>
    public const int Most = 200;

    private const string Key = "opened";
    private const string Comment = "# Beams opened or saved, the latest first. Safe to delete.";

    private static readonly TableRowsMapping<OpenedBeam.Row> Rows = new(new TableMapping<OpenedBeam.Row>(
        () => new OpenedBeam.Row(), [.. OpenedBeam.Keys.Select(key => Part<OpenedBeam.Row>.Of(key))]));

    /// <summary>The beams remembered, the latest first; none where the file is missing or broken.</summary>
    /// <param name="path">The file.</param>
    public static ImmutableArray<OpenedBeam> Read(string path)
    {
        if (BeamFileOnDisk.FoundBytes(path) is not Reading<byte[]>.Accepted bytes
            || TomlReader.Read(Encoding.UTF8.GetString(bytes.Value)) is not { IsSound: true } file)
        {
            return [];
        }

        Content? rows = file.Root[Key] is TomlEntry entry ? ContentBinder.Of(Rows.Schema, entry.Node) : null;
        return Latest(Rows.Read(rows).Select(OpenedBeam.Of).OfType<OpenedBeam>());
    }

    /// <summary>Remembers a beam, in place of when it was opened before.</summary>
    /// <param name="path">The file; it and its folder are made when they are missing.</param>
    /// <param name="beam">The beam.</param>
    /// <returns>False: the disk or the system refused, and the file stands as it stood.</returns>
    public static bool Remember(string path, OpenedBeam beam)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ImmutableArray<OpenedBeam> latest = Latest([beam, .. Read(path)]);
        Content? rows = Rows.Write([.. latest.Select(opened => opened.ToRow())]);
        IEnumerable<string> blocks = TomlWriter.Blocks(new SchemaKey(Key, Rows.Schema), rows);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            WholeFile.Write(LinkedFile.At(path), Encoding.UTF8.GetBytes($"{Comment}\n\n{string.Join('\n', blocks)}"));
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static ImmutableArray<OpenedBeam> Latest(IEnumerable<OpenedBeam> beams)
    {
        List<OpenedBeam> latest = [];
        foreach (OpenedBeam beam in beams.OrderByDescending(beam => beam.At))
        {
            if (latest.Count < Most && !latest.Exists(beam.IsSameAs))
            {
                latest.Add(beam);
            }
        }

        return [.. latest];
    }
}
