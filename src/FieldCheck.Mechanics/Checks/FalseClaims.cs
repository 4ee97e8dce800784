namespace FieldCheck.Mechanics.Checks;

/// <summary>How often unrelated errors look like a slip, by simulation.</summary>
/// <remarks>
/// Made by `dotnet run -c Release --project tests/FieldCheck.Benchmarks -- slips`, which writes the same table into
/// docs/verification.md: seed 1, 20,000 draws for each number.
/// </remarks>
public static class FalseClaims
{
    /// <summary>Share of unrelated errors, each figure off by 3 to 20 %, that some explanation claims [–].</summary>
    /// <param name="figures">How many figures are stated; one or more. Above five, as for five.</param>
    /// <param name="digits">
    /// To how many digits the greatest of them is written; one or more. Above three, as for three.
    /// </param>
    public static double Rate(int figures, int digits) => (Math.Min(digits, 3), Math.Min(figures, 5)) switch
    {
        (3, 1) => 0.3789,
        (3, 2) => 0.0041,
        (3, _) => 0,
        (2, 1) => 0.9139,
        (2, 2) => 0.2075,
        (2, 3) => 0.0115,
        (2, 4) => 0.0006,
        (2, _) => 0.0001,
        (_, 1) => 0.9999,
        (_, 2) => 0.8881,
        (_, 3) => 0.6537,
        (_, 4) => 0.4390,
        _ => 0.2668,
    };
}
