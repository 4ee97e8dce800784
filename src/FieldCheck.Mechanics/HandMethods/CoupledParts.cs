using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// Parts held lengthways by sloped surfaces alone: the horizontal sum ties all of them together, and the unknowns are
/// found from a small system.
/// </summary>
internal static class CoupledParts
{
    /// <summary>Sets up two equations a part and the horizontal sum, and solves them.</summary>
    /// <returns>False: there are not as many equations as unknowns.</returns>
    internal static bool Work(HandBeam beam, IReadOnlyList<BeamPart> parts)
    {
        ImmutableArray<HandName> unknowns =
            [.. parts.SelectMany(part => part.Unknowns).Select(unknown => unknown.Name).Distinct()];
        if (unknowns.Length != 2 * parts.Count + 1)
        {
            return false;
        }

        HandWriter writer = beam.Writer;
        writer.Begin(new HandStep.Together());
        writer.Say(new HandRemark.SolvedTogether(unknowns));
        List<HandEquation> rows = [];
        foreach (BeamPart part in parts)
        {
            rows.Add(Vertical(writer, part));
            rows.Add(Moments(writer, part));
        }

        rows.Add(Horizontal(beam));
        for (int i = 0; i < rows.Count; i++)
        {
            writer.Add(new HandLine.Sets(rows[i], i + 1));
        }

        foreach ((HandName name, HandNumber number) in Substitution.Solve(writer, rows))
        {
            beam.Keep(name, number, liftsLeft: true);
        }

        return true;
    }

    private static HandEquation Vertical(HandWriter writer, BeamPart part)
    {
        writer.Say(new HandRemark.VerticalRow(writer.Place(part.From), writer.Place(part.To)));
        HandNumber down = writer.Find(
            HandFormula.Total(
                part.Actions.Where(action => action is { IsCouple: false, Number: not null }).Select(action => -action.Signed),
                HandUnit.OfForce),
            new HandActor.RightSide());
        return new HandEquation(
            [.. part.Unknowns.Where(unknown => !unknown.IsCouple).Select(unknown => HandTerm.Of(Sign(part, unknown), unknown.Name))],
            down);
    }

    private static HandEquation Moments(HandWriter writer, BeamPart part)
    {
        HandNumber about = part.Unknowns.First(unknown => !unknown.IsCouple).Place;
        writer.Say(new HandRemark.MomentsAbout(
            about,
            false,
            [.. part.Unknowns.Where(one => !one.IsCouple && one.Place.Value == about.Value).Select(one => one.Name)]));
        ImmutableArray<HandFormula> terms = MomentSum.Terms(writer, part.Actions, about);
        List<HandTerm> left = [];
        foreach (PartAction unknown in part.Unknowns)
        {
            PartAction seen = unknown with { IsPositive = IsUp(part, unknown) };
            if (MomentSum.Coefficient(writer, seen, about) is HandFormula coefficient)
            {
                left.Add(HandTerm.Of(coefficient, unknown.Name));
            }
        }

        HandNumber known = writer.Find(
            HandFormula.Total(terms.Select(term => -term), HandUnit.OfMoment), new HandActor.RightSide());
        return new HandEquation([.. left], known);
    }

    private static HandEquation Horizontal(HandBeam beam)
    {
        HandWriter writer = beam.Writer;
        writer.Say(new HandRemark.HorizontalRow());
        List<HandTerm> left = [];
        List<HandFormula> found = [];
        for (int i = 0; i < beam.Model.Supports.Length; i++)
        {
            if (beam.IsSloped(i))
            {
                (HandNumber sine, HandNumber cosine, bool risesRight) = AlongStatics.SlopeOf(beam, i);
                HandFormula tangent = writer.Find(
                    (HandFormula)sine / cosine, new HandName(HandRole.SurfaceTangent, i));
                if (beam.Vertical[i] is HandNumber vertical)
                {
                    found.Add(risesRight ? -(tangent * vertical) : tangent * vertical);
                }
                else
                {
                    left.Add(HandTerm.Of(risesRight ? -tangent : tangent, new HandName(HandRole.Vertical, i)));
                }
            }
        }

        HandNumber known = writer.Find(
            HandFormula.Total(
                beam.Loads.Forces.Where(force => !force.IsAcross).Select(force => force.Signed)
                    .Concat(found)
                    .Select(term => -term),
                HandUnit.OfForce),
            new HandActor.RightSide());
        return new HandEquation([.. left], known);
    }

    // A hinge force between two parts lifts the left one and presses the right one down.
    private static bool IsUp(BeamPart part, PartAction unknown) =>
        unknown.Name.Role != HandRole.HingeForce || unknown.Name.Index == part.Index;

    private static HandFormula Sign(BeamPart part, PartAction unknown) =>
        IsUp(part, unknown) ? HandNumber.One : -(HandFormula)HandNumber.One;
}
