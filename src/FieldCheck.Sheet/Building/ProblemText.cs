using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>What is said of a beam that cannot be used: all of it here, so that it reads as one voice.</summary>
internal static class ProblemText
{
    internal const string NoSpan = "a beam has at least one span";
    internal const string NoLength = "a span needs its length, or to = the tape reading of its far end";
    internal const string LengthAndTo = "a span takes its length or the tape reading of its far end, not both";
    internal const string TapeGoesBack =
        "this tape reading is not beyond the one before it: readings run from the left end";
    internal const string TooShort = "this span is less than a millionth of the beam: is its unit right?";

    internal const string NoPlace = "needs joint = its number, 0 for the left end, or at = a place, as \"4 ft\"";
    internal const string JointAndAt = "takes joint or at, not both";
    internal const string FromNotLeftOfTo = "the load's left end is not left of its right end";
    internal const string HingeAtEnd = "a hinge at an end of the beam releases nothing: put it between the ends";
    internal const string HingeAtHold =
        "a hinge cannot stand at a support that holds rotation: the support would hold neither part";
    internal const string SideAtHinge =
        "the couple stands at a hinge: side = \"left\" or \"right\" says which part it turns";

    internal const string NoSupportKind = "a support needs its kind: pin, roller, fixed, guide or spring";
    internal const string ActsOnHold =
        "a support that holds rotation acts both ways: leave acts out, or write \"both\"";
    internal const string SurfaceTooSteep = "a surface slopes by less than 90 deg either way";
    internal const string NoStiffnessOfSpring = "a spring needs its stiffness, as \"2 kN/mm\"";
    internal const string SettlementOfGuide = "a guide is free up and down: its settlement would change nothing";

    internal const string NoLoadKind = "a load needs its kind: point, distributed or couple";
    internal const string NoAt = "needs at = its place, as \"4 ft\"";
    internal const string NoForce = "a point load needs its force, as \"12 kN\"";
    internal const string NoMoment = "a couple needs its moment, as \"5 kN*m\"";
    internal const string NoIntensity = "a distributed load needs its intensity, a pressure and width, or a total";
    internal const string EndWithoutIntensity = "intensity_end goes with intensity";
    internal const string EndWithoutPressure = "pressure_end goes with pressure and width";
    internal const string NoWidth = "a pressure needs the width it acts on, as \"4 ft\"";
    internal const string NoPressure = "a width needs the pressure that acts on it, as \"50 psf\"";
    internal const string AxialPressure = "a pressure acts across the beam: give an axial load by intensity or total";
    internal const string NoCaseOfWeight = "own weight needs the case it belongs to, as \"dead\"";

    internal const string NoSectionForm =
        "a section needs a shape, or width and depth, or a diameter, or the sizes of an I, or its inertia";
    internal const string WallTooThick = "the wall is half the diameter or more: leave it out for a solid bar";
    internal const string FlangesTooThick =
        "the two flanges leave no web: together they are as thick as the section is deep";
    internal const string WebTooThick = "the web is thicker than the flanges are wide";
    internal const string NoModulus = "a material needs a grade, or its modulus, as \"11 GPa\"";
    internal const string GradeAndModulus = "the grade gives the modulus: write one of the two";

    internal const string NotWetOrDry = "wet_service is 1 where the timber gets wet in use, else 0";

    internal const string NoCombinationName = "a combination needs a name, as \"service\"";
    internal const string NoFactors =
        "a combination needs the factor of at least one case, as { dead = 1.0, live = 1.0 }";
    internal const string NoCase = "needs the name of a case, as \"live\"";
    internal const string NoAxles =
        "a rolling load needs at least one axle, as { offset = \"0 m\", force = \"20 kN\" }";
    internal const string NoOffset = "an axle needs its offset from the first axle, as \"1.2 m\"";
    internal const string NoAxleForce = "an axle needs its force, as \"20 kN\"";
    internal const string NoStatedSupport = "a stated figure needs the label of its support, as \"A\"";
    internal const string NothingStated = "nothing is stated here: give vertical, horizontal or moment";
    internal const string CombinationAndCase = "a figure is stated for a combination or for a case, not both";

    internal const string ShearDeforms = "shear deforms this beam, so the ratio of the two stiffnesses counts";
    internal const string SpringStands = "a spring stands here, and how much it yields against the beam counts";
    internal const string SupportMoves = "a support moves, and what that does depends on the beam's stiffness";
    internal const string SlopeCouples = "a sloped surface ties the beam's stiffness along and across together";
    internal const string OthersHaveStiffness = "others have a stiffness, so all must";

    internal const string Huge = "this is far outside what a beam can be: is its unit right?";
    internal const string EmptyName = "a name cannot be empty";
    internal const string NotTrueOrFalse = "expected true or false";

    internal static string NotOneOf(string text, IReadOnlyList<string> words) =>
        $"expected {KindWords.Either(words)}, found {Found.Quoted(text)}{Near(text, words)}";

    internal static string TooManyAsked(int most) => $"a preset asks for at most {most} cells";

    internal static string NotPositive(string text) => $"{Found.Quoted(text)} is not greater than zero";

    internal static string Negative(string text) => $"{Found.Quoted(text)} is less than zero";

    internal static string NotAShare(string text) =>
        $"{Found.Quoted(text)} is no share of a case: it lies between 0, none of it lasts, and 1, all of it does";

    internal static string TakesNo(string what, string key, IReadOnlyList<string> keys) =>
        $"{what} takes no {key}; it takes {And(keys)}";

    internal static string OnlyWith(string key, IReadOnlyList<string> kinds) =>
        $"{key} belongs to a support of kind {KindWords.Either(kinds)}";

    internal static string Needs(string what, string key) => $"{what} needs its {key.Replace('_', ' ')}";

    internal static string TwoForms(string what, string first, string second) =>
        $"{what} is given one way: {first} and {second} both stand";

    internal static string OffBeam(string where, string length) =>
        $"this is at {where}, off the beam, which runs from 0 to {length}";

    internal static string SamePlace(string what, int row) =>
        $"{what} {row} stands at this place already";

    internal static string SameLabel(string label, int row) =>
        $"{Found.Quoted(label)} is the label of support {row} too: labels differ by more than capitals";

    internal static string LabelClash(string label, int row) =>
        $"{Found.Quoted(label)} is the letter that support {row} goes by while it has no label of its own: "
        + "label that one too, or choose another";

    internal static string UnknownName(string what, string name, IReadOnlyList<string> names) => names.Count == 0
        ? $"no {what} is called {Found.Quoted(name)}: none stands in this file"
        : $"no {what} is called {Found.Quoted(name)}{Near(name, names)}";

    internal static string IsAShape(string name) =>
        $"no section is called {Found.Quoted(name)}: it is a catalogue shape, "
        + "so add a section of that shape and name it";

    internal static string IsAGrade(string name) =>
        $"no material is called {Found.Quoted(name)}: it is a catalogue grade, "
        + "so add a material of that grade and name it";

    internal static string UnknownFactor(string name, IReadOnlyList<string> names) =>
        $"no factor is called {Found.Quoted(name)}{Near(name, names)}; those of timber are {And(names)}";

    internal static string SameFactor(string name, string before) =>
        $"{Found.Quoted(name)} and {Found.Quoted(before)} are one factor: write it once";

    internal static string UnknownCase(string name, IReadOnlyList<string> names) =>
        $"no load stands in a case {Found.Quoted(name)}, and it is none of the usual ones{Near(name, names)}";

    internal static string CaseIsThere(string name) =>
        $"there is a case {Found.Quoted(name)} already: choose another name, or give its loads that case instead";

    internal static string NameIsFree(string name) =>
        $"no other case is called {Found.Quoted(name)} any more: type it once more and this one is";

    internal static string SameName(string what, string name) => $"another {what} is called {Found.Quoted(name)} too";

    internal static string SamePattern(string name) =>
        $"case {Found.Quoted(name)} has a pattern already: one is enough";

    internal static string UnknownKey(string key) => $"{Found.Quoted(key)} is no cell of this beam";

    internal static string NoWeight(int span, string missing) =>
        $"own weight counts, and that of span {span + 1} is not known: it needs {missing}";

    internal static string NoStiffness(int span, string missing, string why) =>
        $"span {span + 1} needs a {missing}: statics alone does not solve this beam, and {why}";

    internal static string NoArea(int span) =>
        $"span {span + 1} needs the area of its section: {SlopeCouples}";

    internal static string NoShear(int span, string missing) =>
        $"span {span + 1} needs its {missing}: shear_deformation is true";

    /// <summary>": did you mean X?" where one of the names is spelt much like it, else nothing.</summary>
    private static string Near(string text, IReadOnlyList<string> names) =>
        NearSpelling.Of(text, names) is [_, ..] near ? $": did you mean {KindWords.Either(near)}?" : "";

    private static string And(IReadOnlyList<string> words) =>
        $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";
}
