using System.Diagnostics;
using System.Globalization;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>What may have gone wrong in stated figures, in words that follow "consistent with".</summary>
internal sealed class SlipWords
{
    private readonly BeamWords _words;
    private readonly BuiltBeam _beam;
    private readonly NamedLoad[] _loads;

    /// <summary>The words for slips with one beam.</summary>
    internal SlipWords(BeamWords words)
    {
        (_words, _beam) = (words, words.Beam);

        // As the cases hold them: case by case in the order of their first loads.
        _loads = [.. _beam.Model.Cases.SelectMany(one => _beam.Loads.Where(load => load.Case == one.Name))];
    }

    /// <summary>The slip, as "load 4 (chain block) left out".</summary>
    internal string Of(Slip slip) => slip switch
    {
        Slip.OwnWeightLeftOut => "own weight left out",
        Slip.OwnWeightPutIn => "own weight put in, which is not among the loads",
        Slip.Together both => $"{Of(both.First)} and {Of(both.Second)}",
        Slip.EndsSwapped => _beam.Supports.Length == 2
            ? $"{_beam.Supports[0].Label} and {_beam.Supports[1].Label} swapped"
            : "left and right swapped",
        Slip.SenseLeftOut => "sizes written without their sense (down, left or clockwise)",
        Slip.SimpleSpans => "each bay taken as a simple span",
        Slip.HingeOverlooked { Hinge: int hinge } => $"the hinge at {Length(_beam.Model.Hinges[hinge])} overlooked",
        Slip.HingeOverlooked => "every hinge overlooked",
        Slip.Pattern pattern => Pattern(pattern),
        Slip.SupportMoved moved => Moved(moved),
        Slip.LoadMissing missing => Missing(missing),
        Slip.OtherCombination or Slip.CommonFactor or Slip.OtherFactors => Factors(slip),
        Slip.FigureUnits or Slip.MomentUnits or Slip.LengthUnits => Units(slip),
        _ => OfLoad(slip),
    };

    private string Factors(Slip slip) => slip switch
    {
        Slip.OtherCombination other =>
            $"the combination {TypedLetters.Name(_beam, _beam.Model.Combinations[other.Combination].Name)} taken instead",
        Slip.CommonFactor { IsTakenOff: true } common => $"{Loads(common)} divided by {Number(common.Factor)}",
        Slip.CommonFactor common => $"a factor of {Number(common.Factor)} on {Loads(common)}",
        Slip.OtherFactors { Permanent: 1, Variable: 1 } => "loads without factors",
        Slip.OtherFactors two =>
            $"factors of {Number(two.Permanent)} on permanent and {Number(two.Variable)} on variable loads",
        _ => throw new UnreachableException(),
    };

    private static string Loads(Slip.CommonFactor common) =>
        common.IsOnVariableOnly ? "variable loads only" : "all loads";

    private static string Units(Slip slip) => slip switch
    {
        Slip.FigureUnits figures => $"every figure {Off(figures.Units, figures.IsTooGreat)}",
        Slip.MomentUnits moments => $"every moment {Off(moments.Units, moments.IsTooGreat)}",
        Slip.LengthUnits lengths => $"every length {Off(lengths.Units, lengths.IsTooGreat, "long", "short")}",
        _ => throw new UnreachableException(),
    };

    private string OfLoad(Slip slip) => slip switch
    {
        Slip.LoadLeftOut left => $"{Load(left.Load)} left out",
        Slip.LoadDoubled twice => $"{Load(twice.Load)} counted twice",
        Slip.LoadFromOtherEnd mirrored => $"{Load(mirrored.Load)} measured from the other end",
        Slip.LoadLumped lumped => $"{Load(lumped.Load)} taken as one force in its middle",
        Slip.LoadSpread spread when spread.From == 0 && spread.To == _beam.Model.Length =>
            $"{Load(spread.Load)} spread over the whole beam",
        Slip.LoadSpread spread =>
            $"{Load(spread.Load)} spread from {_words.Place(spread.From)} to {_words.Place(spread.To)}",
        Slip.LoadUnits size => $"{Load(size.Load)} {Off(size.Units, size.IsTooGreat)}",
        Slip.PlaceUnits place =>
            $"the place of {Load(place.Load)} {Off(place.Units, place.IsTooGreat, "far right", "far left")}",
        Slip.StretchUnits stretch =>
            $"the length of {Load(stretch.Load)} {Off(stretch.Units, stretch.IsTooGreat, "long", "short")}",
        Slip.TributaryWidth { Load: int load, Factor: < 1 } => $"{Load(load)} with half its width",
        Slip.TributaryWidth { Load: int load } => $"{Load(load)} with twice its width, or counted twice",
        Slip.TributaryWidth all => $"every spread load with {(all.Factor < 1 ? "half" : "twice")} its width",
        _ => throw new UnreachableException(),
    };

    /// <summary>A load, as "load 4 (chain block)"; own weight is named so.</summary>
    private string Load(int index)
    {
        NamedLoad load = _loads[index];
        string label = load.Label.Length == 0 ? "" : $" ({TypedLetters.Name(_beam, load.Label)})";
        return load.Row is int row ? $"load {row + 1}{label}" : "own weight";
    }

    private string Pattern(Slip.Pattern pattern)
    {
        double[] ends =
        [
            .. _beam.Model.Supports
                .Where(support => support.Across is not Restraint.None)
                .Select(support => support.Position)
                .Append(0)
                .Append(_beam.Model.Length)
                .Distinct()
                .Order(),
        ];
        string[] bays =
        [
            .. pattern.Bays.Select(bay => $"from {_words.Place(ends[bay])} to {_words.Place(ends[bay + 1])}"),
        ];
        return $"loads of {TypedLetters.Name(_beam, _beam.Model.Cases[pattern.Case].Name)} only {BeamWords.List(bays)}";
    }

    private string Moved(Slip.SupportMoved moved)
    {
        double by = moved.Position - _beam.Supports[moved.Support].Support.Position;
        string way = by < 0 ? "left" : "right";
        return $"{_beam.Supports[moved.Support].Label} at {Length(moved.Position)}, {Length(Math.Abs(by))} further {way}";
    }

    private string Missing(Slip.LoadMissing missing)
    {
        string size = _words.Say(Math.Abs(missing.Down), QuantityKind.Force);
        return $"a load of {size} at {Length(missing.Position)} {(missing.Down < 0 ? "too much" : "missing")}";
    }

    private static string Off(UnitMixUp units, bool isTooGreat, string more = "great", string less = "small") =>
        $"{Number(units.Ratio())} times too {(isTooGreat ? more : less)} ({Names(units)})";

    private static string Names(UnitMixUp units) => units switch
    {
        UnitMixUp.Thousand => "as from lb to kip, or N to kN",
        UnitMixUp.KilonewtonAndKip => "as from kN to kip",
        UnitMixUp.NewtonAndKilogram => "as from N to kg",
        UnitMixUp.PoundAndKilogram => "as from lb to kg",
        UnitMixUp.FootAndMetre => "as from ft to m",
        UnitMixUp.InchAndFoot => "as from in to ft",
        UnitMixUp.NewtonPerMetreAndPoundPerFoot => "as from N/m to lb/ft",
        UnitMixUp.NewtonMetreAndPoundFoot => "as from Nm to lb-ft",
        UnitMixUp.PoundFootAndKilogramMetre => "as from lb-ft to kg-m",
        _ => throw new UnreachableException(),
    };

    private string Length(double metres) => _words.Say(metres, QuantityKind.Length);

    private static string Number(double number) => number.ToString("G4", CultureInfo.InvariantCulture);
}
