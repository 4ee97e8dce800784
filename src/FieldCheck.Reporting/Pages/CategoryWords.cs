namespace FieldCheck.Reporting.Pages;

/// <summary>The category of a check as typed; a bare number with the scale that it is read on.</summary>
internal static class CategoryWords
{
    /// <summary>Who checks, by the categories of BS 5975-1:2024, Table 2.</summary>
    private static readonly string[] Checkers =
        ["a standard solution", "another of the same team", "a person independent of the team", "another organisation"];

    /// <summary>The category; null where none was typed.</summary>
    internal static string? Of(string? typed) => typed?.Trim() is [>= '0' and <= '3' and char number]
        ? $"{number} (unless another scale is agreed, of 0 to 3 in BS 5975-1:2024, Table 2: {Checkers[number - '0']})"
        : typed;
}
