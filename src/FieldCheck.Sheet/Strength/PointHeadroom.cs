using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>How heavy one more point load may be.</summary>
/// <param name="Force">The greatest force [N], straight down, and what ends it.</param>
/// <param name="Case">The case that it is taken to belong to.</param>
public sealed record PointHeadroom(Headroom Force, string Case);
