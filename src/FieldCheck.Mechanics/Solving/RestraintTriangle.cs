namespace FieldCheck.Mechanics.Solving;

/// <summary>All that a rigid part's supports forbid, brought to three rows or fewer by plane rotations.</summary>
/// <remarks>
/// Rows are of unit size when they come in. The rotations keep the singular values, so however many supports a part
/// has, three rows say the same. An entry below <see cref="Nothing"/> counts as none: no length or angle on a site is
/// known that well.
/// </remarks>
internal struct RestraintTriangle
{
    /// <summary>What counts as no restraint, relative to a full one [–].</summary>
    internal const double Nothing = 1e-9;

    /// <summary>The row that ties the rise of the left end to the rest; its Left is zero when nothing does.</summary>
    internal RestraintRow First;

    /// <summary>
    /// The row that ties the rise of the right end to the shift; its Right is zero when nothing does.
    /// </summary>
    internal RestraintRow Second;

    /// <summary>The row on the shift alone; its Along is zero when nothing holds it.</summary>
    internal RestraintRow Third;

    /// <summary>Takes in a row.</summary>
    internal void Take(RestraintRow row)
    {
        if (IsSomething(row.Left))
        {
            if (First.Left == 0)
            {
                First = row;
                return;
            }

            Rotate(ref First, ref row, First.Left, row.Left);
        }

        row.Left = 0;
        if (IsSomething(row.Right))
        {
            if (Second.Right == 0)
            {
                Second = row;
                return;
            }

            Rotate(ref Second, ref row, Second.Right, row.Right);
        }

        row.Right = 0;
        Third.Along = double.Hypot(Third.Along, IsSomething(row.Along) ? row.Along : 0);
    }

    private static bool IsSomething(double entry) => Math.Abs(entry) > Nothing;

    /// <summary>Turns two rows in their plane so that the entry of the second vanishes.</summary>
    private static void Rotate(ref RestraintRow first, ref RestraintRow second, double a, double b)
    {
        double size = double.Hypot(a, b);
        double cosine = a / size;
        double sine = b / size;
        (first, second) = (
            new RestraintRow(
                cosine * first.Left + sine * second.Left,
                cosine * first.Right + sine * second.Right,
                cosine * first.Along + sine * second.Along),
            new RestraintRow(
                cosine * second.Left - sine * first.Left,
                cosine * second.Right - sine * first.Right,
                cosine * second.Along - sine * first.Along));
    }
}
