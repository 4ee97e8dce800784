using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Sections of plates one millimetre thick, by their slenderness.</summary>
internal static class Slender
{
    internal const double Wall = 0.001;

    /// <summary>A tube of a clear width and a clear depth over its wall.</summary>
    internal static Section Tube(double flange, double web) => Steel.Tube((flange + 2) * Wall, (web + 2) * Wall, Wall);

    /// <summary>A channel of an outstand and a clear web over their thickness.</summary>
    internal static Section Channel(double outstand, double web) =>
        Section.Of(new SectionShape.Channel((outstand + 1) * Wall, Wall, Wall, (web + 2) * Wall), false);
}
