using System.Text.RegularExpressions;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What a load was read as: its kind in words, how much it is in all, and where.</summary>
internal static partial class LoadWords
{
    /// <summary>A cell of a load read back; null where there is nothing to say.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell: size, from or to.</param>
    /// <param name="text">What stands in it.</param>
    /// <param name="units">The units that results are shown in.</param>
    internal static string? Of(Calculation calculation, FormPlace place, string text, DisplayUnits units)
    {
        LoadEntry entry = calculation.Document.Loads[place.Row];
        NamedLoad? read = calculation.Beam?.Loads.FirstOrDefault(load => load.Row == place.Row);
        return (read?.Load, place.Column) switch
        {
            (null, FormColumn.Size) => Size(entry, text, units),
            (null, _) => ReadBackWords.Said(text, QuantityKind.Length, units),
            (Load load, FormColumn.Size) => Whole(entry, load, text, units),
            (Load load, _) => AtPlace(calculation, place, load, ReadBack.SayDistance(text, PlaceOf(load, place.Column), units), units),
        };
    }

    private static string Whole(LoadEntry entry, Load load, string size, DisplayUnits units) => load switch
    {
        Load.Point point => $"{Kind(entry)}, {Force(size, units)} at {units.Say(point.Position, QuantityKind.Length)}"
            + (entry.Angle is string angle ? $", leaning {angle}" : "") + (point.Down < 0 ? ", upward" : ""),
        Load.Couple couple => $"{Kind(entry)}, {ReadBackWords.Said(size, QuantityKind.Moment, units)} at "
            + units.Say(couple.Position, QuantityKind.Length) + Turning(couple),
        Load.Distributed spread => $"{Kind(entry)}, {InAll(size, spread, units)}",
        _ => "",
    };

    private static string AtPlace(Calculation calculation, FormPlace place, Load load, string said, DisplayUnits units)
    {
        string size = FormCells.TextOf(calculation.Document, place with { Column = FormColumn.Size }) ?? "";
        return load switch
        {
            Load.Distributed spread => $"{said}; {InAll(size, spread, units)}",
            Load.Couple couple => $"{size} at {said}{Turning(couple)}",
            _ => $"{size} at {said}",
        };
    }

    private static string InAll(string size, Load.Distributed spread, DisplayUnits units)
    {
        double total = (spread.StartIntensity + spread.EndIntensity) / 2 * (spread.To - spread.From);
        string against = spread.ActsAlong ? ", toward the left end" : ", upward";
        return ReadBack.SayInAll(Weighed(size), spread.To - spread.From, total, units) + (total < 0 ? against : "");
    }

    private static string? Size(LoadEntry load, string text, DisplayUnits units)
    {
        QuantityKind kind = load.Moment is not null ? QuantityKind.Moment
            : load.Force is not null || load.Total is not null ? QuantityKind.Force
            : QuantityKind.ForcePerLength;
        string? said = load.IntensityEnd is null ? ReadBackWords.Said(text, kind, units) : text;
        return said is null ? null : $"{Kind(load)}, {said}";
    }

    private static string Kind(LoadEntry load) => load switch
    {
        { Kind: "couple" } => "couple",
        { Kind: "point" } => "point load",
        { Axial: "true" } => "spread along the beam",
        { IntensityEnd: not null } or { PressureEnd: not null } => "varies",
        _ => "spread",
    };

    private static string Force(string size, DisplayUnits units) =>
        Weighed(ReadBackWords.Said(size, QuantityKind.Force, units) ?? size);

    private static double PlaceOf(Load load, FormColumn column) => load switch
    {
        Load.Point point => point.Position,
        Load.Couple couple => couple.Position,
        Load.Distributed spread => column == FormColumn.From ? spread.From : spread.To,
        _ => 0,
    };

    private static string Turning(Load.Couple couple) => couple.Moment < 0 ? ", clockwise" : ", counter-clockwise";

    // A mass is taken as what it weighs, which is said.
    private static string Weighed(string size) => Mass().IsMatch(size) ? $"weight of {size}" : size;

    [GeneratedRegex(@"(?<![A-Za-z])(kg|t)(?![A-Za-z])", RegexOptions.CultureInvariant)]
    private static partial Regex Mass();
}
