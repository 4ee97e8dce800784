using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Screen;

/// <summary>Beams that several tests start from.</summary>
internal static class Beams
{
    /// <summary>Five bays of 4 m under forty-nine bundles, 0.40 m apart, and a load over all of it.</summary>
    internal static BeamDocument FiftyLoads { get; } = new()
    {
        Spans = [.. Enumerable.Repeat(new SpanEntry { Length = "4 m" }, 5)],
        Supports =
        [
            .. Enumerable.Range(0, 6).Select(joint => new SupportEntry { Kind = joint == 0 ? "pin" : "roller", Joint = $"{joint}" }),
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "1.5 kN/m", Label = "decking", Case = "dead" },
            .. Enumerable.Range(1, 49).Select(bundle => new LoadEntry
            {
                Kind = "point", Force = "250 kg", At = $"{bundle * 40} cm", Label = $"bundle {bundle}",
            }),
        ],
    };

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
