using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Pictures;

/// <summary>The loads above a beam with their labels, the largest first where not all have room.</summary>
internal sealed class LoadedBeam
{
    private const int MostLabelRows = 6;
    private const int MostTypedRows = 12;
    private const double Gap = 5;

    private readonly ImmutableArray<PictureMark>.Builder _marks = ImmutableArray.CreateBuilder<PictureMark>();

    /// <summary>Draws the loads.</summary>
    /// <param name="beam">The beam as read.</param>
    /// <param name="combination">Each load times its factor in it; null: all as they are.</param>
    /// <param name="typed">What was typed of them, to be told instead of what was read; null: what was read.</param>
    internal LoadedBeam(BuiltBeam beam, Combination? combination, TypedBeam? typed)
    {
        LoadMarks arrows = new(beam.Model.Length);
        (NamedLoad Named, double Factor, int Layer)[] loads =
        [
            .. beam.Loads
                .Select(named => (Named: named, Factor: LoadPictures.FactorOf(beam, named, combination)))
                .Where(load => load.Factor != 0)
                .Select(load => (load.Named, load.Factor, arrows.LayerOf(load.Named.Load))),
        ];
        LabelRows rows = new(typed is null ? MostLabelRows : MostTypedRows);
        (string Words, (int Row, double Middle)? Put)[] labels =
        [
            .. (typed?.Loads ?? LoadPictures.Of(beam, combination))
                .OrderByDescending(load => load.Size)
                .DistinctBy(load => load.Label)
                .Select(load => (Words: PictureInk.Fitted(load.Label), Middle: PictureInk.X((load.From + load.To) / 2, beam.Model.Length)))
                .Select(label => (label.Words, rows.Put(label.Middle, label.Words))),
        ];
        Height = rows.Count * PictureInk.Row + Gap + arrows.Height;
        foreach ((NamedLoad named, double factor, int layer) in loads.OrderBy(load => load.Named.Load is Load.Distributed ? 0 : 1))
        {
            _marks.AddRange(arrows.Of(named.Load, factor, layer, Height));
        }

        foreach ((string words, (int Row, double Middle)? put) in labels)
        {
            if (put is (int row, double middle))
            {
                _marks.Add(new PictureMark.Text(
                    new(middle, (rows.Count - row) * PictureInk.Row - 2), words, TextAnchor.Middle, PictureInk.Letters));
            }
            else
            {
                LeftOut++;
            }
        }
    }

    /// <summary>What has been drawn.</summary>
    internal ImmutableArray<PictureMark> Marks => _marks.ToImmutable();

    /// <summary>How far down the beam lies [pt].</summary>
    internal double Height { get; }

    /// <summary>How many labels found no room.</summary>
    internal int LeftOut { get; }
}
