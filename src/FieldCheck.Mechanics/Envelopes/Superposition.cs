using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Answers to every part of the loads alone, from which the answer to any situation adds up.</summary>
internal sealed class Superposition
{
    private readonly PartAnswers _answers;
    private readonly BeamModel _model;
    private readonly int[] _optionalFrom;
    private readonly int[] _optionalOn;

    private Superposition(
        EnvelopeProblem problem,
        BeamModel model,
        Bays bays,
        ImmutableArray<LoadPart> parts,
        PartAnswers answers,
        BeamNodes? nodes)
    {
        _model = model;
        Problem = problem;
        Bays = bays;
        Parts = parts;
        _answers = answers;
        Traffic = nodes is null
            ? null
            : new Traffic(this, new ForceInfluence(nodes, problem.Model.Supports.Length, answers.Starts));
        Optional = [.. Enumerable.Range(0, parts.Length).Where(part => !parts[part].StandsAlways)];
        (_optionalFrom, _optionalOn) = OptionalByPiece();
    }

    internal EnvelopeProblem Problem { get; }

    internal Bays Bays { get; }

    internal ImmutableArray<LoadPart> Parts { get; }

    /// <summary>Indices of the parts that need not stand.</summary>
    internal ImmutableArray<int> Optional { get; }

    /// <summary>The pieces of settlements and imposed rotations alone, and by them the grid of all parts.</summary>
    internal ImmutableArray<Piece> Imposed => _answers.Imposed.Pieces;

    /// <summary>The reactions by settlements and imposed rotations alone.</summary>
    internal ImmutableArray<Reaction> ImposedReactions => _answers.Imposed.Reactions;

    /// <summary>The rolling loads that some combination takes; null: none.</summary>
    internal Traffic? Traffic { get; }

    /// <summary>Solves for the parts with one factorisation; null where the beam does not stand.</summary>
    internal static Superposition? Of(EnvelopeProblem problem, BeamSolver solver)
    {
        Bays bays = Bays.Of(problem.Model);
        ImmutableArray<LoadPart> parts = LoadPart.Of(problem, bays);
        BeamNodes? nodes = HasTraffic(problem) ? new BeamNodes(problem.Model) : null;
        BeamModel model = problem.Model with
        {
            Cases = [.. parts.Select(part => new LoadCase("", part.Loads)), .. nodes?.UnitCases() ?? []],
            Combinations = [],
        };
        return solver.SolveParts(model, parts.Length) is PartAnswers answers
            ? new Superposition(problem, model, bays, parts, answers, nodes)
            : null;
    }

    internal PartAnswer AnswerTo(int part) => _answers.Cases[part];

    /// <summary>The parts that need not stand and that reach a piece.</summary>
    internal ReadOnlySpan<int> OptionalOn(int piece) =>
        _optionalOn.AsSpan(_optionalFrom[piece].._optionalFrom[piece + 1]);

    /// <summary>A figure of a reaction by settlements and imposed rotations alone, or by a part alone.</summary>
    internal double Reaction(int part, int support, ReactionComponent component)
    {
        Reaction reaction =
            part < 0 ? _answers.Imposed.Reactions[support] : _answers.Cases[part].ReactionOf(support);
        return component switch
        {
            ReactionComponent.Horizontal => reaction.Horizontal,
            ReactionComponent.Vertical => reaction.Vertical,
            _ => reaction.Moment,
        };
    }

    /// <summary>What a combination multiplies a part by.</summary>
    internal double Factor(int combination, int part) =>
        Problem.Model.Combinations[combination].Factors[Parts[part].Case];

    /// <summary>The situation in which, of the parts that need not stand, those that are asked for stand.</summary>
    internal Situation Situation(int combination, Func<int, bool> stands, RollingPlace? rolling)
    {
        LoadedBays?[] patterns = new LoadedBays?[Problem.Model.Cases.Length];
        foreach (int pattern in Problem.PatternCases)
        {
            patterns[pattern] = Bays.Loaded(
                from part in Optional
                where Parts[part].Case == pattern && stands(part)
                select Parts[part].Stretch);
        }

        return new Situation(combination, [.. patterns], rolling);
    }

    /// <summary>The beam, cut alike, with nothing imposed but that the rest of one support is raised by one.</summary>
    internal BeamModel RaisedAt(int support) => _model with
    {
        Supports =
        [
            .. _model.Supports.Select((one, i) => one with { Settlement = i == support ? -1 : 0, ImposedRotation = 0 }),
        ],
    };

    private (int[] From, int[] On) OptionalByPiece()
    {
        int[] from = new int[Imposed.Length + 1];
        foreach (int part in Optional)
        {
            PartAnswer answer = _answers.Cases[part];
            for (int i = 0; i < answer.Pieces.Length; i++)
            {
                from[answer.FirstPiece + i + 1]++;
            }
        }

        for (int piece = 0; piece < Imposed.Length; piece++)
        {
            from[piece + 1] += from[piece];
        }

        int[] on = new int[from[^1]];
        int[] next = from[..^1];
        foreach (int part in Optional)
        {
            PartAnswer answer = _answers.Cases[part];
            for (int i = 0; i < answer.Pieces.Length; i++)
            {
                on[next[answer.FirstPiece + i]++] = part;
            }
        }

        return (from, on);
    }

    private static bool HasTraffic(EnvelopeProblem problem) => problem.Rolling.Any(rolling =>
        problem.Model.Combinations.Any(combination => combination.Factors[rolling.Case] != 0));
}
