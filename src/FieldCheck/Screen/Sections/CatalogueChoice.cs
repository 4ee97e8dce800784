using System.Collections.Immutable;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Sections;

/// <summary>One thing that can be chosen for a cell.</summary>
/// <param name="Line">What the list says of it.</param>
/// <param name="Name">What it is called in a sentence.</param>
/// <param name="Put">The change that taking it makes.</param>
internal sealed record CatalogueChoice(string Line, string Name, Edit Put)
{
    /// <summary>Its name and figures one by one, for reading aloud; none: the columns of its line are them.</summary>
    internal ImmutableArray<string> Facts { get; init; } = [];

    /// <summary>Its figures and where they come from, line by line.</summary>
    internal ImmutableArray<string> About { get; init; } = [];
}
