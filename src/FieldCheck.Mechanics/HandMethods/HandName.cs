namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What a number of the working is called: what it stands for, of which one.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Index">Of which one, counted from 0; what is counted follows from the role.</param>
/// <param name="Part">Which part of it, counted from 0; of a load in one piece <see cref="OnlyPart"/>.</param>
public readonly record struct HandName(HandRole Role, int Index = 0, int Part = 0)
{
    /// <summary>The part of a load that is in one piece.</summary>
    public const int OnlyPart = -1;
}
