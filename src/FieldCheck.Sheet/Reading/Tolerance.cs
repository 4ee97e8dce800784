namespace FieldCheck.Sheet.Reading;

/// <summary>How far a figure may be off and still agree. Closed set: the cases are the nested records.</summary>
public abstract record Tolerance
{
    private Tolerance()
    {
    }

    /// <summary>A part of the figure.</summary>
    /// <param name="Ratio">Of its size [–]; 0 or more.</param>
    public sealed record OfFigure(double Ratio) : Tolerance;

    /// <summary>The same force for every figure.</summary>
    /// <param name="Value">To either side [N]; 0 or more.</param>
    public sealed record OfForce(double Value) : Tolerance;
}
