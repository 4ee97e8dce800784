using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>Finds the answer that a stated figure may be held against: never one of another basis.</summary>
/// <param name="combinations">Its answers.</param>
/// <param name="cases">Its answers to cases alone.</param>
/// <param name="extremes">What governs over patterns and rolling loads.</param>
internal sealed class StatedComparables(
    ImmutableArray<CombinationResponse> combinations, CaseAnswers cases, StatedExtremes extremes)
{
    /// <summary>The answer, or why there is none.</summary>
    /// <param name="row">The row.</param>
    /// <param name="support">The support that it is of, as an index into those of the model.</param>
    /// <param name="component">The component that it states.</param>
    internal Reading<StatedAgainst> Find(StatedEntry row, int support, ReactionComponent component)
    {
        StatedExtreme? asked = row.Extreme is null ? null : new(support, component, row.Extreme == "max");
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
                : Case(row.Case, asked),
            { Combination: not null } => Named(row.Combination, basis).Then(one => Extreme([one], asked, one.Name)),
            _ => Comparable(basis).Then(all => Extreme(all, asked, name: null)),
        };
    }

    /// <summary>The answers that a figure speaks of: an extreme, of all that it is the extreme of.</summary>
    internal ImmutableArray<StatedAgainst> Behind(StatedFigure figure) => figure.Against! switch
    {
        { Extreme: not null, IsCase: false } extreme =>
            [.. Of(extreme.Basis).Where(one => figure.Entry.Combination is null || one.Name == figure.Entry.Combination)],
        StatedAgainst one => [one],
    };

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

    /// <summary>A case whose loads may stand or not, or roll, has extremes of its own.</summary>
    private Reading<StatedAgainst> Case(string name, StatedExtreme? asked) =>
        asked is not null && extremes.Varies(name) ? extremes.OfCase(name, asked)
            : extremes.OnlyRolls(name) ? Refuse(StatedReasons.CaseOnlyRolls(name))
            : cases.Find(name);

    private Reading<StatedAgainst> Extreme(ImmutableArray<StatedAgainst> all, StatedExtreme? asked, string? name)
    {
        if (asked is null)
        {
            return all is [StatedAgainst only]
                ? new Reading<StatedAgainst>.Accepted(only)
                : Refuse(StatedReasons.WhichOne(all.Select(one => one.Name)));
        }

        if (extremes.AreMore)
        {
            return name is null ? extremes.Of(all[0].Basis, asked) : extremes.OfCombination(name, asked);
        }

        StatedAgainst governs = asked.IsMax ? all.MaxBy(Value)! : all.MinBy(Value)!;
        return new Reading<StatedAgainst>.Accepted(
            all.Length == 1 ? governs : governs with { Extreme = asked.IsMax ? "max" : "min" });

        double Value(StatedAgainst answer) => asked.Component.Value(answer.Response.Reactions[asked.Support]);
    }

    private static StatedAgainst Of(CombinationResponse answer) => new(
        answer.Combination.Name, IsCase: false, answer.Combination.Basis, answer.Combination.Factors, answer.Response);

    private static Reading<StatedAgainst>.Refused Refuse(string reason) => new(reason, 0);
}
