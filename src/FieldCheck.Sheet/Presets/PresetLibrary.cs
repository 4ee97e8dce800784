using System.Collections.Immutable;
using System.Reflection;

namespace FieldCheck.Sheet.Presets;

/// <summary>Finds presets: built-in, personal and site ones.</summary>
/// <param name="PersonalFolder">The person's own folder; it need not exist.</param>
/// <param name="SiteFolders">Folders named for the site; they need not exist.</param>
public sealed record PresetLibrary(string PersonalFolder, ImmutableArray<string> SiteFolders)
{
    private const string BuiltInFolder = "presets/beams/";
    private const string Extension = ".toml";
    private const string ExampleName = "loading-platform";

    /// <summary>All presets, by place and name; files that cannot be read are left out of it.</summary>
    public ImmutableArray<Preset> Find() => Search().Presets;

    /// <summary>All presets, and the files that lie among them but cannot be read.</summary>
    public PresetSearch Search()
    {
        var presets = ImmutableArray.CreateBuilder<Preset>();
        var unreadable = ImmutableArray.CreateBuilder<FileProblem>();
        presets.AddRange(BuiltIn());
        Add(PersonalFolder, PresetPlace.Personal);
        foreach (string folder in SiteFolders)
        {
            Add(folder, PresetPlace.Site);
        }

        return new(presets.ToImmutable(), unreadable.ToImmutable());

        void Add(string folder, PresetPlace place)
        {
            PresetSearch found = PresetFolder.Search(folder, place);
            presets.AddRange(found.Presets);
            unreadable.AddRange(found.Unreadable);
        }
    }

    /// <summary>The presets that ship with the program, by name.</summary>
    public static ImmutableArray<Preset> BuiltIn() =>
    [
        .. typeof(PresetLibrary).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(BuiltInFolder, StringComparison.Ordinal))
            .Select(name => name[BuiltInFolder.Length..^Extension.Length])
            .Order(StringComparer.Ordinal)
            .Select(Shipped),
    ];

    /// <summary>The preset that opens on a first start.</summary>
    public static Preset Example() => Shipped(ExampleName);

    private static Preset Shipped(string name)
    {
        Assembly assembly = typeof(PresetLibrary).Assembly;
        using Stream stream = assembly.GetManifestResourceStream(BuiltInFolder + name + Extension)
            ?? throw new InvalidOperationException($"The preset {name} was not built into the program.");
        using StreamReader reader = new(stream);
        return new(name, PresetPlace.BuiltIn, null, new(name + Extension, reader.ReadToEnd()));
    }
}
