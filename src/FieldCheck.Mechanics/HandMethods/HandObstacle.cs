namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Why the hand methods do not reach a beam.</summary>
public enum HandObstacle
{
    /// <summary>Sloped surfaces stand where statics is not enough, and more than one of them, or of what holds along.</summary>
    SlopesTied,

    /// <summary>What settles, yields or slopes needs stiffnesses that are not known.</summary>
    StiffnessUnknown,
}
