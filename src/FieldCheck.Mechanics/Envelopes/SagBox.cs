namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Sections on a stretch of an element, and places of a train in an interval between two events.</summary>
/// <param name="From">The first section, as a share of the element [–].</param>
/// <param name="Width">From it to the last, as a share of the element [–].</param>
/// <param name="Start">The first place, as a share of the interval [–].</param>
/// <param name="Way">From it to the last, as a share of the interval [–].</param>
internal readonly record struct SagBox(double From, double Width, double Start, double Way)
{
    internal SagBox Half(bool isOfSections, int half) => isOfSections
        ? this with { From = From + half * Width / 2, Width = Width / 2 }
        : this with { Start = Start + half * Way / 2, Way = Way / 2 };
}
