namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Keys of loads and of the own weight.</summary>
internal static class LoadNotes
{
    internal static readonly KeyNote[] All =
    [
        new("load[].kind", "A force or a couple at one place, or a load spread along the beam.", "", "\"distributed\""),
        new("load[].label", "What it is.", "", "\"Pallet\""),
        new("load[].case", "The case it belongs to.", "live", "\"dead\""),
        new("load[].at", "point, couple: its place.", "", "\"A + 4 ft\""),
        new("load[].force", "point: its size, positive down; a mass reads as its weight.", "", "\"1850 lbf\""),
        new("load[].angle", "point: how far it leans from straight down, positive toward the right end.", "0 deg", "\"20 deg\""),
        new("load[].from", "distributed: where it begins.", "the left end", "\"0.6 m\""),
        new("load[].to", "distributed: where it ends.", "the right end", "\"end\""),
        new("load[].intensity",
            "distributed: load for each unit of length, positive down; or `pressure` with `width`, or `total`.", "", "\"2.5 kN/m\""),
        new("load[].intensity_end", "distributed: what `intensity` comes to at its end.", "the same", "\"4 kN/m\""),
        new("load[].pressure", "distributed: load for each unit of area, with `width`.", "", "\"12 psf\""),
        new("load[].pressure_end", "distributed: what `pressure` comes to at its end.", "the same", "\"20 psf\""),
        new("load[].width", "distributed: tributary width that the pressure stands on.", "", "\"5 ft\""),
        new("load[].total", "distributed: the whole load, spread evenly.", "", "\"1.2 t\""),
        new("load[].axial", "distributed: turns it along the beam, positive toward the right end; not with `pressure`.", "false", "true"),
        new("load[].moment", "couple: its size, positive counter-clockwise.", "", "\"5 kNm\""),
        new("load[].side", "couple exactly at a hinge: the side of the hinge it turns.", "", "\"left\""),
        new("self_weight.case", "The case that the weight of the sections belongs to.", "", "\"dead\""),
    ];
}
