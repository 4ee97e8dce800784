using System.Diagnostics;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of a load's row. What is typed tells the kind of load.</summary>
internal static partial class LoadCells
{
    private const string Point = "point";
    private const string Distributed = "distributed";
    private const string Couple = "couple";

    internal static string? TextOf(LoadEntry load, FormColumn column) => column switch
    {
        FormColumn.Size => LoadSize.TextOf(load),
        FormColumn.From => load.From ?? load.At,
        FormColumn.To => load.To,
        FormColumn.Case => load.Case,
        FormColumn.Note => load.Label,
        _ => throw new UnreachableException(),
    };

    internal static FormColumn ColumnOf(string key) => key switch
    {
        "at" or "from" => FormColumn.From,
        "to" => FormColumn.To,
        "case" => FormColumn.Case,
        "label" => FormColumn.Note,
        _ => FormColumn.Size,
    };

    /// <summary>
    /// True: its size is a number without unit, and could be the whole load or the load on each length.
    /// </summary>
    internal static bool IsAsked(LoadEntry load) =>
        load is { Kind: Distributed, IntensityEnd: null, Intensity: string size }
        && LoadSize.Reads(size, QuantityKind.Number);

    internal static LoadEntry Type(
        LoadEntry load, FormColumn column, string? text, UnitSystem system, bool wasBare) => column switch
        {
            FormColumn.Size => TypeSize(load, text, system),
            FormColumn.From => TypeFrom(load, ExpandPlace(text, system)),
            FormColumn.To => TypeTo(load, ExpandPlace(text, system), system, wasBare),
            FormColumn.Case => load with { Case = text, Kind = load.Kind ?? Point },
            FormColumn.Note => load with { Label = text, Kind = load.Kind ?? Point },
            _ => throw new UnreachableException(),
        };

    /// <summary>Tells whether the size of a load without unit is the whole load or the load on each length.</summary>
    internal static LoadEntry Answer(LoadEntry load, bool inAll, UnitSystem system)
    {
        if (!IsAsked(load))
        {
            return load;
        }

        string number = load.Intensity!;
        return inAll
            ? load with { Intensity = null, Total = CellShorthand.Expand(number, QuantityKind.Force, system) }
            : load with { Intensity = CellShorthand.Expand(number, QuantityKind.ForcePerLength, system) };
    }

    private static LoadEntry TypeSize(LoadEntry load, string? text, UnitSystem system)
    {
        LoadEntry cleared = load with
        {
            Force = null,
            Intensity = null,
            IntensityEnd = null,
            Pressure = null,
            PressureEnd = null,
            Width = null,
            Total = null,
            Moment = null,
        };
        return text is null ? cleared : LoadSize.Read(text, system) switch
        {
            LoadSize.Bare bare => TypeBare(load, cleared, bare.Text, system),
            LoadSize.Force force => IsSpread(load)
                ? AsDistributed(cleared) with { Total = force.Text }
                : AsSingle(cleared, Point) with { Force = force.Text },
            LoadSize.Intensity size => AsDistributed(cleared) with { Intensity = size.Text, IntensityEnd = size.End },
            LoadSize.Pressure size => AsDistributed(cleared) with
            {
                Pressure = size.Text,
                PressureEnd = size.End,
                Width = size.Width ?? load.Width,
                Axial = null,
            },
            LoadSize.Moment moment => AsSingle(cleared, Couple) with { Moment = moment.Text },
            LoadSize.Unread unread => KeepAsTyped(load, cleared, unread.Text),
            _ => throw new UnreachableException(),
        };
    }

    // A number without unit takes the unit that the cell shows at that moment.
    private static LoadEntry TypeBare(LoadEntry load, LoadEntry cleared, string number, UnitSystem system)
    {
        string With(QuantityKind kind) => CellShorthand.Expand(number, kind, system);
        return load switch
        {
            { Moment: not null } => cleared with { Moment = With(QuantityKind.Moment) },
            { Pressure: not null } => cleared with { Pressure = With(QuantityKind.Pressure), Width = load.Width },
            { Total: not null } => cleared with { Total = With(QuantityKind.Force) },
            { Intensity: not null } when !IsAsked(load) =>
                cleared with { Intensity = With(QuantityKind.ForcePerLength) },
            { Kind: Distributed } => cleared with { Intensity = number },
            _ => AsSingle(cleared, Point) with { Force = With(QuantityKind.Force) },
        };
    }

    private static LoadEntry KeepAsTyped(LoadEntry load, LoadEntry cleared, string text) => load switch
    {
        { Kind: Couple } => cleared with { Moment = text },
        { Kind: Distributed, Total: not null } => cleared with { Total = text },
        { Kind: Distributed } => cleared with { Intensity = text },
        _ => AsSingle(cleared, Point) with { Force = text },
    };

    private static LoadEntry TypeFrom(LoadEntry load, string? place) => load.Kind == Distributed
        ? load with { From = place }
        : load with { At = place, Kind = load.Kind ?? Point };

    private static LoadEntry TypeTo(LoadEntry load, string? place, UnitSystem system, bool wasBare)
    {
        if (place is null)
        {
            return ClearTo(load, system);
        }

        LoadEntry ended = load.Kind == Couple ? load : AsDistributed(load with { Force = null });
        ended = ended with { To = place };
        return load.Force is not string force ? ended
            : wasBare ? ended with { Intensity = NumberOf(force) }
            : ended with { Total = force };
    }

    // Without an end, a whole load that begins somewhere is a load at that place.
    private static LoadEntry ClearTo(LoadEntry load, UnitSystem system)
    {
        LoadEntry cleared = load with { To = null };
        return cleared switch
        {
            { Kind: Distributed, Total: string total, From: not null } =>
                AsSingle(cleared with { Total = null }, Point) with { Force = total },
            { Kind: Distributed, Intensity: string number } when IsAsked(load) =>
                AsSingle(cleared with { Intensity = null }, Point) with
                {
                    Force = CellShorthand.Expand(number, QuantityKind.Force, system),
                },
            _ => cleared,
        };
    }

    private static bool IsSpread(LoadEntry load) =>
        load.Kind == Distributed && (load.To is not null || load.Total is not null);

    private static LoadEntry AsDistributed(LoadEntry load) => load with
    {
        Kind = Distributed,
        From = load.From ?? load.At,
        At = null,
        Angle = null,
        Side = null,
    };

    private static LoadEntry AsSingle(LoadEntry load, string kind) => load with
    {
        Kind = kind,
        At = load.At ?? load.From,
        From = null,
        To = null,
        Axial = null,
        Angle = kind == Point ? load.Angle : null,
        Side = kind == Couple ? load.Side : null,
    };

    private static string? ExpandPlace(string? text, UnitSystem system) =>
        text is null ? null : CellShorthand.ExpandPlace(text, CellUnits.Of(QuantityKind.Length, system));

    // Takes off again the unit that the number was given when it was typed.
    private static string NumberOf(string force) => GivenUnit().Replace(force, "${sum}${number}");

    [GeneratedRegex(@"^(?:\((?<sum>.*)\) \* 1|(?<number>.*)) (?:kN|lbf)$", RegexOptions.CultureInvariant)]
    private static partial Regex GivenUnit();
}
