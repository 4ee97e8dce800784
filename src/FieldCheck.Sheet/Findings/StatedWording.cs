using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>How messages speak of stated figures and of what stands beside them.</summary>
internal static class StatedWording
{
    /// <summary>As "12 kN stated as the vertical reaction of B".</summary>
    internal static string Stated(StatedFigure figure) =>
        $"{TextSafety.ForTerminal(figure.Text.Trim())} stated as the {figure.Component.Name} reaction of {figure.Label}";

    /// <summary>As "12.00 kN".</summary>
    internal static string Size(BuiltBeam beam, ReactionComponent component, double value) =>
        beam.Display.Say(Math.Abs(value), component.Kind);

    /// <summary>As "12.00 kN up"; what shows as nothing acts no way.</summary>
    internal static string Directed(BuiltBeam beam, ReactionComponent component, double value)
    {
        string size = Size(beam, component, value);
        return size == Size(beam, component, 0) ? size : $"{size} {component.Way(value)}";
    }
}
