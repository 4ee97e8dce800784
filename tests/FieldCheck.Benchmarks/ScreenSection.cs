using System.Globalization;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Views;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace FieldCheck.Benchmarks;

/// <summary>From a keystroke to the screen drawn, on the real toolkit without a terminal.</summary>
internal static class ScreenSection
{
    private const int Width = 120;
    private const int Height = 40;
    private const double MostTimesOneSpan = 10;

    // So much more code runs here than elsewhere that the common warming does not see all of it compiled anew.
    private const int WarmingStrokes = 400;

    private static readonly (Key[] Going, Key One, Key Other) Typing =
        ([Key.PageDown, Key.PageDown, Key.CursorDown, Key.D1], Key.D1, Key.Backspace);

    private static readonly (Key[] Going, Key One, Key Other) ReadingLine = ([Key.F4], Key.CursorRight, Key.CursorLeft);

    internal static void Run(Report report)
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        report.Section(string.Create(
            CultureInfo.InvariantCulture, $"Keystroke to drawn screen, {Width} x {Height}, a digit typed into a load"));
        report.Row("beam", "median", "fastest");
        double one = Row(report, "1 span, 1 load", Sheet(1, 1));
        double many = Row(report, "20 spans, 100 loads", Sheet(20, 100));
        Row(report, "50 spans, 500 loads", Sheet(50, 500));
        Row(report, "20 spans, 100 loads, Plots", Sheet(20, 100), ReadingLine);
        Row(report, "50 spans, 500 loads, Plots", Sheet(50, 500), ReadingLine);
        report.Promise(
            "Keystroke with 20 spans and 100 loads against 1 span", many / one, MostTimesOneSpan, many / one <= MostTimesOneSpan);
    }

    private static double Row(
        Report report, string name, BeamDocument sheet, (Key[] Going, Key One, Key Other)? strokes = null)
    {
        SectionCatalogue catalogue = SectionCatalogue.BuiltIn();
        BeamSolver solver = new();
        using IApplication application = Application.Create();
        application.Init(DriverRegistry.Names.ANSI);
        application.Driver!.SetScreenSize(Width, Height);
        ScreenState state = ScreenState.Start(
            sheet, BeamOrigin.NewBeam, document => Calculation.Run(document, catalogue, solver));
        using ScreenWindow window = new(state, new Palette(Theme.Terminal), _ => null);
        SessionToken session = application.Begin(window)!;
        (Key[] going, Key one, Key other) = strokes ?? Typing;
        foreach (Key key in going)
        {
            application.InjectKey(key);
        }

        bool isTyped = false;
        void Stroke()
        {
            application.InjectKey(isTyped ? other : one);
            isTyped = !isTyped;
            application.LayoutAndDraw(false);
        }

        for (int stroke = 0; stroke < WarmingStrokes; stroke++)
        {
            Stroke();
        }

        Timing timing = Timing.Of(Stroke);
        application.End(session);
        report.Row(name, Report.Time(timing.Median), Report.Time(timing.Fastest));
        return timing.Fastest;
    }

    private static BeamDocument Sheet(int spans, int loads) => new()
    {
        Spans = [.. Enumerable.Repeat(new SpanEntry { Length = "3 m" }, spans)],
        Supports = [.. Enumerable.Range(0, spans + 1).Select(joint => new SupportEntry
        {
            Kind = joint == 0 ? "pin" : "roller",
            Joint = joint.ToString(CultureInfo.InvariantCulture),
        })],
        Loads = [.. Enumerable.Range(0, loads).Select(load => new LoadEntry
        {
            Kind = "point",
            At = string.Create(CultureInfo.InvariantCulture, $"{3.0 * spans * (load + 0.5) / loads:0.###} m"),
            Force = string.Create(CultureInfo.InvariantCulture, $"{1 + load % 7} kN"),
        })],
    };
}
