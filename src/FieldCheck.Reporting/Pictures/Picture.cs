using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pictures;

/// <summary>A line drawing without a form: what SVG and PDF draw alike. Black on white, no colour says anything.</summary>
/// <param name="Width">Its width [pt, 1/72 in].</param>
/// <param name="Height">Its height [pt].</param>
/// <param name="Marks">What it is made of, drawn one over the other; x runs right from the left edge, y down from the top.</param>
public sealed record Picture(double Width, double Height, ImmutableArray<PictureMark> Marks);
