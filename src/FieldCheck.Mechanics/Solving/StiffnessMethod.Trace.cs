using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <content>What a solution comes to along the elements.</content>
internal sealed partial class StiffnessMethod
{
    /// <summary>The state just inside the left end of an element.</summary>
    internal PieceEnd StartOf(int element)
    {
        (SectionMarch start, Span span) = (Begin(element), Model.Spans[Grid.SpanOf(element)]);
        return EndOf(start, span);
    }

    /// <summary>Fills in the pieces of the last solution.</summary>
    internal void Trace()
    {
        (int first, int last) = Reached;
        for (int i = first; i <= last; i++)
        {
            TraceElement(i);
        }
    }

    private SectionMarch Begin(int element)
    {
        double flexural = _elements[element].FlexuralRigidity;
        SectionForces start = _forces[element].Start;
        SectionMarch section = default;
        section.Axial = start.Axial;
        section.Shear = start.Shear;
        section.Moment = start.Moment;
        section.Turn = _movements[element].TurnRight * flexural;
        section.Rise = _movements[element].Up * flexural;
        return section;
    }

    private void TraceElement(int element)
    {
        ref readonly Element stiff = ref _elements[element];
        SectionMarch section = Begin(element);
        Span span = Model.Spans[Grid.SpanOf(element)];
        int first = Grid.PointOf(element);
        for (int piece = first; piece < Grid.PointOf(element + 1); piece++)
        {
            if (piece > first)
            {
                section.Pass(_loads.At(piece));
            }

            DoubleDouble length = Grid.PieceLength(piece);
            ref readonly LineLoad load = ref _loads.On(piece);
            PieceEnd begin = EndOf(section, span);
            section.Walk(load, length, stiff.ShearRatio);
            _pieces[piece] = new Piece
            {
                From = Grid.PointPosition(piece),
                To = Grid.PointPosition(piece + 1),
                Length = (double)length,
                Start = begin,
                End = EndOf(section, span),
                Up = (double)load.Up,
                UpChange = (double)load.UpChange,
                Right = (double)load.Right,
                RightChange = (double)load.RightChange,
                FlexuralRigidity = span.FlexuralRigidity,
                ShearFlexibility = span.ShearRigidity is double shear ? 1 / shear : 0,
            };
        }
    }

    private PieceEnd EndOf(in SectionMarch section, Span span) => new(
        _noise.Force(section.Axial),
        _noise.Force(section.Shear),
        _noise.Moment(section.Moment),
        _noise.Turn((double)section.Turn / span.FlexuralRigidity),
        _noise.Movement((double)section.Rise / span.FlexuralRigidity));
}
