using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets.Toml;

namespace FieldCheck.Sheet.Presets;

/// <summary>Writes beam files.</summary>
internal static class BeamFileWriter
{
    /// <summary>The text of a new file.</summary>
    internal static string New(BeamDocument document) =>
        TomlWriter.File(
            FileContent.Schema,
            WritableContent.Of(document),
            [(BeamFileFormat.Key, $"{BeamFileFormat.Version}")]);

    /// <summary>A file with another document in it.</summary>
    internal static BeamFileText Changed(BeamFileText origin, BeamDocument document)
    {
        if (BeamFileReader.Read(origin) is not BeamFileReading.Opened opened)
        {
            return origin with { Text = New(document) };
        }

        if (opened.Document.Equals(document))
        {
            return origin;
        }

        Content.Table wanted = WritableContent.Of(document);
        string text = FileEditor.Changed(TomlReader.Read(origin.Unmarked), FileContent.Schema, wanted);
        string mark = origin.Text[..^origin.Unmarked.Length];
        BeamFileText changed = origin with { Text = mark + text };

        // What a file holds matters more than its comments: so the text is read again before it is given out.
        return Holds(changed, wanted) ? changed : origin with { Text = mark + New(document) };
    }

    /// <summary>True: reading a file gives this content.</summary>
    internal static bool Holds(BeamFileText file, Content.Table content) =>
        BeamFileReader.Read(file) is BeamFileReading.Opened opened && FileContent.Of(opened.Document).Equals(content);
}
