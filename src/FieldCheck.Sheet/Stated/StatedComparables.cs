using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>Finds the answer that a stated figure may be held against: never one of another basis.</summary>
/// <param name="document">The beam as typed.</param>
/// <param name="combinations">Its answers.</param>
/// <param name="cases">Its answers to cases alone.</param>
internal sealed class StatedComparables(
    BeamDocument document, ImmutableArray<CombinationResponse> combinations, CaseAnswers cases)
{
    /// <summary>The answer, or why there is none.</summary>
    /// <param name="row">The row.</param>
    /// <param name="value">The component that it states, of an answer [N or N·m].</param>
    internal Reading<StatedAgainst> Find(StatedEntry row, Func<StatedAgainst, double> value)
    {
        if (row.Basis == "unknown")
        {
            return Refuse(StatedReasons.BasisUnknown);
        }

        CombinationBasis? basis = row.Basis switch
        {
            "service" => CombinationBasis.Service,
            "factored" => CombinationBasis.Factored,
            _ => null,
        };
        return row switch
        {
            { Case: not null } => basis is CombinationBasis.Factored
                ? Refuse(StatedReasons.CaseIsNotFactored)
                : cases.Find(row.Case),
            { Combination: not null } => Named(row.Combination, basis).Then(one => Extreme(row, [one], value)),
            _ => Comparable(basis).Then(all => Extreme(row, all, value)),
        };
    }

    /// <summary>Every combination of a basis, as what a figure is held against.</summary>
    internal ImmutableArray<StatedAgainst> Of(CombinationBasis basis) =>
        [.. combinations.Where(answer => answer.Combination.Basis == basis).Select(Of)];

    private Reading<StatedAgainst> Named(string name, CombinationBasis? basis)
    {
        StatedAgainst found = Of(combinations.First(answer => answer.Combination.Name == name));
        return basis is null || basis == found.Basis
            ? new Reading<StatedAgainst>.Accepted(found)
            : Refuse(StatedReasons.BasisContradicts(found.Basis, name));
    }

    private Reading<ImmutableArray<StatedAgainst>> Comparable(CombinationBasis? written)
    {
        CombinationBasis[] bases = [.. combinations.Select(answer => answer.Combination.Basis).Distinct()];
        if (written is null && bases.Length > 1)
        {
            return new Reading<ImmutableArray<StatedAgainst>>.Refused(StatedReasons.BasisNotWritten, 0);
        }

        CombinationBasis basis = written ?? bases[0];
        return Of(basis) is { IsEmpty: false } all
            ? new Reading<ImmutableArray<StatedAgainst>>.Accepted(all)
            : new Reading<ImmutableArray<StatedAgainst>>.Refused(StatedReasons.NoneOfBasis(basis), 0);
    }

    private Reading<StatedAgainst> Extreme(
        StatedEntry row, ImmutableArray<StatedAgainst> all, Func<StatedAgainst, double> value)
    {
        if (row.Extreme is null)
        {
            return all is [StatedAgainst only]
                ? new Reading<StatedAgainst>.Accepted(only)
                : Refuse(StatedReasons.WhichOne(all.Select(one => one.Name)));
        }

        if (document.Patterns.Count > 0 || document.Rolling.Count > 0)
        {
            return Refuse(StatedReasons.EnvelopeIsNotWhole);
        }

        StatedAgainst governs = row.Extreme == "max" ? all.MaxBy(value)! : all.MinBy(value)!;
        return new Reading<StatedAgainst>.Accepted(all.Length == 1 ? governs : governs with { Extreme = row.Extreme });
    }

    private static StatedAgainst Of(CombinationResponse answer) => new(
        answer.Combination.Name, IsCase: false, answer.Combination.Basis, answer.Combination.Factors, answer.Response);

    private static Reading<StatedAgainst>.Refused Refuse(string reason) => new(reason, 0);
}
