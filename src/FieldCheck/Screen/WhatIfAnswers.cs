using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen;

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
            words.Live(whatIf.Live, whatIf.LiveNames),
            .. words.Needed(whatIf.Needed) is { Length: > 0 } needed ? new[] { needed } : [],
            words.FirstBay(whatIf.LongestFirstBay),
            .. place is double at ? new[] { words.Heaviest(at, whatIf.HeaviestAt(at)) } : [],
            .. isOver ? [] : new[] { "No prop is needed: no judged check is over." },
            .. calculation.Checks.All.Any(check => check.Figures.Verdict == CheckVerdict.NotJudged)
                ? new[] { "What is NOT JUDGED is not judged in any of these either." }
                : [],
        ];
    }

    /// <summary>Where a prop would help; none where no judged check is over.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="stiffness">How stiff it stands [N/m]; null: rigid.</param>
    internal static ImmutableArray<string> Props(Calculation calculation, double? stiffness) =>
        calculation is { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam } && IsOver(calculation)
            ? new WhatIfWords(beam, calculation.Document).Props(whatIf.Props(stiffness))
            : [];

    /// <summary>How heavy one more load may be at a place; null where no check holds the beam against anything.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The place [m].</param>
    internal static string? Heaviest(Calculation calculation, double place) =>
        calculation is { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam }
            ? new WhatIfWords(beam, calculation.Document).Heaviest(place, whatIf.HeaviestAt(place))
            : null;

    private static bool IsOver(Calculation calculation) => calculation.Checks.Verdict == CheckVerdict.Over;
}
