using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen.Sections;

/// <summary>What a beam would take, in sentences: it can take some hundred solves.</summary>
internal static class WhatIfAnswers
{
    /// <summary>What is said where nothing can be asked.</summary>
    internal const string NothingToAsk = "Nothing to ask yet: no check holds the beam against anything.";

    /// <summary>Every answer but where a prop would help; none where no check holds the beam against anything.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">Where one more load is to stand [m]; null: not asked.</param>
    internal static ImmutableArray<string> Of(Calculation calculation, double? place)
    {
        if (calculation is not { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam })
        {
            return [];
        }

        WhatIfWords words = new(beam, calculation.Document);
        bool isOver = IsOver(calculation);
        return
        [
            .. Pulled(calculation),
            JudgedByWords.Of(calculation.Checks),
            words.Live(whatIf.Live, whatIf.LiveNames),
            .. words.Needed(whatIf.Needed) is { Length: > 0 } needed ? new[] { needed } : [],
            words.FirstBay(whatIf.LongestFirstBay),
            .. place is double at ? new[] { words.Heaviest(at, whatIf.HeaviestAt(at)) } : [],
            .. isOver ? [] : new[] { NoProp(calculation) },
            JudgedByWords.NotChecked(calculation.Checks),
        ];
    }

    /// <summary>Where a prop would help; none where no judged check is over.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="stiffness">How stiff it stands [N/m]; null: rigid.</param>
    internal static ImmutableArray<string> Props(Calculation calculation, double? stiffness) =>
        calculation is { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam } && IsOver(calculation)
            ? PropsOf(new WhatIfWords(beam, calculation.Document), whatIf.Props(stiffness), calculation.Checks)
            : [];

    /// <summary>How heavy one more load may be at a place; null where no check holds the beam against anything.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The place [m].</param>
    internal static string? Heaviest(Calculation calculation, double place) =>
        calculation is { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam }
            ? string.Join(
                ' ',
                [
                    .. Pulled(calculation),
                    .. new[]
                    {
                        new WhatIfWords(beam, calculation.Document).Heaviest(place, whatIf.HeaviestAt(place)),
                        JudgedByWords.Caveat(calculation.Checks),
                    }.Where(text => text.Length > 0),
                ])
            : null;

    /// <summary>What is said of a prop where no judged check is over.</summary>
    /// <param name="calculation">What came of the beam.</param>
    internal static string NoProp(Calculation calculation) =>
        calculation.Messages.Any(message => message.Code == MessageCodes.Uplift)
            ? "No judged check is over, so none needs a prop; a support that is not tied would have to hold the beam down."
        : calculation.Checks.All.Any(check => check.Figures.Verdict == CheckVerdict.NotJudged)
            ? "No judged check is over, so none needs a prop; what is NOT JUDGED may."
            : "No prop is needed: no judged check is over.";

    // What the check says of pulled supports stands first, in its own words.
    private static IEnumerable<string> Pulled(Calculation calculation) => calculation.Messages
        .Where(message => message.Code is MessageCodes.Uplift or MessageCodes.LiftsOff).Select(message => message.Text);

    private static ImmutableArray<string> PropsOf(WhatIfWords words, PropAnswer props, BeamChecks checks) =>
        [.. words.Props(props), .. words.PropSideways(checks) is { Length: > 0 } sideways ? new[] { sideways } : []];

    private static bool IsOver(Calculation calculation) => calculation.Checks.Verdict == CheckVerdict.Over;
}
