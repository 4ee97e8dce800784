using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Rows and columns of characters to draw on. What falls outside is not drawn.</summary>
internal sealed class Canvas
{
    private const char Blank = ' ';
    private readonly char[][] _rows;

    internal Canvas(int width, int height)
    {
        Width = width;
        _rows = new char[height][];
        for (int row = 0; row < height; row++)
        {
            _rows[row] = new char[width];
            Array.Fill(_rows[row], Blank);
        }
    }

    internal int Width { get; }

    internal int Height => _rows.Length;

    internal char this[int row, int column]
    {
        get => Holds(row, column) ? _rows[row][column] : Blank;
        set
        {
            if (Holds(row, column))
            {
                _rows[row][column] = value;
            }
        }
    }

    internal bool IsBlank(int row, int column) => this[row, column] == Blank;

    internal void Write(int row, int column, string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            this[row, column + i] = text[i];
        }
    }

    /// <summary>Whether a text fits inside with one blank at each side, given what may be written over.</summary>
    internal bool HasRoom(int row, int column, int length, char over = Blank)
    {
        if (row < 0 || row >= Height || column < 0 || column + length > Width)
        {
            return false;
        }

        for (int i = column - 1; i <= column + length; i++)
        {
            if (!IsBlank(row, i) && this[row, i] != over)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The rows as text, moved right by a margin, without blanks at their ends.</summary>
    internal ImmutableArray<string> Lines(int margin = 0) =>
        [.. _rows.Select(row => (new string(Blank, margin) + new string(row)).TrimEnd())];

    private bool Holds(int row, int column) => row >= 0 && row < Height && column >= 0 && column < Width;
}
