using FieldCheck.CommandLine;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Tests.Screen;
using FieldCheck.Views;

namespace FieldCheck.Tests.Faults;

/// <summary>The form, with real files in a folder.</summary>
internal sealed class FormOnDisk
{
    private readonly ScreenEffects _effects;
    private readonly BeamSolver _solver = new();

    /// <summary>Opens a beam that stands in a folder.</summary>
    /// <param name="folder">The folder; what the program keeps lies in "state" below it, or in another one.</param>
    /// <param name="name">The file.</param>
    /// <param name="state">Where unsaved work is kept.</param>
    internal FormOnDisk(string folder, string name, string? state = null)
    {
        BeamFileReading.Opened opened = (BeamFileReading.Opened)BeamFileOnDisk.Open(name, Path.Combine(folder, name));
        Kept = Path.Combine(state ?? Path.Combine(folder, "state"), "recover");
        _effects = new ScreenEffects(new StartRequest
        {
            Path = name,
            Document = opened.Document,
            Origin = opened.Origin,
            NoColor = true,
            CurrentFolder = folder,
            HomeFolder = folder,
            Clock = TimeProvider.System,
            Folders = new Folders(Path.Combine(folder, "mine"), [], Path.GetDirectoryName(Kept)!, Path.Combine(folder, "settings.toml")),
        });
        State = ScreenState.Start(opened.Document, BeamOrigin.File(name, opened.Origin), Calculate);
    }

    internal ScreenState State { get; private set; }

    /// <summary>The folder of the unsaved work.</summary>
    internal string Kept { get; }

    internal string Says => MessageLine.Of(State).Text;

    internal string Picture => ScreenPicture.Of(State, 100, 30).ToString();

    internal FormOnDisk Press(string keys)
    {
        foreach (KeyStroke key in Keys.Read(keys))
        {
            Happen(new ScreenEvent.Key(key));
        }

        return this;
    }

    /// <summary>Keeps unsaved work, as the program does a moment after the last key.</summary>
    internal void Keep() => Happen(_effects.Perform(FileSteps.Recovery(State, State.Document)));

    private void Happen(ScreenEvent? happening)
    {
        if (happening is null)
        {
            return;
        }

        ScreenStep step = ScreenUpdate.Apply(State, happening);
        State = step.State;
        foreach (Effect effect in step.Effects.Where(effect => effect is not (Effect.Quit or Effect.KeepSoon or Effect.Redraw)))
        {
            Happen(_effects.Perform(effect));
        }
    }

    private Calculation Calculate(BeamDocument document) => Calculation.Run(document, SectionCatalogue.BuiltIn(), _solver);
}
