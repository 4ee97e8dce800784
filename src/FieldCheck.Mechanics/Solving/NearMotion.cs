using FieldCheck.Mechanics.Model;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// Finds the motion that a beam's supports barely resist, from the least singular value of what they forbid.
/// </summary>
internal static class NearMotion
{
    /// <summary>Smallest pivot of a sweep at which there is no need to look closer.</summary>
    private const double Plain = 0.1;

    /// <summary>Most hinges of a beam that is looked at closer; the cost grows with their third power.</summary>
    private const int MostHinges = 200;

    /// <summary>Least over greatest singular value below which the supports barely hold [–].</summary>
    private const double Barely = 1e-4;

    /// <summary>The same where a sloped surface takes part: reactions are then some 40 times the load.</summary>
    private const double BarelyOnSlope = 1e-2;

    /// <summary>Whether a beam that cannot move may be near to it.</summary>
    internal static bool IsWorthALook(BeamModel model, Kinematics kinematics) =>
        kinematics.LeastPivot < Plain && model.Hinges.Length <= MostHinges;

    /// <summary>The motion, or null where the supports hold well.</summary>
    internal static FreeMotion? Of(BeamModel model)
    {
        double[] ends = [0, .. model.Hinges, model.Length];
        bool shiftMatters = model.Supports.Any(Kinematics.MattersAlong);
        bool isSloped = model.Supports.Any(support => support.SurfaceSlope != 0);
        Matrix<double> rows = RowsOf(model, ends, shiftMatters);
        Svd<double> values = rows.Svd();
        int last = rows.ColumnCount - 1;
        if (values.S[last] > values.S[0] * (isSloped ? BarelyOnSlope : Barely))
        {
            return null;
        }

        double[] motion = values.VT.Row(last).ToArray();
        return RigidMotion.Of(
            model.Supports, ends, motion.AsSpan(0, ends.Length), shiftMatters ? motion[last] : 0);
    }

    private static Matrix<double> RowsOf(BeamModel model, double[] ends, bool shiftMatters)
    {
        int parts = ends.Length - 1;
        Matrix<double> rows = Matrix<double>.Build.Dense(3 * parts, ends.Length + (shiftMatters ? 1 : 0));
        int support = 0;
        for (int i = 0; i < parts; i++)
        {
            RestraintTriangle part = default;
            for (; support < model.Supports.Length && model.Supports[support].Position <= ends[i + 1]; support++)
            {
                Kinematics.TakeIn(ref part, model.Supports[support], ends[i], ends[i + 1]);
            }

            Set(rows, 3 * i, i, part.First);
            Set(rows, 3 * i + 1, i, part.Second);
            Set(rows, 3 * i + 2, i, part.Third);
        }

        return rows;
    }

    private static void Set(Matrix<double> rows, int row, int column, in RestraintRow restraint)
    {
        rows[row, column] = restraint.Left;
        rows[row, column + 1] = restraint.Right;
        if (restraint.Along != 0)
        {
            rows[row, rows.ColumnCount - 1] = restraint.Along;
        }
    }
}
