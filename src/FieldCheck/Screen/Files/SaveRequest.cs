using FieldCheck.Sheet.Document;

namespace FieldCheck.Screen.Files;

/// <summary>A save that the shell has been asked for.</summary>
/// <param name="Document">The beam as it is being saved.</param>
/// <param name="Save">What the shell was asked.</param>
/// <param name="Then">What comes after it.</param>
internal sealed record SaveRequest(BeamDocument Document, Effect.Save Save, AfterSave Then);
