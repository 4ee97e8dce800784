using System.Collections.Immutable;

namespace FieldCheck.Reporting.Working;

/// <summary>Sets the lines of a working on a page of a given width.</summary>
internal sealed class WorkingPage
{
    private const int Indent = 3;
    private const int Continued = 8;

    // Keeps an operator with what follows it when a line is broken.
    private const char Tie = '\u0001';

    private static readonly string[] Operators = ["+", "-", "x", "/", "="];

    private readonly WorkingRequest _request;
    private readonly ImmutableArray<WorkingLine>.Builder _lines = ImmutableArray.CreateBuilder<WorkingLine>();
    private int _step;

    internal WorkingPage(WorkingRequest request)
    {
        _request = request;
    }

    internal ImmutableArray<WorkingLine> Lines => _lines.ToImmutable();

    internal void Step(string title)
    {
        _step++;
        if (_request.HasStepNames)
        {
            foreach (string line in TextFlow.Wrap($"{_step}. {title}", _request.Width, indent: Indent))
            {
                _lines.Add(new WorkingLine(line, WorkingLineKind.Step));
            }
        }
    }

    /// <summary>A sentence that explains; the short form leaves it out.</summary>
    internal void Say(string sentence)
    {
        if (!_request.IsShort)
        {
            Write(PlacesTied(sentence), WorkingLineKind.Words);
        }
    }

    internal void Say(IEnumerable<string> sentences)
    {
        foreach (string sentence in sentences)
        {
            Say(sentence);
        }
    }

    /// <summary>Sentences that the short form has too.</summary>
    internal void Tell(IEnumerable<string> sentences)
    {
        foreach (string sentence in sentences)
        {
            Write(PlacesTied(sentence), WorkingLineKind.Words);
        }
    }

    internal void Results(IEnumerable<string> sentences)
    {
        foreach (string sentence in sentences)
        {
            Result(sentence);
        }
    }

    internal void Result(string sentence) => Write(sentence, WorkingLineKind.Result);

    internal void Figures(string line) => Write(Tied(line), WorkingLineKind.Figures);

    /// <summary>Rows of a table, the first of them its head; where none is wanted or the page is too narrow for them, sentences that say the same.</summary>
    internal void Rows(IReadOnlyList<string> rows, IEnumerable<string> sentences)
    {
        if (_request.HasTables && rows.Max(row => row.Length) + Indent <= _request.Width)
        {
            WorkingLine[] lines =
                [.. rows.Select(row => new WorkingLine(new string(' ', Indent) + row.TrimEnd(), WorkingLineKind.Figures))];
            _lines.AddRange(lines.Select((line, i) => i == 0 ? line : line with { Head = lines[0].Text }));
            return;
        }

        foreach (string sentence in sentences)
        {
            Write(sentence, WorkingLineKind.Figures);
        }
    }

    private void Write(string text, WorkingLineKind kind)
    {
        string blank = new(' ', Indent);
        foreach (string line in TextFlow.Wrap(text, _request.Width - Indent, Continued - Indent))
        {
            _lines.Add(new WorkingLine((blank + line).Replace(Tie, ' '), kind));
        }
    }

    private static string PlacesTied(string line) =>
        line.Replace(" x = ", $" x{Tie}={Tie}", StringComparison.Ordinal);

    private static string Tied(string line)
    {
        string tied = PlacesTied(line);
        foreach (string one in Operators)
        {
            tied = tied.Replace($" {one} ", $" {one}{Tie}", StringComparison.Ordinal);
        }

        return tied;
    }
}
