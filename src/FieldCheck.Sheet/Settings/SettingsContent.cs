using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.Settings;

/// <summary>The keys of the settings file, and what of the settings each one holds.</summary>
internal static class SettingsContent
{
    private static readonly Wanted Text = new Wanted.FreeText();
    private static readonly Wanted Truth = new Wanted.Truth();

    private static readonly TableMapping<PlotSettings> Plots = new(() => new PlotSettings(),
    [
        Part<PlotSettings>.Of("curves", new TextsMapping(), row => row.Curves, (row, texts) => row with { Curves = texts }),
        Part<PlotSettings>.Of(new Field<PlotSettings>(
            "filled", Truth, row => row.Filled, (row, text) => row with { Filled = text })),
        Part<PlotSettings>.Of(new Field<PlotSettings>(
            "sag", Text, row => row.Sag, (row, text) => row with { Sag = text })),
        Part<PlotSettings>.Of(new Field<PlotSettings>(
            "envelope", Truth, row => row.Envelope, (row, text) => row with { Envelope = text })),
        Part<PlotSettings>.Of(new Field<PlotSettings>(
            "glyphs", Text, row => row.Glyphs, (row, text) => row with { Glyphs = text })),
    ], saysByStanding: false);

    private static readonly TableMapping<WorkingSettings> Working = new(() => new WorkingSettings(),
    [
        Part<WorkingSettings>.Of(new Field<WorkingSettings>(
            "form", Text, row => row.Form, (row, text) => row with { Form = text })),
        Part<WorkingSettings>.Of(new Field<WorkingSettings>(
            "step_names", Truth, row => row.StepNames, (row, text) => row with { StepNames = text })),
    ], saysByStanding: false);

    private static readonly TableMapping<SettingsDocument> Document = new(() => new SettingsDocument(),
    [
        Part<SettingsDocument>.Of(new Field<SettingsDocument>(
            "theme", Text, row => row.Theme, (row, text) => row with { Theme = text })),
        Part<SettingsDocument>.Of(new Field<SettingsDocument>(
            "mouse", Truth, row => row.Mouse, (row, text) => row with { Mouse = text })),
        Part<SettingsDocument>.Of("plots", Plots, row => row.Plots, (row, plots) => row with { Plots = plots }),
        Part<SettingsDocument>.Of(
            "working", Working, row => row.Working, (row, working) => row with { Working = working }),
        Part<SettingsDocument>.Of(new FiguresField<SettingsDocument>(
            "keys", Text, row => row.Keys, (row, keys) => row with { Keys = keys })),
    ]);

    /// <summary>What may stand in a settings file.</summary>
    internal static Schema.Table Schema => Document.Schema;

    /// <summary>The content of settings.</summary>
    internal static Content.Table Of(SettingsDocument settings) => (Content.Table)Document.Write(settings)!;

    /// <summary>The settings with this content.</summary>
    internal static SettingsDocument Read(Content content) => Document.Read(content);
}
