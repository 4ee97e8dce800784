using System.Globalization;
using System.Text;

namespace FieldCheck.Tests.Terminal;

/// <summary>
/// What a terminal shows of the bytes written to it: as much of ECMA-48 and its private modes as the program uses.
/// </summary>
/// <remarks>A line feed goes down and no more, as on a real terminal: text of a line left raw comes out in steps.</remarks>
internal sealed class TerminalImage
{
    private readonly StringBuilder _pending = new();
    private readonly HashSet<int> _modes = [25];
    private string[][] _cells;
    private string[][]? _mainScreen;
    private int _x;
    private int _y;

    internal TerminalImage(int width, int height)
    {
        _cells = Blank(width, height);
    }

    internal IReadOnlySet<int> Modes => _modes;

    private int Width => _cells[0].Length;

    private int Height => _cells.Length;

    public override string ToString() =>
        string.Join('\n', _cells.Select(line => string.Concat(line).TrimEnd(' '))).TrimEnd('\n');

    internal void Resize(int width, int height)
    {
        _cells = Blank(width, height);
        _x = Math.Min(_x, width - 1);
        _y = Math.Min(_y, height - 1);
    }

    /// <summary>Takes what was written.</summary>
    /// <returns>What the terminal answers to questions in it.</returns>
    internal string Write(ReadOnlySpan<char> text)
    {
        string all = _pending.Append(text).ToString();
        _pending.Clear();
        StringBuilder answers = new();
        int at = 0;
        while (at < all.Length)
        {
            int next = all[at] == '\u001b' ? Sequence(all, at, answers) : Letter(all, at);
            if (next < 0)
            {
                _pending.Append(all, at, all.Length - at);
                break;
            }

            at = next;
        }

        return answers.ToString();
    }

    private static string[][] Blank(int width, int height) =>
        [.. Enumerable.Range(0, height).Select(_ => Enumerable.Repeat(" ", width).ToArray())];

    // A sequence that is not whole yet gives -1.
    private int Sequence(string text, int at, StringBuilder answers)
    {
        if (at + 1 >= text.Length)
        {
            return -1;
        }

        if (text[at + 1] is ']' or 'P' or '_' or '^')
        {
            int bell = text.IndexOf('\u0007', at);
            int end = text.IndexOf("\u001b\\", at + 1, StringComparison.Ordinal);
            return (bell, end) switch
            {
                (-1, -1) => -1,
                (-1, _) => end + 2,
                (_, -1) => bell + 1,
                _ => bell < end ? bell + 1 : end + 2,
            };
        }

        if (text[at + 1] != '[')
        {
            return at + 2;
        }

        int last = at + 2;
        while (last < text.Length && text[last] is < '@' or > '~')
        {
            last++;
        }

        if (last == text.Length)
        {
            return -1;
        }

        Control(text[(at + 2)..last], text[last], answers);
        return last + 1;
    }

    private void Control(string parameters, char final, StringBuilder answers)
    {
        bool isPrivate = parameters.StartsWith('?');
        int[] numbers = [.. parameters.TrimStart('?', '>', '<', '=').Split(';')
            .Select(part => int.TryParse(part, CultureInfo.InvariantCulture, out int number) ? number : 0)];
        int first = Math.Max(numbers[0], 1);
        switch (final)
        {
            case 'h' or 'l' when isPrivate:
                Array.ForEach(numbers, mode => SetMode(mode, final == 'h'));
                break;
            case 'H' or 'f':
                _y = Math.Min(first, Height) - 1;
                _x = Math.Min(numbers.Length > 1 ? Math.Max(numbers[1], 1) : 1, Width) - 1;
                break;
            case 'A':
                _y = Math.Max(_y - first, 0);
                break;
            case 'B':
                _y = Math.Min(_y + first, Height - 1);
                break;
            case 'C':
                _x = Math.Min(_x + first, Width - 1);
                break;
            case 'D':
                _x = Math.Max(_x - first, 0);
                break;
            case 'J' when numbers[0] is 2 or 3:
                _cells = Blank(Width, Height);
                break;
            case 'K':
                Array.Fill(_cells[_y], " ", numbers[0] == 0 ? _x : 0, numbers[0] == 1 ? _x + 1 : Width - (numbers[0] == 0 ? _x : 0));
                break;
            case 'n' when numbers[0] == 6:
                answers.Append(CultureInfo.InvariantCulture, $"\u001b[{_y + 1};{_x + 1}R");
                break;
            case 'c' when !parameters.StartsWith('>'):
                answers.Append("\u001b[?62;22c");
                break;
            case 't' when numbers[0] == 18:
                answers.Append(CultureInfo.InvariantCulture, $"\u001b[8;{Height};{Width}t");
                break;
        }
    }

    private void SetMode(int mode, bool isOn)
    {
        _ = isOn ? _modes.Add(mode) : _modes.Remove(mode);
        if (mode != 1049)
        {
            return;
        }

        if (isOn)
        {
            _mainScreen = _cells;
            _cells = Blank(Width, Height);
        }
        else if (_mainScreen is { } main)
        {
            _cells = main[0].Length == Width && main.Length == Height ? main : Blank(Width, Height);
            (_x, _y, _mainScreen) = (0, 0, null);
        }
    }

    private int Letter(string text, int at)
    {
        switch (text[at])
        {
            case '\r':
                _x = 0;
                return at + 1;
            case '\n':
                Down();
                return at + 1;
            case '\b':
                _x = Math.Max(_x - 1, 0);
                return at + 1;
            case < ' ':
                return at + 1;
        }

        int length = StringInfo.GetNextTextElementLength(text, at);
        if (_x >= Width)
        {
            _x = 0;
            Down();
        }

        _cells[_y][_x] = text.Substring(at, length);
        _x++;
        return at + length;
    }

    private void Down()
    {
        if (_y < Height - 1)
        {
            _y++;
            return;
        }

        _cells = [.. _cells[1..], [.. Enumerable.Repeat(" ", Width)]];
    }
}
