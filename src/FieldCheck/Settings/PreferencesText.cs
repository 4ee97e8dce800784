using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.Settings;

/// <summary>Preferences as words of the settings file, and back.</summary>
internal static class PreferencesText
{
    private static readonly ImmutableArray<(string Word, bool Value)> Truths = [("true", true), ("false", false)];

    private static readonly ImmutableArray<(string Word, bool Value)> Sides = [("up", false), ("down", true)];

    private static readonly ImmutableArray<(string Word, bool IsShort)> Forms = [("full", false), ("short", true)];

    /// <summary>The themes by name.</summary>
    internal static ImmutableArray<(string Word, Theme Value)> Themes { get; } =
        [("terminal", Theme.Terminal), ("mono", Theme.Mono), ("high contrast", Theme.HighContrast)];

    /// <summary>What diagrams are drawn with, by name.</summary>
    internal static ImmutableArray<(string Word, PlotGlyphs Value)> Glyphs { get; } =
        [("ascii", PlotGlyphs.Ascii), ("half blocks", PlotGlyphs.HalfBlocks)];

    /// <summary>The curves by name.</summary>
    internal static ImmutableArray<(string Word, Curve Value)> Curves { get; } =
    [
        ("shear", Curve.Shear),
        ("moment", Curve.Moment),
        ("deflection", Curve.Deflection),
        ("axial", Curve.Axial),
    ];

    /// <summary>The preferences that settings ask for, and what in them is none.</summary>
    /// <param name="settings">The settings as they are written.</param>
    internal static (Preferences Preferences, ImmutableArray<Problem> Problems) Read(SettingsDocument settings)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        Preferences own = new();
        PlotSettings plots = settings.Plots;
        (CommandTable table, ImmutableArray<Problem> ofKeys) = KeyBindings.Bind(CommandTable.Default, settings.Keys);
        Curve[] curves = [.. plots.Curves.Select((word, index) =>
            Find(Curves, $"plots.curves[{index + 1}]", word, Curve.Shear))];
        Preferences read = new()
        {
            Theme = Find(Themes, "theme", settings.Theme, own.Theme),
            HasMouse = Find(Truths, "mouse", settings.Mouse, own.HasMouse),
            Plots = new PlotOptions
            {
                Curves = curves.Length == 0 ? own.Plots.Curves : [.. PlotOptions.All.Where(curves.Contains)],
                IsFilled = Find(Truths, "plots.filled", plots.Filled, own.Plots.IsFilled),
                IsSagDown = Find(Sides, "plots.sag", plots.Sag, own.Plots.IsSagDown),
                HasEnvelope = Find(Truths, "plots.envelope", plots.Envelope, own.Plots.HasEnvelope),
                Glyphs = Find(Glyphs, "plots.glyphs", plots.Glyphs, own.Plots.Glyphs),
            },
            Working = new WorkingOptions
            {
                IsShort = Find(Forms, "working.form", settings.Working.Form, own.Working.IsShort),
                HasStepNames = Find(Truths, "working.step_names", settings.Working.StepNames, own.Working.HasStepNames),
            },
            Table = table,
        };
        return (read, [.. problems, .. ofKeys]);

        T Find<T>(ImmutableArray<(string Word, T Value)> words, string key, string? text, T otherwise)
        {
            foreach ((string word, T value) in words.Where(pair => pair.Word == text))
            {
                return value;
            }

            if (text is not null)
            {
                string known = string.Join(", ", words.Select(pair => pair.Word));
                problems.Add(new Problem(key, $"'{text}' is none of {known}"));
            }

            return otherwise;
        }
    }

    /// <summary>Settings with the preferences that the screen can change; what is as it comes need not stand in them.</summary>
    /// <param name="settings">The settings as they are written.</param>
    /// <param name="preferences">The preferences.</param>
    internal static SettingsDocument Write(SettingsDocument settings, Preferences preferences)
    {
        Preferences own = new();
        PlotOptions plots = preferences.Plots;
        return settings with
        {
            Theme = Word(Themes, settings.Theme, preferences.Theme, own.Theme),
            Mouse = Word(Truths, settings.Mouse, preferences.HasMouse, own.HasMouse),
            Plots = new PlotSettings
            {
                Curves = settings.Plots.Curves.Count == 0 && plots.Curves == own.Plots.Curves
                    ? []
                    : [.. plots.Curves.Select(curve => Curves.First(pair => pair.Value == curve).Word)],
                Filled = Word(Truths, settings.Plots.Filled, plots.IsFilled, own.Plots.IsFilled),
                Sag = Word(Sides, settings.Plots.Sag, plots.IsSagDown, own.Plots.IsSagDown),
                Envelope = Word(Truths, settings.Plots.Envelope, plots.HasEnvelope, own.Plots.HasEnvelope),
                Glyphs = Word(Glyphs, settings.Plots.Glyphs, plots.Glyphs, own.Plots.Glyphs),
            },
            Working = new WorkingSettings
            {
                Form = Word(Forms, settings.Working.Form, preferences.Working.IsShort, own.Working.IsShort),
                StepNames = Word(
                    Truths, settings.Working.StepNames, preferences.Working.HasStepNames, own.Working.HasStepNames),
            },
        };
    }

    private static string? Word<T>(ImmutableArray<(string Word, T Value)> words, string? stands, T value, T own)
        where T : struct => stands is null && value.Equals(own)
            ? null
            : words.First(pair => pair.Value.Equals(value)).Word;
}
