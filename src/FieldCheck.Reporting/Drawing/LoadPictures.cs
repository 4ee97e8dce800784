using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>The loads of a beam as the sketch shows them, each times the factor of its case.</summary>
internal static class LoadPictures
{
    private const int LightRank = 0;
    private const int SpreadRank = 1;
    private const int CoupleRank = 2;
    private const int PointRank = 3;

    internal static ImmutableArray<LoadPicture> Of(BuiltBeam beam, Combination? combination)
    {
        double heaviest = beam.Loads.Max(named => (double?)Intensity(named.Load)) ?? 0;
        return
        [
            .. beam.Loads
                .Select(named => (named, factor: FactorOf(beam, named, combination)))
                .Where(pair => pair.factor != 0)
                .Select(pair => Of(beam, pair.named, pair.factor, heaviest)),
        ];
    }

    /// <summary>The factor of the case of a load; 1 without a combination.</summary>
    internal static double FactorOf(BuiltBeam beam, NamedLoad named, Combination? combination)
    {
        if (combination is null)
        {
            return 1;
        }

        for (int i = 0; i < beam.Model.Cases.Length; i++)
        {
            if (beam.Model.Cases[i].Name == named.Case)
            {
                return combination.Factors[i];
            }
        }

        return 0;
    }

    private static LoadPicture Of(BuiltBeam beam, NamedLoad named, double factor, double heaviest)
    {
        LoadWords words = new(new BeamWords(beam));
        string number = named.Row is int row ? $"{row + 1}" : "";
        string label = (number.Length > 0 ? number + ": " : "own weight ") + words.Size(named.Load, factor);
        return named.Load switch
        {
            Load.Point point => new LoadPicture(
                point.Position,
                point.Position,
                _ => PointGlyph(point.Down * factor, point.Right * factor),
                PointRank,
                Math.Max(Math.Abs(point.Down), Math.Abs(point.Right)) * Math.Abs(factor),
                number,
                label),
            Load.Couple couple => new LoadPicture(
                couple.Position,
                couple.Position,
                _ => CoupleGlyph(couple.Moment * factor),
                CoupleRank,
                Math.Abs(couple.Moment * factor) * 4 / beam.Model.Length,
                number,
                label),
            Load.Distributed spread => Spread(spread, factor, IsLight(beam, named, spread, heaviest), number, label),
            _ => throw new UnreachableException(),
        };
    }

    private static LoadPicture Spread(
        Load.Distributed spread, double factor, bool isLight, string number, string label)
    {
        return new LoadPicture(
            spread.From,
            spread.To,
            place => SpreadGlyph(spread, factor * IntensityAt(spread, place), isLight),
            isLight ? LightRank : SpreadRank,
            Math.Abs((spread.StartIntensity + spread.EndIntensity) * factor) / 2 * (spread.To - spread.From),
            number,
            label);
    }

    private static char PointGlyph(double down, double right) => (down, right) switch
    {
        ( > 0, > 0) => '\\',
        ( > 0, < 0) => '/',
        ( > 0, _) => 'V',
        ( < 0, _) => LoadPicture.Uplift,
        (_, < 0) => '<',
        (_, > 0) => '>',
        _ => LoadPicture.None,
    };

    private static char CoupleGlyph(double counterClockwise) => counterClockwise switch
    {
        > 0 => '(',
        < 0 => ')',
        _ => LoadPicture.None,
    };

    private static char SpreadGlyph(Load.Distributed spread, double intensity, bool isLight) => intensity switch
    {
        0 => LoadPicture.None,
        > 0 when spread.ActsAlong => '>',
        < 0 when spread.ActsAlong => '<',
        < 0 => LoadPicture.SpreadUplift,
        _ => isLight ? '.' : 'v',
    };

    private static double IntensityAt(Load.Distributed spread, double place)
    {
        double share = Math.Clamp((place - spread.From) / (spread.To - spread.From), 0, 1);
        return (1 - share) * spread.StartIntensity + share * spread.EndIntensity;
    }

    /// <summary>Own weight, and what lies all along no more than half as heavy as the heaviest.</summary>
    private static bool IsLight(BuiltBeam beam, NamedLoad named, Load.Distributed spread, double heaviest)
    {
        bool isAll = spread.From == 0 && spread.To == beam.Model.Length;
        return named.Row is null || (isAll && Intensity(spread) <= heaviest / 2);
    }

    private static double Intensity(Load load) => load is Load.Distributed { ActsAlong: false } spread
        ? Math.Max(Math.Abs(spread.StartIntensity), Math.Abs(spread.EndIntensity))
        : 0;
}
