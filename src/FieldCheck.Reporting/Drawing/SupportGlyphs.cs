using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>What supports are drawn with.</summary>
internal static class SupportGlyphs
{
    internal const char Hinge = 'O';

    /// <summary>The glyph of a support, from what it holds.</summary>
    internal static char Of(BuiltBeam beam, NamedSupport named) => named.Support switch
    {
        { Rotation: Restraint.Rigid, Across: Restraint.None } => '#',
        { Rotation: Restraint.Rigid } support => support.Position == beam.Model.Length ? ']' : '[',
        { Across: Restraint.Spring } => 'z',
        { Along: Restraint.None } => 'o',
        _ => '^',
    };
}
