using System.Collections.Immutable;

namespace FieldCheck.Sheet.Strength;

/// <summary>Which sections of the catalogue would do in the place of one that stands.</summary>
/// <param name="Replaced">Name of the section on the sheet that they were tried in the place of.</param>
/// <param name="Families">The families that were tried.</param>
/// <param name="Tried">How many sections were tried.</param>
/// <param name="Passing">Those with which every check holds that the present section is judged by, lightest first.</param>
public sealed record WouldDo(
    string Replaced, ImmutableArray<string> Families, int Tried, ImmutableArray<Candidate> Passing)
{
    /// <summary>True: what some weigh is not known, so that those of least area stand first.</summary>
    public bool IsByArea { get; init; }

    /// <summary>
    /// How many were left out of which no check is over but which cannot be judged by all that the present section is judged by: a
    /// check would be NOT JUDGED, or the grade is for other sizes.
    /// </summary>
    public int Open { get; init; }

    /// <summary>So many plies stood side by side, as typed, where single pieces were tried; null: one piece stood there.</summary>
    public string? Plies { get; init; }
}
