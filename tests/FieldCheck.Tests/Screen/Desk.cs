using System.Collections.Immutable;
using System.Text;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

/// <summary>A person at the screen: presses keys, and has files and presets that only exist here.</summary>
internal sealed class Desk
{
    private static readonly SectionCatalogue Catalogue = SectionCatalogue.BuiltIn();

    private readonly BeamSolver _solver = new();

    internal Desk()
        : this(FormSheet.Empty.Document, BeamOrigin.NewBeam)
    {
    }

    internal Desk(BeamDocument document, BeamOrigin origin, Preferences? preferences = null)
    {
        State = ScreenState.Start(document, origin, Calculate) with { Preferences = preferences ?? new Preferences() };
    }

    internal ScreenState State { get; private set; }

    internal int Presses { get; private set; }

    internal int Calculations { get; private set; }

    internal Dictionary<string, BeamFileText> Files { get; } = [];

    /// <summary>What was saved besides beams.</summary>
    internal Dictionary<string, string> Texts { get; } = [];

    /// <summary>What the list of beams shows besides the files here.</summary>
    internal ImmutableArray<BeamChoice> Choices { get; set; } = [];

    internal static DateOnly Today { get; } = new(2025, 10, 14);

    internal int LeftOut { get; set; }

    internal List<Effect> Effects { get; } = [];

    internal bool HasLeft => Effects.Any(effect => effect is Effect.Quit);

    internal string Says => MessageLine.Of(State).Text;

    internal string Picture => Show(80, 24).ToString();

    internal Desk Press(string keys) => Press(Keys.Read(keys));

    internal Desk Press(IEnumerable<KeyStroke> keys)
    {
        foreach (KeyStroke key in keys)
        {
            Presses++;
            Happen(new ScreenEvent.Key(key));
        }

        return this;
    }

    internal Desk Happen(ScreenEvent first)
    {
        Queue<ScreenEvent> happenings = new([first]);
        while (happenings.TryDequeue(out ScreenEvent? happening))
        {
            ScreenStep step = ScreenUpdate.Apply(State, happening);
            State = step.State;
            foreach (Effect effect in step.Effects)
            {
                Effects.Add(effect);
                if (Perform(effect) is ScreenEvent answer)
                {
                    happenings.Enqueue(answer);
                }
            }
        }

        return this;
    }

    internal Picture Show(int width, int height) => ScreenPicture.Of(State, width, height);

    private Calculation Calculate(BeamDocument document)
    {
        Calculations++;
        return Calculation.Run(document, Catalogue, _solver);
    }

    /// <summary>Performs an effect in the place of the shell.</summary>
    internal ScreenEvent? Perform(Effect effect)
    {
        switch (effect)
        {
            case Effect.FindBeams:
                return new ScreenEvent.BeamsFound(FoundBeams.Of(Choices, LeftOut, Today));
            case Effect.FindSets:
                return new ScreenEvent.SetsFound(new CombinationSearch(CombinationLibrary.BuiltIn(), []));
            case Effect.FindCatalogue:
                return new ScreenEvent.CatalogueFound(Catalogue);
            case Effect.Save save when !save.Overwrite && save.Known is null && Files.ContainsKey(save.Path):
                return new ScreenEvent.SaveRefused(save.Path, SaveObstacle.Exists, "");
            case Effect.Save save when !save.Overwrite && save.Known is BeamFileText known
                && Files.TryGetValue(save.Path, out BeamFileText? stands) && stands.Text != known.Text:
                return new ScreenEvent.SaveRefused(save.Path, SaveObstacle.ChangedOnDisk, "");
            case Effect.Save save:
                Files[save.Path] = save.Text;
                return new ScreenEvent.Saved(save.Path, save.Text, "09:41");
            case Effect.SavePaper save when !save.Overwrite && Texts.ContainsKey(save.Path):
                return new ScreenEvent.PaperRefused(save, SaveObstacle.Exists, "");
            case Effect.SavePaper save:
                Texts[save.Path] = Encoding.UTF8.GetString(save.Paper.Bytes(Catalogue));
                return new ScreenEvent.PaperSaved(save.Path, "09:41");
            case Effect.Open open:
                return Open(open);
            default:
                return null;
        }
    }

    private ScreenEvent Open(Effect.Open open)
    {
        string path = open.Path;
        if (!Files.TryGetValue(path, out BeamFileText? text))
        {
            return new ScreenEvent.FileMissing(path);
        }

        return BeamFileText.Read(path, text.Text) switch
        {
            BeamFileReading.Opened opened =>
                new ScreenEvent.Opened(path, opened.Document, BeamOrigin.File(path, opened.Origin).As(open.As)),
            BeamFileReading.Refused refused => new ScreenEvent.OpenRefused(path, refused.Problems),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
