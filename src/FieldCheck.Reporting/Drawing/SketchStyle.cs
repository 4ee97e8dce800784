namespace FieldCheck.Reporting.Drawing;

/// <summary>How the beam is sketched.</summary>
/// <param name="Margin">Columns kept at the left edge, so that sketch and diagrams line up; 0 for none.</param>
/// <param name="LabelRows">How many rows the labels of the loads may take; 0 for none.</param>
/// <param name="Reading">Where the reading line stands [m from the left end]; null for none.</param>
public sealed record SketchStyle(int Margin = 0, int LabelRows = 2, double? Reading = null);
