namespace FieldCheck.Mechanics.HandMethods;

/// <summary>An unknown, what is known already, or the sum of both.</summary>
/// <param name="Unknown">The unknown; null: all of it is known.</param>
/// <param name="Known">What is known; null: nothing beside the unknown, or nil.</param>
internal sealed record HandQuantity(HandName? Unknown, HandFormula? Known)
{
    internal static HandQuantity Nil { get; } = new(null, null);

    internal bool IsNil => Unknown is null && Known is null;

    internal static HandQuantity Of(HandName unknown) => new(unknown, null);

    internal static HandQuantity Of(HandNumber? known) => known is null ? Nil : new(null, known);

    /// <summary>The quantity once its unknown is found; null: nil.</summary>
    internal HandFormula? With(IReadOnlyDictionary<HandName, HandNumber> found) => (Unknown, Known) switch
    {
        (HandName unknown, null) => found[unknown],
        (HandName unknown, HandFormula known) => (HandFormula)found[unknown] + known,
        _ => Known,
    };
}
