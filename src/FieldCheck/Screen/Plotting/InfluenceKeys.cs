using FieldCheck.Mechanics.Response;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen.Plotting;

/// <summary>What is typed to choose an influence line: a support's letter, or V or M, with a place or at the reading line.</summary>
internal static class InfluenceKeys
{
    /// <summary>Takes what was typed; nothing typed leads back to the curves.</summary>
    /// <param name="open">The state with the line still open, for what does not read.</param>
    /// <param name="closed">The state with it closed.</param>
    /// <param name="text">As typed.</param>
    internal static ScreenState Take(ScreenState open, ScreenState closed, string text)
    {
        if (text.Length == 0 || ReadingLine.On(closed) is not ReadingLine line)
        {
            return closed with { Influence = null };
        }

        return Read(line, text) switch
        {
            Reading<InfluenceChoice>.Refused refused => open with { Notice = new Notice(refused.Text, Role.Warn) },
            Reading<InfluenceChoice>.Accepted chosen => Drawn(closed with { Influence = chosen.Value }),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static Reading<InfluenceChoice> Read(ReadingLine line, string text)
    {
        BuiltBeam beam = line.Beam;
        if (beam.Supports.FirstOrDefault(support =>
            support.Label.Equals(text, StringComparison.OrdinalIgnoreCase)) is NamedSupport support)
        {
            return new Reading<InfluenceChoice>.Accepted(new InfluenceChoice(support.Label));
        }

        (string letter, string place) = (text.Split(' ')[0], text[text.Split(' ')[0].Length..].Trim());
        Curve? curve = letter.ToUpperInvariant() switch
        {
            "V" => Curve.Shear,
            "M" => Curve.Moment,
            _ => null,
        };
        return curve is not Curve known
            ? new Reading<InfluenceChoice>.Refused($"{text}: type a support's letter, V or M, or M and a place, as M 1.2.", 0)
            : place.Length == 0
                ? new Reading<InfluenceChoice>.Accepted(new InfluenceChoice(null, known, line.Position))
                : PlaceKeys.Find(beam, place).Then<InfluenceChoice>(position =>
                    new Reading<InfluenceChoice>.Accepted(new InfluenceChoice(null, known, position)));
    }

    private static ScreenState Drawn(ScreenState state) => ShownInfluence.Of(state) is null
        ? state with
        {
            Influence = null,
            Notice = new Notice("It has none here: the beam does not stand with all its supports holding.", Role.Warn),
        }
        : state;
}
