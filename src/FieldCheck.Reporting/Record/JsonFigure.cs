namespace FieldCheck.Reporting.Record;

/// <summary>Numbers as JSON can hold them.</summary>
internal static class JsonFigure
{
    /// <summary>The number; null where it is not finite, and zero without a sign.</summary>
    internal static double? Of(double value) => double.IsFinite(value) ? value + 0.0 : null;
}
