using System.Collections.Immutable;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Sections;
using FieldCheck.Screen.StatedFigures;
using FieldCheck.Screen.Workings;

namespace FieldCheck.Screen;

/// <summary>The views in their order, and what sets each apart: a further view is one row more.</summary>
internal static class ScreenViews
{
    private static readonly ImmutableArray<ViewTraits> Rows =
    [
        new()
        {
            View = ScreenView.Beam,
            Command = CommandName.BeamView,
            Letter = 'b',
            Groups = [CommandGroup.Form, CommandGroup.Cell, CommandGroup.Row],
            Draw = BeamViewPicture.Of,
            Press = FormKeys.Press,
            Change = Commands.InForm,
            Says = MessageLine.OfForm,
            Help = HelpLines.InAMinute,
        },
        new()
        {
            View = ScreenView.Plots,
            Command = CommandName.PlotsView,
            Letter = 'p',
            Groups = [CommandGroup.Plots],
            Draw = PlotsViewPicture.Of,
            Press = (state, stroke) => PlaceKeys.Press(state, stroke, PlaceUse.ReadOff),
            Change = PlotsKeys.Change,
            Says = MessageLine.OfResults,
            Help = _ => HelpLines.ReadingOff,
            Hints = ["Left Right read", "type a place"],
        },
        new()
        {
            View = ScreenView.Working,
            Command = CommandName.WorkingView,
            Letter = 'w',
            Groups = [CommandGroup.Working],
            Draw = WorkingViewPicture.Of,
            Press = (state, stroke) => PlaceKeys.Press(state, stroke, PlaceUse.MomentsAbout),
            Change = WorkingKeys.Change,
            Says = WorkingWords.Where,
            Help = HelpLines.FollowingTheWorking,
            Hints = ["Up Down scroll"],
        },
        new()
        {
            View = ScreenView.Stated,
            Command = CommandName.StatedView,
            Letter = 's',
            Groups = [CommandGroup.Stated, CommandGroup.Cell, CommandGroup.Row],
            Draw = StatedViewPicture.Layout.Draw,
            Press = FormKeys.Press,
            Change = StatedKeys.Change,
            Says = MessageLine.OfForm,
            Help = HelpLines.JudgingWhatIsStated,
        },
        new()
        {
            View = ScreenView.Section,
            Command = CommandName.SectionView,
            Letter = 'n',
            Groups = [CommandGroup.Section, CommandGroup.Cell],
            Draw = SectionViewPicture.Layout.Draw,
            Press = FormKeys.Press,
            Change = SectionKeys.Change,
            Says = MessageLine.OfForm,
            Help = HelpLines.HoldingAgainstLimits,
        },
        new()
        {
            View = ScreenView.Cases,
            Command = CommandName.CasesView,
            Letter = 'c',
            Groups = [CommandGroup.Cases, CommandGroup.Cell, CommandGroup.Row],
            Draw = CasesViewPicture.Layout.Draw,
            Press = FormKeys.Press,
            Change = CasesKeys.Change,
            Says = MessageLine.OfForm,
            Help = HelpLines.CombiningCases,
        },
    ];

    /// <summary>All views, as the title line names them.</summary>
    internal static ImmutableArray<ScreenView> All { get; } = [.. Rows.Select(row => row.View)];

    /// <summary>What sets a view apart.</summary>
    /// <param name="view">The view.</param>
    internal static ViewTraits Of(ScreenView view) => Rows.First(row => row.View == view);

    /// <summary>The view that a command shows; null: it shows none.</summary>
    /// <param name="name">The command.</param>
    internal static ViewTraits? ShownBy(CommandName name) => Rows.FirstOrDefault(row => row.Command == name);

    /// <summary>The view so many further on, round.</summary>
    /// <param name="view">The view.</param>
    /// <param name="by">How many.</param>
    internal static ScreenView Next(ScreenView view, int by) =>
        All[(All.IndexOf(view) + by + All.Length) % All.Length];
}
