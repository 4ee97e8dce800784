using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Painting;

/// <summary>Writes one line of a picture, left to right, and makes it exactly as wide as it shall be.</summary>
/// <param name="width">How wide.</param>
internal sealed class LineWriter(int width)
{
    private readonly List<PictureRun> _runs = [];

    /// <summary>The columns written so far.</summary>
    internal int Column { get; private set; }

    /// <summary>A line of one text.</summary>
    /// <param name="text">The text; cut where it does not fit.</param>
    /// <param name="width">How wide the line shall be.</param>
    /// <param name="role">What it is there for.</param>
    /// <param name="target">What a click on it does.</param>
    internal static PictureLine Line(string text, int width, Role role = Role.Text, LinkTarget? target = null) =>
        new LineWriter(width).Add(text, role, target).End();

    /// <summary>Writes a text; what does not fit any more is left out.</summary>
    /// <param name="text">The text, from wherever.</param>
    /// <param name="role">What it is there for.</param>
    /// <param name="target">What a click on it does.</param>
    internal LineWriter Add(string text, Role role = Role.Text, LinkTarget? target = null)
    {
        string safe = TextColumns.Cut(TextSafety.ForTerminal(text), width - Column);
        if (safe.Length > 0)
        {
            Column += TextColumns.Of(safe);
            _runs.Add(new PictureRun(safe, role, target));
        }

        return this;
    }

    /// <summary>Writes blanks up to a column.</summary>
    /// <param name="column">The column, counted from 0.</param>
    internal LineWriter To(int column) =>
        column > Column ? Add(new string(' ', Math.Min(column, width) - Column)) : this;

    /// <summary>Writes another line, or its beginning.</summary>
    /// <param name="line">The line.</param>
    internal LineWriter Add(PictureLine line)
    {
        foreach (PictureRun run in line.Runs)
        {
            Add(run.Text, run.Role, run.Target);
        }

        return this;
    }

    /// <summary>The line, filled up with blanks.</summary>
    internal PictureLine End()
    {
        To(width);
        return new PictureLine([.. _runs]);
    }
}
