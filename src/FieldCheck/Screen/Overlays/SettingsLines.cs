using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Workings;

namespace FieldCheck.Screen.Overlays;

/// <summary>What the person may want otherwise, one a line.</summary>
internal static class SettingsLines
{
    private const string Shown = "shown";
    private const string Hidden = "hidden";

    /// <summary>The lines.</summary>
    /// <param name="now">What the person wants now.</param>
    internal static ImmutableArray<SettingsLine> Of(Preferences now)
    {
        PlotOptions plots = now.Plots;
        return
        [
            new("looks", ThemeWords(now.Theme), now with { Theme = Following(now.Theme) }),
            new("mouse, from the next start", now.HasMouse ? "used" : "left to the terminal", now with { HasMouse = !now.HasMouse }),
            OfCurve("shear in Plots", Curve.Shear),
            OfCurve("moment in Plots", Curve.Moment),
            OfCurve("deflection in Plots, where known", Curve.Deflection),
            OfCurve("axial force in Plots, where any", Curve.Axial),
            new("envelope round the curves", plots.HasEnvelope ? Shown : Hidden, With(plots with { HasEnvelope = !plots.HasEnvelope })),
            new("curves", plots.IsFilled ? "filled" : "outlined", With(plots with { IsFilled = !plots.IsFilled })),
            new("sagging moment", plots.IsSagDown ? "drawn below" : "drawn above", With(plots with { IsSagDown = !plots.IsSagDown })),
            new("curves drawn in", plots.Glyphs == PlotGlyphs.Ascii ? "ASCII" : "half blocks", With(plots.WithOtherGlyphs())),
            new("form of the working", now.Working.IsShort ? "short" : "full", WithWorking(now.Working with { IsShort = !now.Working.IsShort })),
            new("names of its steps", now.Working.HasStepNames ? Shown : Hidden, WithWorking(now.Working with { HasStepNames = !now.Working.HasStepNames })),
        ];

        SettingsLine OfCurve(string words, Curve curve) =>
            new(words, plots.Curves.Contains(curve) ? Shown : Hidden, With(plots.Toggled(curve)));

        Preferences WithWorking(WorkingOptions changed) => now with { Working = changed };

        Preferences With(PlotOptions changed) => now with { Plots = changed };
    }

    private static string ThemeWords(Theme theme) => theme switch
    {
        Theme.Mono => "mono: no colour",
        Theme.HighContrast => "high contrast",
        _ => "the terminal's colours",
    };

    private static Theme Following(Theme theme) => theme switch
    {
        Theme.Terminal => Theme.Mono,
        Theme.Mono => Theme.HighContrast,
        _ => Theme.Terminal,
    };
}
