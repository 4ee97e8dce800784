namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Axial force from left to right: each force to the right takes from it.</summary>
internal static class AxialForces
{
    /// <summary>Writes the axial force behind every force along the beam; nothing where there is none.</summary>
    internal static void Write(HandBeam beam)
    {
        HandWriter writer = beam.Writer;
        (HandNumber Place, HandFormula Force)[] pulls =
        [
            .. Enumerable.Range(0, beam.Model.Supports.Length)
                .Where(i => beam.Horizontal[i] is { Value: not 0 })
                .Select(i => (writer.Place(beam.Model.Supports[i].Position), (HandFormula)beam.Horizontal[i]!)),
            .. beam.Loads.Forces.Where(force => !force.IsAcross).Select(force => (force.To, force.Signed)),
        ];
        if (pulls.Length == 0)
        {
            return;
        }

        writer.Say(new HandRemark.AxialForces());
        HandFormula before = HandFormula.Total([], HandUnit.OfForce);
        int index = 0;
        foreach (IGrouping<HandNumber, (HandNumber Place, HandFormula Force)> at in pulls
            .GroupBy(pull => pull.Place)
            .OrderBy(group => group.Key.Value))
        {
            HandNumber behind = new(
                at.Aggregate(before, (sum, pull) => sum - pull.Force), new HandName(HandRole.AxialRight, index++));
            writer.Add(new HandLine.Finds(behind, At: at.Key));
            before = behind;
        }
    }
}
