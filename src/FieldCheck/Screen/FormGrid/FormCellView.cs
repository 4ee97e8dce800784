using System.Collections.Immutable;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What is seen in the cells of a state's form.</summary>
internal sealed class FormCellView
{
    private const char Bad = '!';
    private const char Question = '?';
    private const char More = '~';

    private readonly ScreenState _state;
    private readonly HashSet<FormPlace> _bad;

    /// <param name="state">The state.</param>
    internal FormCellView(ScreenState state)
    {
        _state = state;
        _bad = [.. CellProblems.Of(state.Settled)
            .Select(found => found.Place)
            .Concat(state.Settled.Problems.Select(problem => StickCells.PlaceOf(state.Settled.Document, problem.Key)))
            .OfType<FormPlace>()
            .Where(place => !CellProblems.IsMissing(state.Settled, place))];
    }

    /// <summary>True: a cell of this row is marked.</summary>
    internal char RowMark(FormBlock block, int row) =>
        _bad.Any(place => place.Block == block && place.Row == row) ? Bad
        : block == FormBlock.Loads && FormCells.IsAsked(_state.Document, row) ? Question
        : DetailLines.SetIn(_state.Document, block, row).Length > 0 ? More
        : ' ';

    internal FormCell At(FormPlace place)
    {
        if (_state.Draft is CellDraft draft && draft.Place == place)
        {
            return new FormCell(draft.Line.Text, Role.Text, ' ');
        }

        char mark = place.Column == FormColumn.Size && FormCells.IsAsked(_state.Document, place.Row) ? Question
            : _bad.Contains(place) ? Bad
            : ' ';
        return FormCells.TextOf(_state.Document, place) is string typed
            ? new FormCell(typed, Role.Text, mark)
            : new FormCell(Following(place) ?? "", Role.Faint, mark);
    }

    /// <summary>What an empty cell says because of other cells.</summary>
    private string? Following(FormPlace place)
    {
        BeamDocument document = _state.Document;
        if (place.Block is FormBlock.Cases or FormBlock.Combinations or FormBlock.Rolling)
        {
            return CaseWords.Following(document, place);
        }

        if (StickCells.Has(place.Block))
        {
            return FormMoves.ColumnsOf(_state.Sheet, place).Contains(place.Column) ? StickWords.Following(_state.Shown, place) : "";
        }

        if (place.Row < 0 || FormMoves.IsEmptyRow(_state.Sheet, place))
        {
            return null;
        }

        return place.Column switch
        {
            FormColumn.Length or FormColumn.Reading => Measured(place),
            FormColumn.Section => document.Sections.Count == 1 ? document.Sections[0].Name : "-",
            FormColumn.Material => document.Materials.Count == 1 ? document.Materials[0].Name : "-",
            FormColumn.Settles => "-",
            FormColumn.Acts => "-",
            FormColumn.Label => FormLabels.Of(document)[place.Row],
            FormColumn.From => document.Loads[place.Row].Kind == "distributed" ? "0" : null,
            FormColumn.To => document.Loads[place.Row].Kind == "distributed" ? "end" : "-",
            FormColumn.Case => "live",
            FormColumn.Allow => "2 %",
            FormColumn.Under or FormColumn.Basis => "-",
            _ => null,
        };
    }

    private string? Measured(FormPlace place)
    {
        ImmutableArray<double> joints = FormLabels.JointsOf(_state.Document);
        if (place.Row + 1 >= joints.Length)
        {
            return null;
        }

        double before = place.Column == FormColumn.Length ? joints[place.Row] : 0;
        DisplayUnits units = new(_state.Document.Units);
        return units.Say(joints[place.Row + 1] - before, QuantityKind.Length);
    }
}
