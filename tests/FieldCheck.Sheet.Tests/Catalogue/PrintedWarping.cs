namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>Printed warping constants of W shapes [in⁶]: AISC Shapes Database v15.0, read there.</summary>
internal static class PrintedWarping
{
    internal static readonly IReadOnlyDictionary<string, double> OfW = new Dictionary<string, double>
    {
        ["W4x13"] = 14, ["W6x9"] = 17.7, ["W6x15"] = 76.5, ["W6x20"] = 113, ["W6x25"] = 150, ["W8x10"] = 30.9,
        ["W8x15"] = 51.8, ["W8x18"] = 122, ["W8x21"] = 152, ["W8x24"] = 259, ["W8x31"] = 530, ["W8x40"] = 726,
        ["W10x12"] = 50.9, ["W10x15"] = 68.3, ["W10x19"] = 104, ["W10x22"] = 275, ["W10x26"] = 345,
        ["W10x33"] = 791, ["W10x49"] = 2070, ["W12x14"] = 80.4, ["W12x16"] = 96.9, ["W12x19"] = 131,
        ["W12x22"] = 164, ["W12x26"] = 607, ["W12x30"] = 720, ["W12x40"] = 1440, ["W12x53"] = 3160,
        ["W12x65"] = 5780, ["W14x22"] = 314, ["W14x30"] = 887, ["W14x43"] = 1950, ["W14x61"] = 4710,
        ["W14x90"] = 16000, ["W16x26"] = 565, ["W16x31"] = 739, ["W16x40"] = 1730, ["W18x35"] = 1140,
        ["W18x50"] = 3040, ["W21x44"] = 2110, ["W21x50"] = 2570, ["W24x55"] = 3870, ["W24x68"] = 9430,
        ["W27x84"] = 17900, ["W30x99"] = 26800,
    };
}
