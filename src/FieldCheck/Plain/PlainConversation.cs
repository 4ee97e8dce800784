using FieldCheck.CommandLine;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting;
using FieldCheck.Screen;
using FieldCheck.Sheet;
using FieldCheck.Views;

namespace FieldCheck.Plain;

/// <summary>A conversation in lines: says what comes of each event and performs what follows from it.</summary>
internal sealed class PlainConversation
{
    private const int Width = 79;

    private readonly ScreenEffects _effects;
    private readonly Printout _printout;
    private readonly bool _isAscii;

    private readonly string? _problem;

    /// <param name="start">What to open with.</param>
    /// <param name="printout">Where everything is said.</param>
    /// <param name="isAscii">True: the terminal shows nothing but ASCII.</param>
    internal PlainConversation(StartRequest start, Printout printout, bool isAscii)
    {
        _effects = new ScreenEffects(start);
        _printout = printout;
        _isAscii = isAscii;
        _problem = start.Problem;
        BeamSolver solver = new();
        State = PlainGreeting.StateAt(start, document => Calculation.Run(document, start.Catalogue, solver, isFollowed: true));
    }

    /// <summary>The conversation as it is now.</summary>
    internal PlainState State { get; private set; }

    /// <summary>True: the person has left, or nothing more can be typed.</summary>
    internal bool HasEnded { get; private set; }

    /// <summary>Says what there is, and offers what an earlier session left.</summary>
    internal void Begin()
    {
        Say(PlainGreeting.Of(State));
        _effects.RememberStart();
        if (_problem is string problem)
        {
            Happen(new PlainEvent.Happened(new ScreenEvent.Told(problem)));
        }

        if (_effects.FindLeftBehind() is ScreenEvent offer)
        {
            Happen(new PlainEvent.Happened(offer));
        }
    }

    /// <summary>Asks what the next line is to answer.</summary>
    internal void Ask() => _printout.Prompt(Written(PlainQuestions.Of(State)));

    /// <summary>Lets something happen, and performs what follows from it.</summary>
    /// <param name="first">What.</param>
    internal void Happen(PlainEvent first)
    {
        Queue<PlainEvent> happenings = new([first]);
        while (happenings.TryDequeue(out PlainEvent? happening))
        {
            PlainStep step = PlainUpdate.Apply(State, happening);
            State = step.State;
            Say(step.Says);
            foreach (Effect effect in step.Effects)
            {
                if (Perform(effect) is ScreenEvent answer)
                {
                    happenings.Enqueue(new PlainEvent.Happened(answer));
                }
            }
        }
    }

    /// <summary>Keeps what is unsaved where the program fails, and says where.</summary>
    internal void KeepAtOnce()
    {
        _effects.KeepAtOnce(State.Form);
        _effects.SayWhereWorkIs();
    }

    private ScreenEvent? Perform(Effect effect)
    {
        if (effect is not Effect.Quit)
        {
            return _effects.Perform(effect);
        }

        HasEnded = true;
        return null;
    }

    // Drawings are narrower than this and stay as they are; a sentence is broken between words, as no terminal does.
    private void Say(IEnumerable<string> lines)
    {
        string[] broken = [.. lines.Select(Written).SelectMany(line =>
            line.Length <= Width ? [line] : TextFlow.Wrap(line, Width))];
        if (broken.Length > 0)
        {
            _printout.Result(string.Join('\n', broken));
        }
    }

    private string Written(string line) => _isAscii ? PlainAscii.Of(line) : line;
}
