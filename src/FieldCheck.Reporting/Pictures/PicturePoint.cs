namespace FieldCheck.Reporting.Pictures;

/// <summary>A point of a picture.</summary>
/// <param name="X">Distance from the left edge [pt].</param>
/// <param name="Y">Distance from the top [pt].</param>
public readonly record struct PicturePoint(double X, double Y);
