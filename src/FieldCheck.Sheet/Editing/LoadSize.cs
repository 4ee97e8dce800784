using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>What the text in the size cell of a load says. Closed set: the cases are the nested records.</summary>
internal abstract record LoadSize
{
    private const string Range = "..";

    private LoadSize()
    {
    }

    /// <summary>A number without unit.</summary>
    internal sealed record Bare(string Text) : LoadSize;

    /// <summary>A force.</summary>
    internal sealed record Force(string Text) : LoadSize;

    /// <summary>A force per length, at one end or at both.</summary>
    internal sealed record Intensity(string Text, string? End) : LoadSize;

    /// <summary>A pressure, at one end or at both, and the width that it comes from.</summary>
    internal sealed record Pressure(string Text, string? End, string? Width) : LoadSize;

    /// <summary>A turning moment.</summary>
    internal sealed record Moment(string Text) : LoadSize;

    /// <summary>Nothing that is the size of a load.</summary>
    internal sealed record Unread(string Text) : LoadSize;

    internal static LoadSize Read(string text, UnitSystem system)
    {
        if (Reads(text, QuantityKind.Number))
        {
            return new Bare(text);
        }

        if (ReadPressure(text) is Pressure pressure)
        {
            return pressure;
        }

        LoadText load = CellShorthand.ExpandLoad(text, system);
        return load.End is string end ? new Intensity(load.Size, end)
            : Reads(load.Size, QuantityKind.Force) ? new Force(load.Size)
            : Reads(load.Size, QuantityKind.ForcePerLength) ? new Intensity(load.Size, null)
            : Reads(load.Size, QuantityKind.Moment) ? new Moment(load.Size)
            : new Unread(text);
    }

    /// <summary>What stands in the size cell of a load; null where nothing does.</summary>
    internal static string? TextOf(LoadEntry load) =>
        load.Intensity is not null || load.IntensityEnd is not null ? Ends(load.Intensity, load.IntensityEnd)
        : load.Pressure is not null || load.Width is not null ? Over(Ends(load.Pressure, load.PressureEnd), load.Width)
        : load.Total ?? load.Moment ?? load.Force;

    internal static bool Reads(string text, QuantityKind kind) =>
        QuantityReader.Read(text, kind) is Reading<Quantity>.Accepted;

    private static Pressure? ReadPressure(string text)
    {
        int times = text.LastIndexOfAny(['*', '×', '·']);
        string first = times < 0 ? text : text[..times].Trim();
        string? second = times < 0 ? null : text[(times + 1)..].Trim();
        if (second is not null && Reads(first, QuantityKind.Length))
        {
            (first, second) = (second, first);
        }

        if (second is not null && !Reads(second, QuantityKind.Length))
        {
            return null;
        }

        int range = first.IndexOf(Range, StringComparison.Ordinal);
        if (range < 0)
        {
            return Reads(first, QuantityKind.Pressure) ? new Pressure(first, null, second) : null;
        }

        string end = first[(range + Range.Length)..].Trim();
        string start = CellShorthand.Expand(first[..range].Trim(), end.TrimStart("+-.0123456789 ".ToCharArray()));
        return Reads(start, QuantityKind.Pressure) && Reads(end, QuantityKind.Pressure)
            ? new Pressure(start, end, second)
            : null;
    }

    private static string? Ends(string? start, string? end) => end is null ? start : $"{start}{Range}{end}";

    private static string? Over(string? pressure, string? width) => width is null ? pressure : $"{pressure} * {width}";
}
