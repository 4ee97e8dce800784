namespace FieldCheck.Fuzz;

/// <summary>What a reader promises of any text does not hold of one.</summary>
/// <param name="promise">What was promised.</param>
public sealed class BrokenPromiseException(string promise) : Exception("Not as promised: " + promise);
