using System.Collections.Immutable;
using FieldCheck.Reporting.Working;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Workings;

/// <summary>Draws the Working view between title and message line: as many lines of it as there is room for.</summary>
internal static class WorkingViewPicture
{
    /// <summary>The view; of a beam that cannot be worked, the results, which say why.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height)
    {
        ImmutableArray<WorkingLine> lines = state.Worked.Lines(width);
        int top = WorkingKeys.Top(state, state.WorkingTop);
        IEnumerable<PictureLine> seen = lines.IsEmpty
            ? ResultsPicture.Of(state, width, height)
            : lines.Skip(top).Take(height).Select(line => LineWriter.Line(line.Text, width, RoleOf(line.Kind)));
        return new Picture([.. seen.Concat(Enumerable.Repeat(LineWriter.Line("", width), height)).Take(height)], (0, 0));
    }

    private static Role RoleOf(WorkingLineKind kind) => kind switch
    {
        WorkingLineKind.Step => Role.Heading,
        WorkingLineKind.Result => Role.Good,
        _ => Role.Text,
    };
}
