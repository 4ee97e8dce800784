namespace FieldCheck.Sheet.Strength;

/// <summary>What a stick is made of, as far as it decides which shapes there are of it.</summary>
public enum MaterialKind
{
    /// <summary>Timber, glued or sawn.</summary>
    Timber,

    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Aluminium.</summary>
    Aluminium,
}
