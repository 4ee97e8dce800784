using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>A beam, and the figures of somebody who made one slip with it.</summary>
/// <param name="Beam">The beam as it is.</param>
/// <param name="Mistaken">The beam as it was taken; null: it was taken as it is.</param>
/// <param name="Is">Whether a slip that is told is this one.</param>
internal sealed record SlipDraw(SlipBeam Beam, SlipBeam? Mistaken, Func<Slip, bool> Is)
{
    /// <summary>What was done to the figures besides.</summary>
    internal Func<double[], double[]> Figures { get; init; } = figures => figures;

    /// <summary>A slip that this one may be told as, although its figures are a little different.</summary>
    internal Slip? AsGoodAs { get; init; }
}

/// <summary>A kind of slip, and how to draw one.</summary>
/// <param name="Name">What it is called in the table.</param>
/// <param name="Draw">Draws one on a beam; null: this beam does not lend itself to it.</param>
internal sealed record SlipKind(string Name, Func<Random, SlipBeam, SlipDraw?> Draw)
{
    /// <summary>Fewest spans of the beams that it is drawn on.</summary>
    internal int LeastSpans { get; init; } = 1;

    public override string ToString() => Name;
}
