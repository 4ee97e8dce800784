namespace FieldCheck.Sheet.Document.Tables;

/// <summary>How a part of the document and the content of a file follow from each other.</summary>
/// <typeparam name="T">The part of the document.</typeparam>
internal abstract class Mapping<T>(Schema schema)
{
    /// <summary>What may stand in the file.</summary>
    internal Schema Schema { get; } = schema;

    /// <summary>The content; null where nothing is to be written.</summary>
    internal abstract Content? Write(T value);

    /// <summary>The part of the document; what the schema does not know is passed over.</summary>
    internal abstract T Read(Content? content);
}
