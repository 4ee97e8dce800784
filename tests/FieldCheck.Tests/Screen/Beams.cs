using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Screen;

/// <summary>Beams that several tests start from.</summary>
internal static class Beams
{
    /// <summary>
    /// The bearer over a trench: 3.60 m on supports at 0.30 and 2.70, two stacks of pallets and a chain block past B.
    /// By hand: loads 0.90 + 12 + 12 + 1.50 = 26.40 kN; moments about A 39.60 kNm; B = 39.60 / 2.40 = 16.50, A = 9.90.
    /// </summary>
    internal static BeamDocument Trench { get; } = new()
    {
        Spans = [new SpanEntry { Length = "3.60 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", At = "0.30 m" },
            new SupportEntry { Kind = "roller", At = "2.70 m" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "0.25 kN/m", Label = "own weight", Case = "dead" },
            new LoadEntry
            {
                Kind = "distributed", Intensity = "12 kN/m", From = "0.60 m", To = "1.60 m",
                Label = "pallets, left stack",
            },
            new LoadEntry
            {
                Kind = "distributed", Intensity = "12 kN/m", From = "1.80 m", To = "2.80 m",
                Label = "pallets, right stack",
            },
            new LoadEntry { Kind = "point", Force = "1.50 kN", At = "3.40 m", Label = "chain block" },
        ],
    };
}
