namespace FieldCheck.Sheet.Document.Tables;

/// <summary>What stands in a file, without the way it is written. Closed set: the cases are the nested records.</summary>
internal abstract record Content
{
    private Content()
    {
    }

    /// <summary>A text, a number or a truth value, each as its text.</summary>
    internal sealed record Cell(string Text) : Content;

    /// <summary>What stands under keys; a key where nothing stands is left out.</summary>
    internal sealed record Table(Rows<ContentEntry> Entries) : Content
    {
        /// <summary>What stands under a key, or null.</summary>
        internal Content? this[string key] => Entries.FirstOrDefault(entry => entry.Key == key)?.Content;
    }

    /// <summary>One after the other.</summary>
    internal sealed record List(Rows<Content> Items) : Content;
}
