namespace FieldCheck.Sheet.Document;

/// <summary>One step of a key path: into a key, or into a row. Closed set: the cases are the nested records.</summary>
internal abstract record KeyStep
{
    private KeyStep()
    {
    }

    /// <summary>Into what stands under a key.</summary>
    internal sealed record Into(string Key) : KeyStep;

    /// <summary>Into a row, counted from 1.</summary>
    internal sealed record At(int Row) : KeyStep;
}
