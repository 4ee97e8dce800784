using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The rolling loads of a problem, and what they add to standing loads where answers add up.</summary>
internal sealed class Traffic
{
    /// <summary>Boxes that proving a deflection may look at, so that every search ends.</summary>
    private const int LeastBoxes = 50_000;

    private const int BoxesForEach = 1000;

    /// <summary>
    /// What trains do to so many elements is kept while deflections are looked for; of more it is found again where it is
    /// asked for, for it takes much memory.
    /// </summary>
    private const int MostKept = 64;

    private readonly Superposition _sum;
    private readonly Range[] _pieces;

    internal Traffic(Superposition sum, ForceInfluence influence)
    {
        _sum = sum;
        Influence = influence;
        Trains = Train.Of(sum.Problem, influence.Nodes);
        ImmutableArray<Piece> pieces = sum.Imposed;
        _pieces = new Range[influence.Nodes.ElementCount];
        int piece = 0;
        for (int e = 0; e < _pieces.Length; e++)
        {
            int first = piece;
            while (piece < pieces.Length && pieces[piece].To <= influence.Nodes.At(e + 1))
            {
                piece++;
            }

            _pieces[e] = first..piece;
        }
    }

    internal ForceInfluence Influence { get; }

    internal Train[] Trains { get; }

    /// <summary>What a combination multiplies the forces of a train by.</summary>
    internal double Factor(int combination, Train train) =>
        _sum.Problem.Model.Combinations[combination].Factors[train.Case];

    /// <summary>Takes in the greatest and the least that standing loads and one train give together on some pieces.</summary>
    /// <returns>Whether it is settled that nothing is more.</returns>
    internal bool Take(
        StandingCurve[] greatest,
        StandingCurve[] least,
        Range pieces,
        ref Leader<Worst> leader,
        ref Leader<Worst> leastLeader)
    {
        Curve curve = greatest[0].Parts.Curve;
        bool keepsRows = Trains.Length * _pieces.Length <= MostKept;
        List<(RollingSag Sag, Train Train, Range Pieces)> sags = [];
        SagBudget budget = new(LeastBoxes + BoxesForEach * Trains.Length * _pieces.Length);
        foreach (Train train in Trains.Where(train => greatest.Any(one => Factor(one.Combination, train) != 0)))
        {
            for (int e = 0; e < _pieces.Length; e++)
            {
                if (_pieces[e].Start.Value < pieces.Start.Value || _pieces[e].End.Value > pieces.End.Value)
                {
                    continue;
                }

                TrainElement element = new(train, Influence, e);
                if (curve == Curve.Deflection)
                {
                    sags.Add((new RollingSag(element, keepsRows, budget), train, _pieces[e]));
                    continue;
                }

                RollingForces forces = new(element, curve);
                TakeForces(greatest, forces, train, _pieces[e], ref leader);
                TakeForces(least, forces, train, _pieces[e], ref leastLeader);
            }
        }

        // All steps first, so that as little as may be is polished, and all of that before anything is proved.
        bool isSettled = true;
        for (int round = 0; round < 3; round++)
        {
            foreach ((RollingSag sag, Train train, Range on) in sags)
            {
                isSettled &= TakeSag(greatest, sag, train, on, round, ref leader);
                isSettled &= TakeSag(least, sag, train, on, round, ref leastLeader);
            }
        }

        return isSettled;
    }

    /// <summary>The trains on the element that a piece is in.</summary>
    internal TrainElement[] On(int piece)
    {
        int element = Array.FindIndex(_pieces, pieces => piece < pieces.End.Value);
        return [.. Trains.Select(train => new TrainElement(train, Influence, element))];
    }

    private void TakeForces(
        StandingCurve[] curves, RollingForces forces, Train train, Range pieces, ref Leader<Worst> leader)
    {
        foreach (StandingCurve curve in curves)
        {
            double scale = curve.Sense * Factor(curve.Combination, train);
            if (scale != 0)
            {
                forces.Take(curve, pieces, scale, ref leader);
            }
        }
    }

    private bool TakeSag(
        StandingCurve[] curves, RollingSag sag, Train train, Range pieces, int round, ref Leader<Worst> leader)
    {
        bool isSettled = true;
        foreach (StandingCurve curve in curves)
        {
            double scale = curve.Sense * Factor(curve.Combination, train);
            if (scale != 0 && round == 0)
            {
                sag.Take(curve, pieces, scale, ref leader);
            }
            else if (scale != 0 && round == 1)
            {
                sag.Polish(curve, pieces, scale, ref leader);
            }
            else if (scale != 0)
            {
                isSettled &= sag.Prove(curve, pieces, scale, ref leader);
            }
        }

        return isSettled;
    }
}
