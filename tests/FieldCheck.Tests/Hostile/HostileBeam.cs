using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Hostile;

/// <summary>A beam with something of everything, and every cell and name that takes free text filled from outside.</summary>
internal static class HostileBeam
{
    /// <summary>How many texts it takes.</summary>
    internal const int Texts = 18;

    /// <summary>The beam.</summary>
    /// <param name="texts">As many texts as it takes, none of them empty.</param>
    internal static BeamDocument Of(IReadOnlyList<string> texts)
    {
        // Names must differ from each other and from the known ones.
        string load = "c" + texts[0];
        string other = "d" + texts[1];
        string section = "s" + texts[2];
        string material = "m" + texts[3];
        string combination = "k" + texts[4];
        return new()
        {
            Title = texts[5],
            Notes = texts[6],
            Display = "si",
            Record = new()
            {
                Job = texts[7],
                Location = texts[8],
                PreparedBy = texts[9],
                PreparedFor = texts[10],
                CheckedBy = texts[11],
                Date = texts[12],
                Category = texts[13],
            },
            Spans = [new() { Length = "4 m", Section = section, Material = material }, new() { Length = "3 m", Section = section, Material = material }],
            Supports =
            [
                new() { Kind = "pin", Joint = "0" },
                new() { Kind = "roller", Joint = "1", Acts = "up", Bearing = "75 mm" },
                new() { Kind = "roller", Joint = "2" },
            ],
            Loads =
            [
                new() { Kind = "point", At = "1 m", Force = "10 kN", Case = load, Label = texts[14] },
                new() { Kind = "distributed", From = "4 m", To = "end", Intensity = "2 kN/m ± 5 %", Case = other, Label = texts[15] },
            ],
            SelfWeight = new() { Case = "dead" },
            Sections = [new() { Name = section, Width = "75 mm", Depth = "225 mm" }],
            Materials = [new() { Name = material, Grade = "C24", Factors = [new("duration", "1.0")] }],
            Combinations =
            [
                new() { Name = combination, Factors = [new("dead", "1"), new(load, "1"), new(other, "1")] },
                new() { Name = combination + "2", Basis = "factored", Factors = [new("dead", "1.2"), new(load, "1.6"), new(other, "0.5")] },
            ],
            Patterns = [new() { Case = other }],
            Rolling = [new() { Label = texts[16], Case = load, Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
            Stated = [new() { Support = "A", Vertical = "4 kN", Combination = combination, Source = texts[17] }],
            Limits = new() { Deflection = "L/360", DeflectionCases = [new(load, "L/480")] },
        };
    }
}
