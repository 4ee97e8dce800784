namespace FieldCheck.Screen.Files;

/// <summary>What can be saved to be printed.</summary>
internal enum PaperKind
{
    /// <summary>The working by hand, as text.</summary>
    Working,

    /// <summary>The record of the check.</summary>
    Record,
}
