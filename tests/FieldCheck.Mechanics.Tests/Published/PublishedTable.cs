using System.Globalization;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>The printed figures beside ours, as the lines of docs/verification.md show them.</summary>
internal static class PublishedTable
{
    private static readonly Dictionary<string, string> Words = new()
    {
        ["reaction_vertical"] = "reaction up",
        ["reaction_horizontal"] = "reaction along",
        ["reaction_moment"] = "reaction moment",
        ["reaction_normal"] = "reaction normal to the surface",
        ["shear_at"] = "V",
        ["moment_at"] = "M",
        ["slope_at"] = "slope",
        ["deflection_at"] = "deflection, up",
        ["shear_max"] = "greatest V",
        ["shear_min"] = "least V",
        ["shear_max_abs"] = "greatest size of V",
        ["moment_max"] = "greatest M",
        ["moment_min"] = "least M",
        ["deflection_max_abs"] = "greatest size of the deflection",
        ["x_of_moment_max"] = "place of the greatest M",
        ["x_of_deflection_max"] = "place of the greatest deflection",
        ["influence_moment"] = "influence ordinate of M",
        ["absolute_max_moment"] = "greatest M of the train",
        ["x_of_max_moment"] = "place of the greatest M of the train",
        ["area"] = "area",
        ["ybar"] = "height of the centroid",
        ["I"] = "I",
        ["S"] = "S",
        ["Q_neutral_axis"] = "Q at the neutral axis",
        ["Q_above"] = "Q",
        ["shear_stress"] = "shear stress",
        ["shear_stress_max"] = "greatest shear stress",
        ["bending_stress_top"] = "bending stress, top",
        ["bending_stress_bottom"] = "bending stress, bottom",
        ["shear_form_factor"] = "A over the shear area",
    };

    /// <summary>One line a file: how many figures, and how much of the tolerance the worst of them takes.</summary>
    internal static IEnumerable<string> Summary(IEnumerable<string> files)
    {
        yield return "| file | cases | figures | of them from memory | largest difference, of its tolerance |";
        yield return "| --- | --- | --- | --- | --- |";
        foreach (string file in files)
        {
            (PublishedCase Example, PublishedValue Value)[] all =
            [
                .. PublishedFile.Cases(file).SelectMany(example => example.Values.Select(value => (example, value))),
            ];
            double worst = all.Max(one => Math.Abs(Difference(one.Example, one.Value)) / one.Value.Tolerance);
            yield return $"| {Title(file)} | {PublishedFile.Cases(file).Length} | {all.Length} | "
                + $"{all.Count(one => !IsSeen(one.Example, one.Value))} | {Text(worst, "0.00")} |";
        }
    }

    /// <summary>Every figure of a file, under a line for each case that says where it is printed.</summary>
    internal static IEnumerable<string> Of(string file)
    {
        yield return $"### {Title(file)}";
        foreach (PublishedCase example in PublishedFile.Cases(file))
        {
            yield return "";
            yield return $"**{example.Id}** ({Units(example)}). {example.Source.TrimEnd('.')}.";
            yield return "";
            yield return "| what | published | ours | difference | tolerance |";
            yield return "| --- | --- | --- | --- | --- |";
            foreach (PublishedValue value in example.Values)
            {
                yield return $"| {What(value)}{(IsSeen(example, value) ? "" : " (m)")} | {Text(value.Printed, "R")} | "
                    + $"{Text(PublishedCheck.Computed(example, value), "G7")} | "
                    + $"{Text(Difference(example, value), "+0.0e+0;-0.0e+0;0")} | {Text(value.Tolerance, "G3")} |";
            }
        }
    }

    private static bool IsSeen(PublishedCase example, PublishedValue value) => value.IsSeen ?? example.IsSeen;

    // Below a billionth of the figure it is rounding, which differs from one machine to the next.
    private static double Difference(PublishedCase example, PublishedValue value)
    {
        double difference = PublishedCheck.Computed(example, value) - value.Printed;
        return Math.Abs(difference) <= 1e-9 * Math.Max(Math.Abs(value.Printed), value.Tolerance) ? 0 : difference;
    }

    private static string Title(string file) => Path.GetFileNameWithoutExtension(file);

    private static string Units(PublishedCase example) => example.Units switch
    {
        "consistent" => "consistent units",
        "none" => "pure numbers",
        string units => units,
    };

    private static string What(PublishedValue value)
    {
        string side = value.Side == Side.Right ? "just right of " : "";
        string where = (value.At, value.From, value.To, value.Cut) switch
        {
            (double at, _, _, _) => $" at {side}{Text(at, "R")}",
            (_, null, null, double cut) => $" above {Text(cut, "R")}",
            (_, null, null, _) => "",
            (_, double from, null, _) => $" right of {Text(from, "R")}",
            (_, null, double to, _) => $" left of {Text(to, "R")}",
            (_, double from, double to, _) => $" from {Text(from, "R")} to {Text(to, "R")}",
        };
        string load = value.LoadAt is double stands ? $", unit load at {Text(stands, "R")}" : "";
        return Words[value.What] + where + load;
    }

    private static string Text(double value, string format)
    {
        string text = (Math.Abs(value) < 1e-12 ? 0 : value).ToString(format, CultureInfo.InvariantCulture);
        return text.Replace('E', 'e');
    }
}
