namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a search for a greater deflection came to.</summary>
/// <param name="Kind">What it came to.</param>
/// <param name="From">The first of the sections at which a greater one was met, as a share of the element [–].</param>
/// <param name="To">The last of them, as a share of the element [–].</param>
internal readonly record struct SagFinding(SagFindingKind Kind, double From, double To)
{
    internal static SagFinding Nothing => new(SagFindingKind.Nothing, 0, 0);

    internal static SagFinding Unsettled => new(SagFindingKind.Unsettled, 0, 0);
}
