using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Document;

/// <summary>Gives and takes the cells of a beam by key path: "title", "load[2].at", "section.bearer.width".</summary>
/// <remarks>
/// Figures and list entries are cells too: "combination[1].factors.dead", "rolling[1].axles[2].force", "ask[1]".
/// A name that is no bare key of TOML is quoted; <see cref="KeyPath"/> writes and reads such paths.
/// </remarks>
public static class DocumentCells
{
    /// <summary>Finds a cell.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="key">The key path.</param>
    /// <returns>The cell, also where nothing stands in it; null where the path names no cell of this beam.</returns>
    public static DocumentCell? Find(BeamDocument document, string key) => KeyPath.Parse(key) is KeyPath path
        ? CellSearch.Find(FileContent.Schema, FileContent.Of(document), path)
        : null;

    /// <summary>The text of a cell.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="key">The key path.</param>
    /// <returns>The text, or null where nothing stands or the path names no cell.</returns>
    public static string? Get(BeamDocument document, string key) => Find(document, key)?.Text;

    /// <summary>The beam with another text in a cell.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="key">The key path. Rows and named tables must stand already; a figure or a single table need not.</param>
    /// <param name="text">The text, or null to clear the cell; a list entry or figure that is cleared goes.</param>
    /// <returns>The changed beam, or null where the path names no cell of this beam.</returns>
    public static BeamDocument? Set(BeamDocument document, string key, string? text) =>
        KeyPath.Parse(key) is KeyPath path
        && CellChange.TryMake(FileContent.Schema, FileContent.Of(document), path, text, out Content? changed)
            ? FileContent.Read(changed!)
            : null;

    /// <summary>Every cell in which something stands, in the order of a new file.</summary>
    /// <param name="document">The beam.</param>
    public static IEnumerable<DocumentCell> All(BeamDocument document) =>
        CellSearch.All(FileContent.Schema, FileContent.Of(document), KeyPath.Top);
}
