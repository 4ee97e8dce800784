using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Units;

namespace FieldCheck.CommandLine;

/// <summary>Checks one file after the other, all in the same way.</summary>
/// <param name="catalogue">Sections and materials that the files may name.</param>
/// <param name="units">The units to show; null for those that each file asks for.</param>
/// <param name="option">The option that asks for places.</param>
/// <param name="places">The places asked for, as typed.</param>
internal sealed class CheckRun(
    SectionCatalogue catalogue, UnitSystem? units, string option, params ImmutableArray<string> places)
{
    /// <summary>What names standard input.</summary>
    internal const string StandardInput = "-";

    private readonly BeamSolver _solver = new();

    /// <summary>Checks one file.</summary>
    /// <param name="file">As it was named; "-" is standard input.</param>
    /// <param name="environment">Where it lies.</param>
    internal BeamCheck Of(string file, CommandEnvironment environment) => Of(file == StandardInput
        ? BeamFileOnDisk.Open(Named(file), environment.OpenInput())
        : OnDisk(file, environment));

    /// <summary>Checks one file on the disk, whatever its name.</summary>
    /// <param name="file">As it was named.</param>
    /// <param name="environment">Where it lies.</param>
    internal BeamCheck OfFile(string file, CommandEnvironment environment) => Of(OnDisk(file, environment));

    /// <summary>The name of a file as problems show it.</summary>
    /// <param name="file">As it was named.</param>
    internal static string Named(string file) => file == StandardInput ? "standard input" : file;

    /// <summary>The name of a file as results show it: standard input has none.</summary>
    /// <param name="file">As it was named.</param>
    internal static string Shown(string file) => file == StandardInput ? "" : file;

    /// <summary>Checks one file.</summary>
    /// <param name="reading">What came of reading it.</param>
    internal BeamCheck Of(BeamFileReading reading) => reading switch
    {
        BeamFileReading.Refused refused => new BeamCheck.Unusable(ProblemsOf(refused)),
        BeamFileReading.Opened opened => Of(opened),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What was not understood, and with it the cells that do not read.</summary>
    private ImmutableArray<FileProblem> ProblemsOf(BeamFileReading.Refused refused) =>
        refused.Rest is BeamFileReading.Opened rest && ModelBuilder.Build(rest.Document, catalogue) is BuildOutcome.Refused unread
            ? FileProblem.InOrder(
            [
                .. refused.Problems,
                .. rest.Origin.LocateStanding(unread.Problems),
            ])
            : refused.Problems;

    private static BeamFileReading OnDisk(string file, CommandEnvironment environment) =>
        BeamFileOnDisk.Open(file, Path.GetFullPath(file, environment.CurrentFolder));

    private BeamCheck Of(BeamFileReading.Opened opened)
    {
        Calculation calculation = Calculation.Run(InUnits(opened.Document), catalogue, _solver);
        if (calculation.Beam is null)
        {
            return new BeamCheck.Unusable(opened.Origin.Locate(calculation.Problems));
        }

        (ImmutableArray<AskedPlace> at, ImmutableArray<FileProblem> problems) =
            AskedPlaces.On(opened.Origin.Name, calculation.Beam, option, places);
        return problems.IsEmpty ? new BeamCheck.Calculated(calculation, at, opened.Origin) : new BeamCheck.Unusable(problems);
    }

    private BeamDocument InUnits(BeamDocument document) => units switch
    {
        UnitSystem.Us => document with { Display = "us" },
        UnitSystem.Si => document with { Display = "si" },
        _ => document,
    };
}
