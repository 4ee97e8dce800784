using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads the factors on strengths of timber that a material is given.</summary>
internal static class FactorRows
{
    /// <summary>The factors that read, in the order of the sheet; what is wrong is told.</summary>
    /// <param name="entry">The material.</param>
    /// <param name="path">Its key path.</param>
    /// <param name="problems">Takes what is wrong.</param>
    internal static ImmutableArray<StrengthFactor> Read(MaterialEntry entry, string path, ProblemList problems)
    {
        Figures.Check(Fields.MaterialFactors, entry, path, problems, Doubt);
        Dictionary<FactorKind, string> given = [];
        var factors = ImmutableArray.CreateBuilder<StrengthFactor>(entry.Factors.Count);
        foreach (NamedFigure figure in entry.Factors)
        {
            if (FactorNames.Find(figure.Name) is not FactorKind kind || Number(figure.Text) is not double value)
            {
                continue;
            }

            given.TryAdd(kind, figure.Name);
            string? wrong = given[kind] != figure.Name ? ProblemText.SameFactor(figure.Name, given[kind])
                : kind == FactorKind.WetService ? value is 0 or 1 ? null : ProblemText.NotWetOrDry
                : value > 0 ? null : ProblemText.NotPositive(figure.Text);
            if (wrong is not null)
            {
                problems.Add($"{path}.{Fields.MaterialFactors.Key}.{TomlText.Key(figure.Name)}", wrong);
            }

            factors.Add(new StrengthFactor(kind, value));
        }

        return factors.ToImmutable();
    }

    private static string? Doubt(string name) =>
        FactorNames.Find(name) is null ? ProblemText.UnknownFactor(name, FactorNames.All) : null;

    private static double? Number(string text) => Row.Number(text, Fields.MaterialFactors.Wanted);
}
