using System.Globalization;

namespace FieldCheck.Benchmarks;

/// <summary>Writes the table and remembers whether every promise was kept.</summary>
internal sealed class Report(TextWriter to)
{
    private readonly List<string> _broken = [];

    internal void Section(string title) => to.WriteLine($"\n{title}\n{new string('-', title.Length)}");

    internal void Row(string name, params string[] figures) =>
        to.WriteLine($"{name,-34}{string.Concat(figures.Select(figure => $"{figure,16}"))}");

    /// <summary>Prints a promise and whether it was kept.</summary>
    internal void Promise(string promise, double figure, double limit, bool isKept)
    {
        string text = string.Create(CultureInfo.InvariantCulture, $"{promise}: {figure:0.##} (limit {limit:0.##})");
        to.WriteLine($"{(isKept ? "kept  " : "BROKEN")}  {text}");
        if (!isKept)
        {
            _broken.Add(text);
        }
    }

    /// <summary>Sums up.</summary>
    /// <returns>0 when every promise was kept, else 1.</returns>
    internal int Close()
    {
        to.WriteLine(_broken.Count == 0 ? "\nEvery promise was kept." : $"\nBroken: {string.Join("; ", _broken)}");
        return _broken.Count == 0 ? 0 : 1;
    }

    internal static string Time(double seconds) => seconds switch
    {
        < 1e-3 => string.Create(CultureInfo.InvariantCulture, $"{seconds * 1e6:0.00} µs"),
        < 1 => string.Create(CultureInfo.InvariantCulture, $"{seconds * 1e3:0.00} ms"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.00} s"),
    };

    internal static string Bytes(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes:#,0} B");

    internal static string Times(double ratio) => string.Create(CultureInfo.InvariantCulture, $"{ratio:0.00} x");
}
