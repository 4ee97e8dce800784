using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Working;

/// <summary>What forces, places and loads of a working are called.</summary>
internal sealed class WorkingNames
{
    private const int LongestSuffix = 4;

    private readonly BuiltBeam _beam;
    private readonly NamedLoad[] _loads;
    private readonly int _ownWeights;

    /// <summary>The names in a working.</summary>
    /// <param name="beam">The beam.</param>
    internal WorkingNames(BuiltBeam beam)
    {
        _beam = beam;

        // As the cases hold them: case by case in the order of their first loads.
        _loads =
        [
            .. beam.Model.Cases.SelectMany(one => beam.Loads.Where(load => load.Case == one.Name)),
        ];
        _ownWeights = beam.Loads.Count(load => load.Row is null);
    }

    /// <summary>A load of the sheet.</summary>
    /// <param name="index">Its index over all cases.</param>
    internal NamedLoad Load(int index) => _loads[index];

    /// <summary>A load, as "load 2" or "own weight".</summary>
    internal string LoadName(int index) => _loads[index].Row is int row ? $"load {row + 1}"
        : _ownWeights > 1 ? $"own weight {OwnWeightNumber(index)}"
        : "own weight";

    /// <summary>A load with its label and case, as "load 2, pallets (live)".</summary>
    internal string LoadInFull(int index)
    {
        NamedLoad load = _loads[index];
        string label = load.Label.Length == 0 || load.Row is null ? "" : $", {TypedLetters.Name(_beam, load.Label)}";
        return $"{LoadName(index)}{label} ({TypedLetters.Name(_beam, load.Case)})";
    }

    /// <summary>What a term comes from, as "load 2" or "V_A".</summary>
    internal string Of(HandActor actor) => actor switch
    {
        HandActor.OfLoad load => LoadName(load.Index) + PartLetter(load.Part),
        HandActor.Whole load => LoadInFull(load.Index),
        HandActor.Named named => Of(named.Name),
        HandActor.Coefficient coefficient => $"coefficient of {Of(coefficient.Unknown)}",
        HandActor.RightSide => "known side",
        HandActor.Together => "sum",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>A name, as "V_A", "W2" or "M".</summary>
    internal string Of(HandName name) => name.Role switch
    {
        HandRole.Horizontal => $"H_{Suffix(name.Index)}",
        HandRole.Vertical => $"V_{Suffix(name.Index)}",
        HandRole.Normal => $"N_{Suffix(name.Index)}",
        HandRole.Couple => $"C_{Suffix(name.Index)}",
        HandRole.SupportPlace => $"x_{Suffix(name.Index)}",
        HandRole.Surface => $"slope at {Support(name.Index)}",
        HandRole.SurfaceSine => "sine",
        HandRole.SurfaceCosine => "cosine",
        HandRole.SurfaceTangent => "tangent",
        HandRole.PortionRigidity => $"EA{name.Part + 1}",
        HandRole.PortionRatio => $"n{name.Part + 1}",
        HandRole.HingeForce => $"V_h{name.Index + 1}",
        HandRole.HingePlace => $"x_h{name.Index + 1}",
        HandRole.LoadForce => $"W{LoadSuffix(name)}",
        HandRole.LoadAlong => $"P{LoadSuffix(name)}",
        HandRole.LoadPlace => $"x{LoadSuffix(name)}",
        HandRole.LoadCouple => $"T{LoadSuffix(name)}",
        HandRole.LoadWidth => $"c{LoadSuffix(name)}",
        HandRole.Intensity => $"w{LoadNumber(name.Index)}",
        HandRole.IntensityEnd => name.Part == 0 ? $"w{LoadNumber(name.Index)} at its right end" : $"w{LoadNumber(name.Index)} at the cut",
        HandRole.IntensityStep => $"d{LoadSuffix(name)}",
        HandRole.ShearLeft or HandRole.ShearRight => "V",
        HandRole.SectionMomentLeft or HandRole.SectionMomentRight or HandRole.PeakMoment => "M",
        HandRole.AxialRight => "N",
        HandRole.AxialBetween => $"N right of {Support(name.Index)}",
        HandRole.ZeroShear or HandRole.LoadTurnPlace => "x",
        HandRole.ZeroShearDistance => "s",
        HandRole.ZeroShearRoot => "root",
        HandRole.IntensitySlope => "k",
        HandRole.Movement => $"down at {Support(name.Index)}",
        HandRole.Turn => $"turn at {Support(name.Index)}",
        HandRole.StretchLength => "c",
        HandRole.StretchEven => "w",
        HandRole.StretchStart => "w left",
        HandRole.StretchEnd => "w right",
        _ => ThreeMomentWords.NameOf(name, this),
    };

    /// <summary>The label of a support.</summary>
    internal string Support(int index) => _beam.Supports[index].Label;

    /// <summary>A hinge, as "hinge h1".</summary>
    internal static string Hinge(int index) => $"hinge h{index + 1}";

    /// <summary>The letters behind a symbol: the label where it is short, else the count from the left.</summary>
    internal string Suffix(int support)
    {
        string label = Support(support);
        bool isShort = label.Length <= LongestSuffix && label.All(char.IsAsciiLetterOrDigit);
        return isShort && !IsNameOfOurs(label) ? label : $"s{support + 1}";
    }

    /// <summary>A place where bays meet: its support's letters, its hinge, or the joint's count from the left.</summary>
    /// <param name="index">Its number, see <see cref="HandPlaces"/>.</param>
    internal string Node(int index)
    {
        double place = HandPlaces.Of(_beam.Model)[index];
        int support = _beam.Supports.ToList().FindIndex(one => one.Support.Position == place);
        int hinge = _beam.Model.Hinges.IndexOf(place);
        return support >= 0 ? Suffix(support)
            : hinge >= 0 ? $"h{hinge + 1}"
            : $"j{_beam.Model.JointPositions.IndexOf(place)}";
    }

    internal string LoadSuffix(HandName name) =>
        LoadNumber(name.Index) + PartLetter(name.Part);

    /// <summary>True: no support or hinge stands at a node, but the section changes there.</summary>
    /// <param name="index">Its number, see <see cref="HandPlaces"/>.</param>
    internal bool IsJoint(int index)
    {
        double place = HandPlaces.Of(_beam.Model)[index];
        return !_beam.Supports.Any(one => one.Support.Position == place) && !_beam.Model.Hinges.Contains(place);
    }

    // h1, s1 and j1 name hinges, supports with long labels and joints.
    private static bool IsNameOfOurs(string label) =>
        label[0] is 'h' or 's' or 'j' && label.Length > 1 && label.AsSpan(1).IndexOfAnyExceptInRange('0', '9') < 0;

    private string LoadNumber(int index) => _loads[index].Row is int row ? $"{row + 1}"
        : _ownWeights > 1 ? $"o{OwnWeightNumber(index)}"
        : "o";

    private int OwnWeightNumber(int index) => _loads.Take(index + 1).Count(load => load.Row is null);

    private static string PartLetter(int part) => part == HandName.OnlyPart ? ""
        : part < 26 ? $"{(char)('a' + part)}" : $"z{part}";
}
