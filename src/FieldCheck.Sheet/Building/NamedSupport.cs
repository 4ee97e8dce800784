using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>A support of the model and what it is called.</summary>
/// <param name="Support">The support.</param>
/// <param name="Label">Its label, given or by default.</param>
/// <param name="Row">Its row on the sheet, counted from 0.</param>
/// <param name="Joint">The joint it stands at, 0 for the left end; null inside a span.</param>
/// <param name="Kind">Its kind as the file writes it: pin, roller, fixed, guide or spring.</param>
/// <param name="ActsAsWritten">True: the sheet says which senses of reaction it can give.</param>
public sealed record NamedSupport(Support Support, string Label, int Row, int? Joint, string Kind, bool ActsAsWritten)
{
    /// <summary>True: it acts one way only, and the beam has to come to it before it does.</summary>
    public bool HasGap => Support switch
    {
        { Action: SupportAction.PushesOnly } => Support.Settlement > 0,
        { Action: SupportAction.HoldsDownOnly } => Support.Settlement < 0,
        _ => false,
    };
}
