using System.Collections.Immutable;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Plain;

/// <summary>Questions about files and their answers: the same as the form asks, in words for keys.</summary>
internal static class PlainAnswers
{
    /// <summary>What is said before the question.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="overlay">What is asked.</param>
    internal static ImmutableArray<string> Question(PlainState state, Overlay overlay) => overlay switch
    {
        Overlay.SaveQuestion { Obstacle: SaveObstacle.ChangedOnDisk } => [Words(state, overlay),
            "Mine is saved in its place, or theirs is taken up here, or mine is saved under another name."],
        Overlay.RecoveryOffer or Overlay.UnsavedQuestion or Overlay.SaveQuestion or Overlay.PaperQuestion
            or Overlay.MissingFile => [Words(state, overlay)],
        _ => [],
    };

    /// <summary>What an answer comes to; what is no answer is asked again.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="overlay">What was asked.</param>
    /// <param name="line">The answer.</param>
    internal static PlainStep Answer(PlainState state, Overlay overlay, string line)
    {
        string word = line.ToLowerInvariant();
        ScreenState closed = state.Form with { Overlay = null };
        PlainState back = state with { Form = closed, Wanted = null };
        return (overlay, word) switch
        {
            (Overlay.RecoveryOffer offer, "yes" or "y") => state.With(FileAnswers.TakeUp(state.Form, offer)),
            (Overlay.RecoveryOffer, "no" or "n") =>
                back.Say("It stays kept, for seven days.", PlainWords.Outcome(closed)),
            (Overlay.RecoveryOffer, _) => PlainCommands.Of(line) is null
                ? state.Say("Answer yes or no.")
                : PlainCommands.Run(back, line),
            (Overlay.UnsavedQuestion question, "yes" or "y" or "save") =>
                PlainFiles.Asking(state, FileSteps.Save(closed, question.Then)),
            (Overlay.UnsavedQuestion { Then: AfterSave.Leave leave }, "no" or "n" or "leave") => state
                .With(FileSteps.After(closed, leave), "What is not saved is kept; the next start offers it."),
            (Overlay.UnsavedQuestion question, "no" or "n") => state.With(FileSteps.After(closed, question.Then)),
            (Overlay.UnsavedQuestion, "stay" or "") => back.Say(),
            (Overlay.UnsavedQuestion, _) => state.Say("Answer yes, no or stay."),
            (Overlay.NameLine, "") => back.Say("Not saved."),
            (Overlay.NameLine name, _) => state.With(FileSteps.SaveAs(closed, line, name.Then)),
            (Overlay.PaperName or Overlay.PaperQuestion, "") or (Overlay.PaperQuestion, "back") => back.Say("Not saved."),
            (Overlay.PaperName paper, _) => state.With(PaperFile.Save(closed, paper.Kind, line)),
            (Overlay.PaperQuestion question, "overwrite") =>
                state.With(closed.Step(question.Request with { Overwrite = true })),
            (Overlay.PaperQuestion question, "name" or "another" or "another name") => (state with
            {
                Form = closed with { Overlay = new Overlay.PaperName(question.Request.Paper.Kind, LineText.Empty) },
            }).Say(),
            (Overlay.PaperQuestion, _) => state.Say("Answer overwrite, name or back."),
            (Overlay.SaveQuestion question, _) => OfSaving(state, back, question, line),
            (Overlay.MissingFile missing, "yes" or "y") => state.With(FileSteps.Begin(
                closed, BeamOrigin.File(FileSteps.WithExtension(missing.Path), null)).Step()),
            (Overlay.MissingFile, "no" or "n" or "") => back.Say(),
            (Overlay.MissingFile, _) => state.Say("Answer yes or no."),
            (Overlay.OpenList list, _) => PlainOpening.Choose(state, list, line),
            (Overlay.SetList list, _) => PlainSets.Answer(state, list, line),
            (Overlay.CatalogueList list, _) => PlainCatalogue.Answer(state, list, line),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    // A name may be typed at once: "name" alone asks for it.
    private static PlainStep OfSaving(PlainState state, PlainState back, Overlay.SaveQuestion question, string line)
    {
        bool isChanged = question.Obstacle == SaveObstacle.ChangedOnDisk;
        AfterSave then = question.Request.Then;
        return (line.ToLowerInvariant(), isChanged) switch
        {
            ("mine", true) or ("overwrite", false) => back.With(FileSteps.Overwrite(back.Form, question.Request)),
            ("theirs", true) => back.With(back.Form.Step(new Effect.Open(question.Request.Save.Path))),
            ("back" or "", _) => back.Say("Not saved."),
            ("name" or "another" or "another name", _) =>
                (back with { Form = back.Form with { Overlay = new Overlay.NameLine(LineText.Empty, then) } }).Say(),
            _ => state.Say(isChanged
                ? "Answer mine, theirs, name or back."
                : "Answer overwrite, name or back."),
        };
    }

    private static string Words(PlainState state, Overlay overlay) =>
        QuestionKeys.Words(state.Form, overlay)!.Value.Question;
}
