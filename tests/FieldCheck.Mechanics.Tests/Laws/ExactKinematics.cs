using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>
/// Counts the ways in which rigid parts between hinges can move, by exact elimination: no stiffness, no rounding.
/// Unknowns: one movement along, then the movements up of the left and right end of each part. The beam never
/// breaks lengthways, so one movement along is enough.
/// </summary>
internal static class ExactKinematics
{
    internal static int Freedoms(BeamModel model) => Unknowns(model) - ExactElimination.Rank(Rows(model));

    /// <summary>Freedoms that are left when something is put in to hold the beam lengthways.</summary>
    internal static int FreedomsHeldAlong(BeamModel model) =>
        Unknowns(model) - ExactElimination.Rank(Rows(model).Append(AlongRow(Unknowns(model))));

    /// <summary>Ends of the rigid parts: the beam's ends and the hinges.</summary>
    internal static ImmutableArray<double> PartEnds(BeamModel model) => [0, .. model.Hinges, model.Length];

    private static int Unknowns(BeamModel model) => 1 + (2 * (model.Hinges.Length + 1));

    private static IEnumerable<Ratio[]> Rows(BeamModel model)
    {
        ImmutableArray<double> ends = PartEnds(model);
        int unknowns = Unknowns(model);
        foreach (Support support in model.Supports)
        {
            int part = PartOf(support.Position, ends);
            if (support.Along is not Restraint.None)
            {
                yield return AlongRow(unknowns);
            }

            if (support.Across is not Restraint.None)
            {
                yield return AcrossRow(support, part, ends, unknowns);
            }

            if (support.Rotation is not Restraint.None)
            {
                yield return RotationRow(part, unknowns);
            }
        }

        for (int hinge = 0; hinge < model.Hinges.Length; hinge++)
        {
            Ratio[] row = new Ratio[unknowns];
            row[2 + (2 * hinge)] = 1;
            row[3 + (2 * hinge)] = -1;
            yield return row;
        }
    }

    private static Ratio[] AlongRow(int unknowns)
    {
        Ratio[] row = new Ratio[unknowns];
        row[0] = 1;
        return row;
    }

    private static Ratio[] AcrossRow(Support support, int part, ImmutableArray<double> ends, int unknowns)
    {
        Gradient gradient = Gradient.Of(support.SurfaceSlope);
        Ratio length = Ratio.Of(ends[part + 1]) - Ratio.Of(ends[part]);
        Ratio share = (Ratio.Of(support.Position) - Ratio.Of(ends[part])) / length;
        Ratio[] row = new Ratio[unknowns];
        row[0] = -gradient.Rise;
        row[1 + (2 * part)] = (1 - share) * gradient.Run;
        row[2 + (2 * part)] = share * gradient.Run;
        return row;
    }

    private static Ratio[] RotationRow(int part, int unknowns)
    {
        Ratio[] row = new Ratio[unknowns];
        row[1 + (2 * part)] = -1;
        row[2 + (2 * part)] = 1;
        return row;
    }

    private static int PartOf(double position, ImmutableArray<double> ends) =>
        Enumerable.Range(0, ends.Length - 1).First(part => position <= ends[part + 1]);
}
