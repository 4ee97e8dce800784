using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace FieldCheck.Sheet.Document;

/// <summary>Immutable rows that compare by what they hold, so that two documents typed alike are equal.</summary>
/// <typeparam name="T">The row.</typeparam>
[CollectionBuilder(typeof(RowsBuilder), nameof(RowsBuilder.Of))]
public sealed class Rows<T> : IReadOnlyList<T>, IEquatable<Rows<T>>
{
    private readonly ImmutableArray<T> _rows;

    internal Rows(ImmutableArray<T> rows)
    {
        _rows = rows;
    }

    /// <summary>How many rows there are.</summary>
    public int Count => _rows.Length;

    /// <summary>A row, counted from 0.</summary>
    /// <param name="index">Which.</param>
    public T this[int index] => _rows[index];

    /// <summary>The rows with one more at the end.</summary>
    /// <param name="row">The new row.</param>
    public Rows<T> Add(T row) => new(_rows.Add(row));

    /// <summary>The rows with one more in between.</summary>
    /// <param name="index">Where the new row will stand, 0 to <see cref="Count"/>.</param>
    /// <param name="row">The new row.</param>
    public Rows<T> Insert(int index, T row) => new(_rows.Insert(index, row));

    /// <summary>The rows without one of them.</summary>
    /// <param name="index">Which.</param>
    public Rows<T> RemoveAt(int index) => new(_rows.RemoveAt(index));

    /// <summary>The rows with one of them replaced.</summary>
    /// <param name="index">Which.</param>
    /// <param name="row">What stands there now.</param>
    public Rows<T> SetItem(int index, T row) => new(_rows.SetItem(index, row));

    /// <inheritdoc/>
    public bool Equals(Rows<T>? other) => other is not null && _rows.SequenceEqual(other._rows);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Rows<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (T row in _rows)
        {
            hash.Add(row);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_rows).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
