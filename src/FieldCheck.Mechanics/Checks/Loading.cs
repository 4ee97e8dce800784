namespace FieldCheck.Mechanics.Checks;

/// <summary>What acts: a combination of the model, or one of its cases alone with factor 1.</summary>
/// <param name="Index">Index of it.</param>
/// <param name="IsCase">True: a case; no support is moved then.</param>
internal readonly record struct Loading(int Index, bool IsCase = false);
