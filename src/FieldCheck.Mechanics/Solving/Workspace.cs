namespace FieldCheck.Mechanics.Solving;

/// <summary>Arrays that grow and never shrink, so that a warm solve allocates nothing.</summary>
internal static class Workspace
{
    /// <summary>Makes an array hold at least a count of items; what it held is lost when it grows.</summary>
    internal static void Grow<T>(ref T[] array, int count)
    {
        if (array.Length < count)
        {
            array = new T[Math.Max(count, 2 * array.Length)];
        }
    }
}
