using System.Text;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>A beam file that lies somewhere, and what comes of reading it.</summary>
/// <remarks>Its bytes are had at once, but made a beam of only when asked for: a folder may hold many.</remarks>
public sealed partial class FoundBeam
{
    private readonly Lazy<BeamFileReading> _reading;

    private FoundBeam(string path, Func<BeamFileReading> read)
    {
        Path = path;
        _reading = new Lazy<BeamFileReading>(read);
    }

    /// <summary>Where it lies.</summary>
    public string Path { get; }

    /// <summary>Its beam, or why it does not read.</summary>
    public BeamFileReading Reading => _reading.Value;

    /// <summary>Gets one file.</summary>
    /// <param name="path">Where it lies.</param>
    public static FoundBeam At(string path) => Of(path, BeamFileOnDisk.FoundBytes(path));

    /// <summary>Gets one file, or null where it is TOML of something else.</summary>
    /// <remarks>
    /// A beam file names its format before its first table. One that has spans all the same is told what it lacks, and what
    /// cannot be had at all is told why.
    /// </remarks>
    internal static FoundBeam? BeamAt(string path)
    {
        Reading<byte[]> content = BeamFileOnDisk.FoundBytes(path);
        return content is Reading<byte[]>.Accepted bytes && !IsBeam(Encoding.UTF8.GetString(bytes.Value))
            ? null
            : Of(path, content);
    }

    /// <summary>What stands for a folder that cannot be read.</summary>
    internal static FoundBeam Refused(string folder, string reason) =>
        new(folder, () => new BeamFileReading.Refused([FileProblem.OfWhole(folder, reason)]));

    private static FoundBeam Of(string path, Reading<byte[]> content) =>
        new(path, () => BeamFileOnDisk.Open(path, content));

    private static bool IsBeam(string text) =>
        Format().EnumerateMatches(text.AsSpan(0, FirstTable(text))).MoveNext() || Span().EnumerateMatches(text).MoveNext();

    private static int FirstTable(string text) =>
        text.StartsWith('[') ? 0
        : text.IndexOf("\n[", StringComparison.Ordinal) is >= 0 and int at ? at
        : text.Length;

    [GeneratedRegex(@"^\uFEFF?[ \t]*[""']?format\b", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Format();

    [GeneratedRegex(@"^[ \t]*\[\[?[ \t]*span[ \t]*\]", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Span();
}
