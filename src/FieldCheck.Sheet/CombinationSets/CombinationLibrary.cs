using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>Finds sets of combinations: built-in, personal and site ones.</summary>
/// <param name="PersonalFolder">The person's own folder; it need not exist.</param>
/// <param name="SiteFolders">Folders named for the site; they need not exist.</param>
public sealed record CombinationLibrary(string PersonalFolder, ImmutableArray<string> SiteFolders)
{
    private const string BuiltInFolder = "presets/combinations/";
    private const string Extension = ".toml";
    private const string Pattern = "*" + Extension;

    /// <summary>All sets, by place and name, and the files that lie among them but cannot be used.</summary>
    public CombinationSearch Search()
    {
        var sets = ImmutableArray.CreateBuilder<CombinationSet>();
        var unreadable = ImmutableArray.CreateBuilder<FileProblem>();
        sets.AddRange(BuiltIn());
        Add(PersonalFolder, PresetPlace.Personal, sets, unreadable);
        foreach (string folder in SiteFolders)
        {
            Add(folder, PresetPlace.Site, sets, unreadable);
        }

        return new(sets.ToImmutable(), unreadable.ToImmutable());
    }

    /// <summary>The sets that ship with the program, by name.</summary>
    public static ImmutableArray<CombinationSet> BuiltIn() =>
    [
        .. typeof(CombinationLibrary).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(BuiltInFolder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .SelectMany(Shipped),
    ];

    private static void Add(
        string folder,
        PresetPlace place,
        ImmutableArray<CombinationSet>.Builder sets,
        ImmutableArray<FileProblem>.Builder unreadable)
    {
        if (!Directory.Exists(folder))
        {
            return;
        }

        try
        {
            foreach (string path in Directory.GetFiles(folder, Pattern).Order(StringComparer.Ordinal))
            {
                ImmutableArray<FileProblem> problems = [];
                SetDocument? set = BeamFileOnDisk.FoundBytes(path) switch
                {
                    Reading<byte[]>.Accepted bytes => SetReader.ReadBytes(path, bytes.Value, out problems),
                    Reading<byte[]>.Refused refused => Refused(path, refused.Text, out problems),
                    _ => throw new System.Diagnostics.UnreachableException(),
                };
                unreadable.AddRange(problems);
                sets.AddRange(set is null
                    ? []
                    : CombinationSet.Of(Path.GetFileNameWithoutExtension(path), place, path, set));
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            unreadable.Add(FileProblem.OfWhole(folder, DiskFault.OfFolder(problem)));
        }
    }

    private static SetDocument? Refused(string path, string text, out ImmutableArray<FileProblem> problems)
    {
        problems = [FileProblem.OfWhole(path, text)];
        return null;
    }

    private static IEnumerable<CombinationSet> Shipped(string resource)
    {
        using Stream stream = typeof(CombinationLibrary).Assembly.GetManifestResourceStream(resource)!;
        using StreamReader reader = new(stream);
        SetDocument set = SetReader.Read(resource, reader.ReadToEnd(), out ImmutableArray<FileProblem> problems)
            ?? throw new InvalidDataException(string.Join('\n', problems));
        return CombinationSet.Of(resource[BuiltInFolder.Length..^Extension.Length], PresetPlace.BuiltIn, null, set);
    }
}
