namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>A beam on two supports by hand: moments about one, then the sum of the forces.</summary>
/// <remarks>It shares no code with the solver.</remarks>
internal static class TwoSupports
{
    /// <summary>The two reactions, up.</summary>
    /// <param name="left">Where the first support stands.</param>
    /// <param name="right">Where the second stands.</param>
    /// <param name="loads">Each load's resultant, down, and where it stands.</param>
    internal static (double Left, double Right) Reactions(
        double left, double right, params (double Force, double At)[] loads)
    {
        double aboutLeft = loads.Sum(load => load.Force * (load.At - left));
        double atRight = aboutLeft / (right - left);
        return (loads.Sum(load => load.Force) - atRight, atRight);
    }
}
