using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets;

/// <summary>A beam that was opened or saved, and when.</summary>
/// <param name="Name">The full path of a file, or the name of a preset that ships with the program.</param>
/// <param name="IsFile">True: it is a file.</param>
/// <param name="At">When it was opened or saved last.</param>
public sealed record OpenedBeam(string Name, bool IsFile, DateTimeOffset At)
{
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss'Z'";

    /// <summary>The keys of its row.</summary>
    internal static ImmutableArray<Field<Row>> Keys { get; } =
    [
        new("file", new Wanted.FreeText(), row => row.File, (row, text) => row with { File = text }),
        new("preset", new Wanted.FreeText(), row => row.Preset, (row, text) => row with { Preset = text }),
        new("at", new Wanted.FreeText(), row => row.At, (row, text) => row with { At = text }),
    ];

    /// <summary>The beam of a row; null where the row does not say one.</summary>
    internal static OpenedBeam? Of(Row row) => (row.File ?? row.Preset) is string name
        && DateTimeOffset.TryParseExact(
            row.At, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset at)
                ? new OpenedBeam(name, row.File is not null, at)
                : null;

    /// <summary>The row of a beam.</summary>
    internal Row ToRow() => new()
    {
        File = IsFile ? Name : null,
        Preset = IsFile ? null : Name,
        At = At.ToUniversalTime().ToString(TimeFormat, CultureInfo.InvariantCulture),
    };

    /// <summary>True: it is the same beam, opened at another time perhaps.</summary>
    internal bool IsSameAs(OpenedBeam other) => IsFile == other.IsFile && string.Equals(
        Name, other.Name, OperatingSystem.IsWindows() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal);

    /// <summary>A row of the file, as it is written there.</summary>
    internal sealed record Row
    {
        internal string? File { get; init; }

        internal string? Preset { get; init; }

        internal string? At { get; init; }
    }
}
