namespace FieldCheck.Screen.FormGrid;

/// <summary>How many lines each part of the Beam view has.</summary>
/// <param name="Form">The form.</param>
/// <param name="Results">The results, where they stand below the form.</param>
/// <param name="Sketch">The sketch of the beam.</param>
/// <param name="Shear">The shear.</param>
/// <param name="Moment">The moment.</param>
/// <param name="Deflection">The deflection.</param>
/// <param name="Peaks">The peaks in words.</param>
internal sealed record BeamViewHeights(int Form, int Results, int Sketch, int Shear, int Moment, int Deflection, int Peaks);
