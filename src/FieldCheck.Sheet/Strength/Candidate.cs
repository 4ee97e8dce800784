using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Strength;

/// <summary>One section that was tried.</summary>
/// <param name="Shape">The section.</param>
/// <param name="WeightPerLength">What it weighs in the beam's material [N/m]; null: not known.</param>
/// <param name="Governing">The check that it is used up by most; null: nothing is judged.</param>
/// <param name="NotJudged">How many checks could not be judged with it.</param>
public sealed record Candidate(
    CatalogueShape Shape, double? WeightPerLength, SectionCheck? Governing, int NotJudged)
{
    /// <summary>True: it is thicker than the yield of the beam's grade holds for, and rules start from that yield.</summary>
    public bool IsTooThick { get; init; }
}
