using System.Globalization;
using System.Runtime.CompilerServices;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Sections;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Screen;

/// <summary>Scripts/*.keys: a form before, keys, the form, message and results after.</summary>
/// <remarks>
/// The parts begin with "before", "keys", "at most" (how many presses) and "after", each a line of its own; lines
/// before the first say what the script is about. Set FIELDCHECK_ACCEPT=1 to write what comes after anew, then read it.
/// </remarks>
public sealed class KeyScriptTests
{
    public static TheoryData<string> Scripts() =>
        new(Directory.GetFiles(Folder(), "*.keys")
            .Select(Path.GetFileNameWithoutExtension)
            .OfType<string>()
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Scripts))]
    public void KeysPressed_LeadToWhatStandsInTheScript(string name)
    {
        string path = Path.Combine(Folder(), name + ".keys");
        string[] lines = File.ReadAllLines(path);
        string[] before = Part(lines, "before");
        (BeamDocument document, var focus) = FormDump.Read(before);
        Desk desk = before.Length == 0 ? new Desk() : new Desk(document, BeamOrigin.File("beam.toml", null));
        if (focus is not null)
        {
            desk.Press(Go.To(desk.State, focus));
        }

        int reaching = desk.Presses;
        desk.Press(string.Join(' ', Part(lines, "keys")));

        if (Part(lines, "at most") is [string most])
        {
            Assert.InRange(desk.Presses - reaching, 1, int.Parse(most.Trim(), CultureInfo.InvariantCulture));
        }

        string after = After(desk);
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            int start = Array.IndexOf(lines, "after");
            string script = string.Join('\n', lines[..(start < 0 ? lines.Length : start)]).TrimEnd();
            File.WriteAllText(path, script + "\nafter\n" + after);
        }

        Assert.Equal(after, string.Concat(Part(File.ReadAllLines(path), "after").Select(line => line + "\n")));
    }

    /// <summary>None is without a script: a key or an entry of the menu that some script presses runs it.</summary>
    [Fact]
    public void EveryCommand_IsRunByAScript()
    {
        HashSet<CommandName> ran = [];
        foreach (string path in Directory.GetFiles(Folder(), "*.keys"))
        {
            string[] lines = File.ReadAllLines(path);
            string[] before = Part(lines, "before");
            (BeamDocument document, var focus) = FormDump.Read(before);
            Desk desk = before.Length == 0 ? new Desk() : new Desk(document, BeamOrigin.File("beam.toml", null));
            if (focus is not null)
            {
                desk.Press(Go.To(desk.State, focus));
            }

            foreach (KeyStroke key in Keys.Read(string.Join(' ', Part(lines, "keys"))))
            {
                if (CommandOf(desk.State, key) is CommandName name)
                {
                    ran.Add(name);
                }

                desk.Press([key]);
            }
        }

        Assert.Empty(Enum.GetValues<CommandName>().Except(ran));
    }

    private static CommandName? CommandOf(ScreenState state, KeyStroke key) => state.Overlay switch
    {
        Overlay.Menu menu => MenuKeys.EntriesOf(state, menu.Page)
            .FirstOrDefault(entry => key == new KeyStroke.Text($"{entry.Letter}"))?.Command,
        Overlay.Help help when key is KeyStroke.Named { Key: KeyName.Enter } =>
            HelpLines.Of(state.Table, state.View, help.Filter.Text)[help.Choice].Command?.Name,
        null => state.Table.Of(key, state.View)?.Name
            ?? (key is KeyStroke.Text && state.View is ScreenView.Beam or ScreenView.Stated or ScreenView.Section or ScreenView.Cases ? CommandName.Type : null),
        _ => null,
    };

    private static string After(Desk desk)
    {
        IEnumerable<string> results = (desk.State.View == ScreenView.Section
            ? SectionLines.Of(desk.State, 80)
            : ResultsPicture.Of(desk.State, 40, 12).Select(line => line.ToString().TrimEnd()))
            .Select(line => "| " + line);
        return FormDump.Of(desk.State)
            + $"says: {desk.Says}\n"
            + Elsewhere(desk)
            + string.Concat(results.Where(line => line != "| ").Select(line => line.TrimEnd() + "\n"));
    }

    // What a script comes to beside the form: another view, something over it, files asked for, preferences changed.
    private static string Elsewhere(Desk desk)
    {
        PlotOptions plots = desk.State.Preferences.Plots;
        string[] lines =
        [
            desk.State.View == ScreenView.Beam ? "" : $"view: {desk.State.View}",
            desk.State.Reading is double place ? string.Create(CultureInfo.InvariantCulture, $"reading: {place:0.000} m") : "",
            desk.State.Influence is InfluenceChoice influence
                ? string.Create(CultureInfo.InvariantCulture, $"influence line: {influence.Support ?? $"{influence.Curve} {influence.Position:0.000} m"}")
                : "",
            desk.State.About is MomentPoint about
                ? string.Create(CultureInfo.InvariantCulture, $"moments about: {about.Support} {about.Position:0.000} m")
                : "",
            desk.State.Overlay is Overlay over ? $"over: {over.GetType().Name}" : "",
            desk.State.Preferences.Working == new WorkingOptions() ? "" : WorkingWords.Form(desk.State.Preferences.Working),
            desk.State.Preferences.Plots == new PlotOptions() ? "" : $"curves: {string.Join(' ', plots.Curves)}"
                + $"{(plots.IsFilled ? "" : ", outlined")}{(plots.IsSagDown ? ", sag down" : "")}{(plots.HasEnvelope ? "" : ", no envelope")}, {plots.Glyphs}",
            .. desk.Effects.Select(effect => effect switch
            {
                Effect.Save save => $"asked to save: {save.Path}",
                Effect.SavePaper save => $"asked to save the text: {save.Path}",
                Effect.Quit or Effect.Redraw or Effect.FindBeams or Effect.KeepPreferences => $"asked to: {effect.GetType().Name}",
                _ => "",
            }),
        ];
        return string.Concat(lines.Where(line => line.Length > 0).Select(line => line + "\n"));
    }

    private static string[] Part(string[] lines, string name)
    {
        string[] names = ["before", "keys", "at most", "after"];
        int start = Array.IndexOf(lines, name);
        return start < 0
            ? []
            : [.. lines.Skip(start + 1).TakeWhile(line => !names.Contains(line)).Where(line => line.Length > 0)];
    }

    private static string Folder([CallerFilePath] string file = "") =>
        Path.Combine(Path.GetDirectoryName(file)!, "Scripts");
}
