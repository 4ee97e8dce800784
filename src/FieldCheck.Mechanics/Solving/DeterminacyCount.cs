using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Counts unknown reactions against equations.</summary>
internal static class DeterminacyCount
{
    /// <summary>Counts with every support touching; springs count as unknown reactions.</summary>
    internal static Determinacy Of(BeamModel model)
    {
        int along = -1;
        int across = -2 - model.Hinges.Length;
        bool isCoupled = false;
        foreach (Support support in model.Supports)
        {
            along += support.Along is Restraint.None ? 0 : 1;
            across += support.Across is Restraint.None ? 0 : 1;
            across += support.Rotation is Restraint.None ? 0 : 1;
            isCoupled |= support.SurfaceSlope != 0;
        }

        int total = along + across;

        // With nothing else to hold it lengthways, one sloped surface that is not needed across does so.
        return isCoupled && along < 0 && across > 0
            ? new Determinacy(total, along + 1, across - 1, isCoupled)
            : new Determinacy(total, along, across, isCoupled);
    }
}
