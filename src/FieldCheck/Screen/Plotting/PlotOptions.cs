using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Screen.Plotting;

/// <summary>How a person wants the curves drawn.</summary>
internal sealed record PlotOptions
{
    /// <summary>The curves there are, from the top of the view down.</summary>
    internal static Rows<Curve> All { get; } = [Curve.Shear, Curve.Moment, Curve.Deflection, Curve.Axial];

    /// <summary>The curves of the Plots view, in the order of <see cref="All"/>.</summary>
    internal Rows<Curve> Curves { get; init; } = All;

    /// <summary>True: filled between zero line and curve; false: outlined.</summary>
    internal bool IsFilled { get; init; } = true;

    /// <summary>True: sagging moments are drawn below the zero line.</summary>
    internal bool IsSagDown { get; init; }

    /// <summary>True: the envelope is drawn round the curve of the combination shown.</summary>
    internal bool HasEnvelope { get; init; } = true;

    /// <summary>What they are drawn with.</summary>
    internal PlotGlyphs Glyphs { get; init; }

    /// <summary>The options with half blocks for ASCII, or the other way round.</summary>
    internal PlotOptions WithOtherGlyphs() => this with
    {
        Glyphs = Glyphs == PlotGlyphs.Ascii ? PlotGlyphs.HalfBlocks : PlotGlyphs.Ascii,
    };

    /// <summary>The options with a curve shown that was not, or the other way round; the last one stays.</summary>
    /// <param name="curve">The curve.</param>
    internal PlotOptions Toggled(Curve curve)
    {
        Rows<Curve> toggled = [.. All.Where(known => Curves.Contains(known) != (known == curve))];
        return toggled.Count == 0 ? this : this with { Curves = toggled };
    }
}
