namespace FieldCheck.Sheet.Presets;

/// <summary>What came of saving a beam file. Closed set: the cases are the nested records.</summary>
public abstract record BeamFileSaving
{
    private BeamFileSaving()
    {
    }

    /// <summary>The file holds the new text, all of it.</summary>
    /// <param name="Text">What it holds; the next save has it as the text that is known to stand there.</param>
    public sealed record Saved(BeamFileText Text) : BeamFileSaving;

    /// <summary>Nothing was written: a file of that name exists, and it is not the one that was read.</summary>
    public sealed record Exists : BeamFileSaving;

    /// <summary>Nothing was written: the file was changed by another hand since it was read.</summary>
    public sealed record ChangedOnDisk : BeamFileSaving;

    /// <summary>Nothing was written: the disk or the system refused. The file stands as it stood.</summary>
    /// <param name="Text">Why, as a sentence about the file that begins with a small letter.</param>
    public sealed record Failed(string Text) : BeamFileSaving;
}
