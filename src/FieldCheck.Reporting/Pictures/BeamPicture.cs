using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Draws the idealised beam: supports, loads, lengths and, once solved, what each support gives.</summary>
public sealed class BeamPicture
{
    private const int MostReactionRows = 4;
    private const double Gap = 5;
    private const double ReactionArrow = 16;
    private const double HingeRadius = 2.6;

    private readonly BuiltBeam _beam;
    private readonly CombinationResponse? _answer;
    private readonly TypedBeam? _typed;
    private readonly BeamWords _words;
    private readonly ImmutableArray<PictureMark>.Builder _marks = ImmutableArray.CreateBuilder<PictureMark>();
    private int _leftOut;

    private BeamPicture(BuiltBeam beam, CombinationResponse? answer, TypedBeam? typed)
    {
        _beam = beam;
        _answer = answer;
        _typed = typed;
        _words = new BeamWords(beam);
    }

    /// <summary>Draws a beam.</summary>
    /// <param name="beam">The beam as read.</param>
    /// <param name="answer">
    /// The combination whose loads and reactions are shown; null: all loads as read, no reactions.
    /// </param>
    public static Picture Of(BuiltBeam beam, CombinationResponse? answer)
    {
        ArgumentNullException.ThrowIfNull(beam);
        return new BeamPicture(beam, answer, null).Draw();
    }

    /// <summary>Draws a beam with its lengths, places and loads as they were typed.</summary>
    internal static Picture Of(TypedBeam typed) => new BeamPicture(typed.Beam, null, typed).Draw();

    private Picture Draw()
    {
        LoadedBeam loads = new(_beam, _answer?.Combination, _typed);
        _marks.AddRange(loads.Marks);
        _leftOut = loads.LeftOut;
        double top = Math.Max(loads.Height, SupportPicture.Above);
        DrawBeam(top);
        double under = DrawReactions(top + PictureInk.Thick + SupportPicture.Depth + 2);
        return new Picture(PictureInk.Width, DrawLeftOut(DrawLengths(under + Gap)), _marks.ToImmutable());
    }

    private void DrawBeam(double top)
    {
        double axis = top + PictureInk.Thick / 2;
        _marks.Add(new PictureMark.Line([new(X(0), axis), new(X(_beam.Model.Length), axis)], PictureInk.Thick));
        foreach (NamedSupport named in _beam.Supports)
        {
            double place = named.Support.Position;
            _marks.AddRange(SupportPicture.Of(
                named.Support, new(X(place), top + PictureInk.Thick), place == _beam.Model.Length));
        }

        foreach (double hinge in _beam.Model.Hinges)
        {
            _marks.Add(new PictureMark.Circle(new(X(hinge), axis), HingeRadius, PictureInk.Thin));
        }
    }

    /// <summary>Labels and reactions below the supports, and arrows to them.</summary>
    /// <returns>How far down it all reaches [pt].</returns>
    private double DrawReactions(double top)
    {
        LabelRows rows = new(MostReactionRows);
        double letters = top + (_answer is null ? 0 : ReactionArrow) + PictureInk.Letters;
        for (int i = 0; i < _beam.Supports.Length; i++)
        {
            NamedSupport support = _beam.Supports[i];
            Reaction? reaction = _answer?.Response.Reactions[i];
            string words = reaction is null
                ? support.Label
                : $"{support.Label}  {string.Join(", ", _words.Parts(support.Support, reaction))}";
            if (reaction is { Vertical: not 0 } && !_words.IsNothing(reaction.Vertical, QuantityKind.Force))
            {
                PicturePoint upper = new(X(support.Support.Position), top);
                PicturePoint lower = new(upper.X, top + ReactionArrow - 2);
                _marks.AddRange(reaction.Vertical > 0
                    ? Arrows.Straight(lower, upper, PictureInk.Curve)
                    : Arrows.Straight(upper, lower, PictureInk.Curve));
            }

            (int Row, double Middle)? put = rows.Put(X(support.Support.Position), words);
            WriteAt(put is null ? null : (put.Value.Middle, letters + put.Value.Row * PictureInk.Row), words);
        }

        return letters + Math.Max(rows.Count - 1, 0) * PictureInk.Row;
    }

    /// <summary>Distances between ends and supports; of a beam as typed, its spans and every place that was typed.</summary>
    /// <returns>How far down they reach [pt].</returns>
    private double DrawLengths(double top)
    {
        DimensionLines lines = new(_beam.Model.Length);
        double bottom = _typed is null ? lines.Chain(top, Distances()) : lines.Running(lines.Chain(top, _typed.Spans()), _typed.Places());
        _marks.AddRange(lines.Marks);
        _leftOut += lines.LeftOut;
        return bottom;
    }

    private IEnumerable<(double From, double To, string Words)> Distances()
    {
        double[] stations =
        [
            .. _beam.Supports.Select(support => support.Support.Position)
                .Concat([0, _beam.Model.Length]).Distinct().Order(),
        ];
        return stations.Zip(stations.Skip(1), (from, to) => (from, to, _words.Say(to - from, QuantityKind.Length)));
    }

    /// <summary>What found no room is not passed over in silence.</summary>
    private double DrawLeftOut(double top)
    {
        if (_leftOut == 0)
        {
            return top;
        }

        WriteAt((PictureInk.Width / 2, top + PictureInk.Row),
            (_leftOut == 1 ? "1 load, place or length has" : $"{_leftOut} loads, places or lengths have")
            + " no room here (see the input as typed)");
        return top + PictureInk.Row + 2;
    }

    private void WriteAt((double X, double Y)? place, string words)
    {
        if (place is (double x, double y))
        {
            _marks.Add(new PictureMark.Text(new(x, y), words, TextAnchor.Middle, PictureInk.Letters));
        }
        else
        {
            _leftOut++;
        }
    }

    private double X(double place) => PictureInk.X(place, _beam.Model.Length);
}
