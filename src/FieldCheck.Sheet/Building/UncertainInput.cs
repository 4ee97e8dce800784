using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Sheet.Building;

/// <summary>A cell known only to plus or minus.</summary>
/// <param name="Key">Key path of the cell, as "load[2].at".</param>
/// <param name="Words">What it is, in words that follow the half width, as "at load 2" or "of the size of load 2".</param>
/// <param name="Width">The half width as typed, as "1 in" or "10 %".</param>
/// <param name="Spread">What the mechanics make of it.</param>
public sealed record UncertainInput(string Key, string Words, string Width, InputSpread Spread);
