namespace FieldCheck.Sheet.Document;

/// <summary>Makes <see cref="Rows{T}"/>, also from collection expressions.</summary>
public static class RowsBuilder
{
    /// <summary>Rows with the given content.</summary>
    /// <typeparam name="T">The row.</typeparam>
    /// <param name="rows">The content, in order.</param>
    public static Rows<T> Of<T>(ReadOnlySpan<T> rows) => new([.. rows]);
}
