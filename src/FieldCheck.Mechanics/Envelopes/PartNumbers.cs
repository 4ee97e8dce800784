namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Numbers of one part of the loads on the pieces that it reaches.</summary>
/// <param name="First">The first piece that it reaches.</param>
/// <param name="Numbers">The numbers from there on; on all other pieces it does nothing.</param>
internal readonly record struct PartNumbers(int First, double[] Numbers);
