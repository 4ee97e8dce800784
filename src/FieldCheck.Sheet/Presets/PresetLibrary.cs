using System.Collections.Immutable;

namespace FieldCheck.Sheet.Presets;

/// <summary>Finds presets: built-in, personal and site ones.</summary>
/// <param name="PersonalFolder">The person's own folder; it need not exist.</param>
/// <param name="SiteFolders">Folders named for the site; they need not exist.</param>
public sealed record PresetLibrary(string PersonalFolder, ImmutableArray<string> SiteFolders)
{
    /// <summary>All presets, by place and name; files that cannot be read are left out of it.</summary>
    public ImmutableArray<Preset> Find() => throw new NotImplementedException();

    /// <summary>The preset that opens on a first start.</summary>
    public static Preset Example() => throw new NotImplementedException();
}
