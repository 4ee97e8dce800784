using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
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
    private const int MostLabelRows = 6;
    private const int MostReactionRows = 4;
    private const double Gap = 5;
    private const double ReactionArrow = 16;
    private const double HingeRadius = 2.6;
    private const double Tick = 3;

    private readonly BuiltBeam _beam;
    private readonly CombinationResponse? _answer;
    private readonly BeamWords _words;
    private readonly LoadMarks _loads;
    private readonly LabelRows _labels = new(MostLabelRows);
    private readonly ImmutableArray<PictureMark>.Builder _marks = ImmutableArray.CreateBuilder<PictureMark>();

    private BeamPicture(BuiltBeam beam, CombinationResponse? answer)
    {
        _beam = beam;
        _answer = answer;
        _words = new BeamWords(beam);
        _loads = new LoadMarks(beam.Model.Length);
    }

    /// <summary>Draws a beam.</summary>
    /// <param name="beam">The beam as read.</param>
    /// <param name="answer">
    /// The combination whose loads and reactions are shown; null: the loads as typed, no reactions.
    /// </param>
    public static Picture Of(BuiltBeam beam, CombinationResponse? answer)
    {
        ArgumentNullException.ThrowIfNull(beam);
        return new BeamPicture(beam, answer).Draw();
    }

    private Picture Draw()
    {
        (NamedLoad Named, double Factor, int Layer)[] loads =
        [
            .. _beam.Loads
                .Select(named => (named, LoadPictures.FactorOf(_beam, named, _answer?.Combination)))
                .Where(pair => pair.Item2 != 0)
                .Select(pair => (pair.named, pair.Item2, _loads.LayerOf(pair.named.Load))),
        ];
        (string Label, int Row, double Middle)[] labels =
        [
            .. LoadPictures.Of(_beam, _answer?.Combination)
                .OrderByDescending(load => load.Size)
                .DistinctBy(load => load.Label)
                .Select(load => (load.Label, _labels.Put(X((load.From + load.To) / 2), load.Label)))
                .Where(pair => pair.Item2 is not null)
                .Select(pair => (pair.Label, pair.Item2!.Value.Row, pair.Item2.Value.Middle)),
        ];
        double top = _labels.Count * PictureInk.Row + Gap + _loads.Height;
        foreach ((NamedLoad named, double factor, int layer) in loads.OrderBy(load => load.Named.Load is Load.Distributed ? 0 : 1))
        {
            _marks.AddRange(_loads.Of(named.Load, factor, layer, top));
        }

        foreach ((string label, int row, double middle) in labels)
        {
            Write(middle, (_labels.Count - row) * PictureInk.Row - 2, label);
        }

        DrawBeam(top);
        double under = DrawReactions(top + PictureInk.Thick + SupportPicture.Depth + 2);
        return new Picture(PictureInk.Width, DrawLengths(under + Gap), _marks.ToImmutable());
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
                : $"{support.Label}  {string.Join(", ", _words.Parts(reaction))}";
            if (reaction is { Vertical: not 0 } && !_words.IsNothing(reaction.Vertical, QuantityKind.Force))
            {
                PicturePoint upper = new(X(support.Support.Position), top);
                PicturePoint lower = new(upper.X, top + ReactionArrow - 2);
                _marks.AddRange(reaction.Vertical > 0
                    ? Arrows.Straight(lower, upper, PictureInk.Curve)
                    : Arrows.Straight(upper, lower, PictureInk.Curve));
            }

            if (rows.Put(X(support.Support.Position), words) is (int row, double middle))
            {
                Write(middle, letters + row * PictureInk.Row, words);
            }
        }

        return letters + Math.Max(rows.Count - 1, 0) * PictureInk.Row;
    }

    /// <summary>Distances between ends and supports.</summary>
    /// <returns>How far down they reach [pt].</returns>
    private double DrawLengths(double top)
    {
        double[] stations =
        [
            .. _beam.Supports.Select(support => support.Support.Position)
                .Concat([0, _beam.Model.Length]).Distinct().Order(),
        ];
        LabelRows rows = new(2);
        double line = top + Gap;
        _marks.Add(new PictureMark.Line([new(X(0), line), new(X(_beam.Model.Length), line)], PictureInk.Thin));
        foreach (double station in stations)
        {
            _marks.Add(new PictureMark.Line(
                [new(X(station) - Tick / 2, line + Tick), new(X(station) + Tick / 2, line - Tick)], PictureInk.Thin));
        }

        foreach ((double from, double to) in stations.Zip(stations.Skip(1)))
        {
            string words = _words.Say(to - from, QuantityKind.Length);
            if (rows.Put((X(from) + X(to)) / 2, words) is (int row, double middle))
            {
                Write(middle, line + PictureInk.Row + row * PictureInk.Row, words);
            }
        }

        return line + PictureInk.Row * (1 + rows.Count) - PictureInk.Letters + 2;
    }

    private void Write(double x, double y, string words) =>
        _marks.Add(new PictureMark.Text(new(x, y), words, TextAnchor.Middle, PictureInk.Letters));

    private double X(double place) => PictureInk.X(place, _beam.Model.Length);
}
