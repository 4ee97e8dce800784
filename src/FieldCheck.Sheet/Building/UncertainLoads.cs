using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>What is uncertain of the loads.</summary>
/// <param name="places">The default of places; null: exact.</param>
/// <param name="sizes">The default of sizes; null: exact.</param>
internal sealed class UncertainLoads(DefaultSpread? places, DefaultSpread? sizes)
{
    private static readonly Dictionary<string, Wanted> WantedOf =
        Fields.Load.ToDictionary(field => field.Key, field => field.Wanted);

    /// <summary>What is uncertain of one load.</summary>
    /// <param name="row">The load as typed; it reads.</param>
    /// <param name="number">Its row, counted from 1.</param>
    /// <param name="index">Where it stands in the model.</param>
    internal IEnumerable<UncertainInput> Of(LoadEntry row, int number, LoadIndex index)
    {
        string path = $"load[{number}]";
        string load = row.Label?.Trim() is { Length: > 0 } label ? $"load {number} ({label})" : $"load {number}";
        return row.Kind switch
        {
            "distributed" => Spread(row, path, load, index),
            _ =>
            [
                .. Size(row.Force, path, "force", $"of {load}", index),
                .. Size(row.Moment, path, "moment", $"of {load}", index),
                .. Place(row.At, path, "at", $"at {load}", half => new InputSpread.LoadPosition(index, half)),
                .. OfBeam(row.Angle, path, "angle", $"in the lean of {load}"),
            ],
        };
    }

    private IEnumerable<UncertainInput> Spread(LoadEntry row, string path, string load, LoadIndex index)
    {
        bool keepsTotal = row.Total is not null;
        return
        [
            .. Place(row.From, path, "from", $"at the left end of {load}",
                half => new InputSpread.LoadFrom(index, half, keepsTotal)),
            .. Place(row.To, path, "to", $"at the right end of {load}",
                half => new InputSpread.LoadTo(index, half, keepsTotal)),
            .. Size(row.Total, path, "total", $"of {load}", index),
            .. Ends(row.Intensity, row.IntensityEnd, path, "intensity", load, 1, index),
            .. Ends(row.Pressure, row.PressureEnd, path, "pressure", load, WidthOf(row), index),
            .. Width(row.Width, path, load, index),
        ];
    }

    /// <summary>
    /// Two ends of which neither has a plus or minus of its own are off together, by the same share; else each by itself.
    /// </summary>
    private IEnumerable<UncertainInput> Ends(
        string? start, string? end, string path, string key, string load, double width, LoadIndex index)
    {
        if (end is null)
        {
            return Size(start, path, key, $"of {load}", index);
        }

        UncertainCell? left = Read(start, key, sizes);
        UncertainCell? right = Read(end, key + "_end", sizes);
        if (left is { IsOwn: false } && right is not { IsOwn: true })
        {
            return [new($"{path}.{key}", $"of {load}", left.Width, new InputSpread.LoadSize(index, Share(left)))];
        }

        return
        [
            .. One(left, $"{path}.{key}", $"at the left end of {load}", cell =>
                new InputSpread.StartIntensity(index, cell.HalfWidth * width)),
            .. One(right, $"{path}.{key}_end", $"at the right end of {load}", cell =>
                new InputSpread.EndIntensity(index, cell.HalfWidth * width)),
        ];
    }

    private IEnumerable<UncertainInput> Size(string? text, string path, string key, string words, LoadIndex index) =>
        One(Read(text, key, sizes), $"{path}.{key}", words, cell => SizeSpread(cell, index));

    private IEnumerable<UncertainInput> Width(string? text, string path, string load, LoadIndex index) =>
        One(Read(text, "width", places), $"{path}.width", $"in the width of {load}", cell => SizeSpread(cell, index));

    private IEnumerable<UncertainInput> Place(
        string? text, string path, string key, string words, Func<double, InputSpread> spread) =>
        One(Read(text, key, places), $"{path}.{key}", words, cell => spread(cell.HalfWidth));

    private static IEnumerable<UncertainInput> OfBeam(string? text, string path, string key, string words) =>
        One(Read(text, key, null), $"{path}.{key}", words, cell => new InputSpread.OfBeam(cell.HalfWidth));

    private static IEnumerable<UncertainInput> One(
        UncertainCell? cell, string key, string words, Func<UncertainCell, InputSpread> spread) =>
        cell is null ? [] : [new UncertainInput(key, words, cell.Width, spread(cell))];

    /// <summary>No share of nothing: such a load is altered in its cell.</summary>
    private static InputSpread SizeSpread(UncertainCell cell, LoadIndex index) => cell.Value == 0
        ? new InputSpread.OfBeam(cell.HalfWidth)
        : new InputSpread.LoadSize(index, Share(cell));

    private static double Share(UncertainCell cell) => cell.HalfWidth / Math.Abs(cell.Value);

    private static double WidthOf(LoadEntry row) =>
        row.Width is string text
            && Reading.QuantityReader.Read(text, Reading.QuantityKind.Length)
                is Reading.Reading<Reading.Quantity>.Accepted read
            ? read.Value.Value
            : 1;

    private static UncertainCell? Read(string? text, string key, DefaultSpread? tolerance) =>
        UncertainCell.Read(text, WantedOf[key], tolerance);
}
