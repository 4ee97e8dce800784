using FieldCheck.Fuzz;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Benchmarks;

/// <summary>Files made to keep the program busy: eight times the bytes cost about eight times the time, not sixty-four.</summary>
internal static class BusySection
{
    // The square would come to 8; what the larger one leaves to be collected, to more than 2.
    private const double Limit = 4;
    private const int Rounds = 7;
    private const int Few = 20_000;
    private const int Many = 8 * Few;

    private static readonly SectionCatalogue Catalogue = SectionCatalogue.BuiltIn();

    internal static void Run(Report report)
    {
        report.Section("Files made to keep the program busy");
        report.Row("", "20,000 bytes", "160,000 bytes", "time a byte");
        (string Name, double Few, double Many)[] all = [.. BusyFiles.Names.Select(Measured)];
        foreach ((string name, double few, double many) in all)
        {
            report.Row(name, Report.Time(few), Report.Time(many), Report.Times(many / few / 8));
        }

        (string slowest, double less, double more) = all.MaxBy(file => file.Many / file.Few);
        double growth = more / less / 8;
        report.Promise($"Time a byte, 160,000 bytes against 20,000, worst: {slowest}", growth, Limit, growth <= Limit);
    }

    // In turns, so that a busy spell of the machine falls on both; the least disturbed of each counts.
    private static (string Name, double Few, double Many) Measured(string name)
    {
        string few = BusyFiles.Of(name, Few);
        string many = BusyFiles.Of(name, Many);
        double least = double.PositiveInfinity;
        double most = double.PositiveInfinity;
        for (int round = 0; round < Rounds; round++)
        {
            least = Math.Min(least, ProcessorSeconds(few, 8));
            most = Math.Min(most, ProcessorSeconds(many, 1));
        }

        return (name, least, most);
    }

    // Time that the processor spent on it, not time that passed: others may be using the machine.
    private static double ProcessorSeconds(string text, int calls)
    {
        TimeSpan before = Environment.CpuUsage.TotalTime;
        for (int call = 0; call < calls; call++)
        {
            Read(text);
        }

        return (Environment.CpuUsage.TotalTime - before).TotalSeconds / calls;
    }

    private static void Read(string text)
    {
        if (BeamFileText.Read("a.toml", text) is BeamFileReading.Opened opened)
        {
            opened.Origin.Locate(Calculation.Run(opened.Document, Catalogue, new BeamSolver()).Problems);
        }
    }
}
