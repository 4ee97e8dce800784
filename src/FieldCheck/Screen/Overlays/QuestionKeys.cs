using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Overlays;

/// <summary>Keys that answer a question asked in one line.</summary>
internal static class QuestionKeys
{
    /// <summary>Enter takes up the work offered; any other key leaves it kept and does what it does.</summary>
    internal static ScreenStep Press(ScreenState state, Overlay.RecoveryOffer offer, KeyStroke stroke) => stroke switch
    {
        KeyStroke.Named { Key: KeyName.Enter } => FileAnswers.TakeUp(state, offer),
        KeyStroke.Text { Grapheme: "n" } when offer.HasMore =>
            (state with { Overlay = null }).Step(new Effect.OfferNextRecovery()),
        KeyStroke.Named { Key: KeyName.Escape } => (state with { Overlay = null }).Step(),
        _ => ScreenViews.Of(state.View).Press(state with { Overlay = null }, stroke),
    };

    internal static ScreenStep Press(ScreenState state, Overlay.UnsavedQuestion question, KeyStroke stroke) =>
        Letter(stroke) switch
        {
            "s" => FileSteps.Save(state with { Overlay = null }, question.Then),
            "l" => FileSteps.After(state with { Overlay = null }, question.Then),
            _ => state.Step(),
        };

    internal static ScreenStep Press(ScreenState state, Overlay.SaveQuestion question, KeyStroke stroke)
    {
        bool isChanged = question.Obstacle == SaveObstacle.ChangedOnDisk;
        ScreenState closed = state with { Overlay = null };
        return (Letter(stroke), isChanged) switch
        {
            ("m", true) or ("o", false) => FileSteps.Overwrite(closed, question.Request),
            ("t", true) => closed.Step(new Effect.Open(question.Request.Save.Path)),
            ("n", _) => (state with { Overlay = new Overlay.NameLine(LineText.Empty, question.Request.Then) }).Step(),
            _ => state.Step(),
        };
    }

    internal static ScreenStep Press(ScreenState state, Overlay.PaperQuestion question, KeyStroke stroke) =>
        Letter(stroke) switch
        {
            "o" => (state with { Overlay = null }).Step(question.Request with { Overwrite = true }),
            "n" => (state with { Overlay = new Overlay.PaperName(question.Request.Paper.Kind, LineText.Empty) }).Step(),
            _ => state.Step(),
        };

    internal static ScreenStep Press(ScreenState state, Overlay.MissingFile question, KeyStroke stroke) =>
        Letter(stroke) == "n"
            ? FileSteps.Begin(state, BeamOrigin.File(FileSteps.WithExtension(question.Path), null)).Step()
            : state.Step();

    /// <summary>The question in words, with the keys that answer it.</summary>
    /// <param name="state">The state.</param>
    /// <param name="overlay">What lies over the view.</param>
    /// <returns>Null where it is no question.</returns>
    internal static (string Question, string Keys)? Words(ScreenState state, Overlay overlay) => overlay switch
    {
        Overlay.UnsavedQuestion { Then: AfterSave.Leave } =>
            ($"Save {state.Origin.Name} before leaving?", "s save   l leave (kept for recovery)   Esc stay"),
        Overlay.UnsavedQuestion =>
            ($"Save {state.Origin.Name} first?", "s save   l go on (kept for recovery)   Esc stay"),
        Overlay.SaveQuestion { Obstacle: SaveObstacle.ChangedOnDisk } question => (
            $"{question.Request.Save.Path} was changed on disk by someone else.",
            "m keep mine   t take theirs   n save under another name   Esc back"),
        Overlay.SaveQuestion question => IsThere(question.Request.Save.Path),
        Overlay.PaperQuestion question => IsThere(question.Request.Path),
        Overlay.MissingFile question =>
            ($"There is no file {question.Path}.", "n begin a new beam of that name   Esc back to the list"),
        Overlay.RecoveryOffer offer => (
            offer.Words,
            $"Enter take it up again   {(offer.HasMore ? "n the next one   " : "")}any other key leaves it kept"),
        _ => null,
    };

    private static (string Question, string Keys) IsThere(string path) =>
        ($"{path} is there already.", "o overwrite it   n another name   Esc back");

    private static string? Letter(KeyStroke stroke) => (stroke as KeyStroke.Text)?.Grapheme.ToLowerInvariant();
}
