using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Document;

/// <summary>
/// The keys of every table of the beam file. Reading, writing, the form and the key-path look-up all walk these lists,
/// so a key is added in one place.
/// </summary>
public static class Fields
{
    /// <summary>Keys at the top of the file; <c>ask</c> is a list of its own, <see cref="Renames"/> are figures.</summary>
    public static ImmutableArray<Field<BeamDocument>> Top { get; } =
    [
        new("title", Text, row => row.Title, (row, text) => row with { Title = text }),
        new("notes", Text, row => row.Notes, (row, text) => row with { Notes = text }),
        new("display", OneOf("us", "si"), row => row.Display, (row, text) => row with { Display = text }),
        new("shear_deformation", Truth,
            row => row.ShearDeformation, (row, text) => row with { ShearDeformation = text }),
    ];

    /// <summary>Names that cases shall have and cannot have yet.</summary>
    public static FiguresField<BeamDocument> Renames { get; } =
        new("rename", Case, row => row.Renames, (row, figures) => row with { Renames = figures });

    /// <summary>Keys of the check record's text.</summary>
    public static ImmutableArray<Field<RecordEntry>> Record { get; } =
    [
        new("job", Text, row => row.Job, (row, text) => row with { Job = text }),
        new("location", Text, row => row.Location, (row, text) => row with { Location = text }),
        new("prepared_by", Text, row => row.PreparedBy, (row, text) => row with { PreparedBy = text }),
        new("prepared_for", Text, row => row.PreparedFor, (row, text) => row with { PreparedFor = text }),
        new("checked_by", Text, row => row.CheckedBy, (row, text) => row with { CheckedBy = text }),
        new("date", Text, row => row.Date, (row, text) => row with { Date = text }),
        new("category", Text, row => row.Category, (row, text) => row with { Category = text }),
    ];

    /// <summary>Keys of a span.</summary>
    public static ImmutableArray<Field<SpanEntry>> Span { get; } =
    [
        new("length", Length, row => row.Length, (row, text) => row with { Length = text }),
        new("to", Length, row => row.To, (row, text) => row with { To = text }),
        new("section", Name("section"), row => row.Section, (row, text) => row with { Section = text }),
        new("material", Name("material"), row => row.Material, (row, text) => row with { Material = text }),
        new("unbraced", new Wanted.LengthOr("braced"),
            row => row.Unbraced, (row, text) => row with { Unbraced = text }),
    ];

    /// <summary>Keys of a support.</summary>
    public static ImmutableArray<Field<SupportEntry>> Support { get; } =
    [
        new("kind", OneOf("pin", "roller", "fixed", "guide", "spring"),
            row => row.Kind, (row, text) => row with { Kind = text }),
        new("joint", Joint, row => row.Joint, (row, text) => row with { Joint = text }),
        new("at", Place, row => row.At, (row, text) => row with { At = text }),
        new("label", Label, row => row.Label, (row, text) => row with { Label = text }),
        new("acts", OneOf("both", "up", "down"), row => row.Acts, (row, text) => row with { Acts = text }),
        new("surface", Angle, row => row.Surface, (row, text) => row with { Surface = text }),
        new("stiffness", Measure(QuantityKind.Stiffness),
            row => row.Stiffness, (row, text) => row with { Stiffness = text }),
        new("rotational_stiffness", Measure(QuantityKind.RotationalStiffness),
            row => row.RotationalStiffness, (row, text) => row with { RotationalStiffness = text }),
        new("settlement", Length, row => row.Settlement, (row, text) => row with { Settlement = text }),
        new("rotation", Angle, row => row.Rotation, (row, text) => row with { Rotation = text }),
        new("bearing", Length, row => row.Bearing, (row, text) => row with { Bearing = text }),
        new("bearing_allowable", Stress,
            row => row.BearingAllowable, (row, text) => row with { BearingAllowable = text }),
        new("pad", new Wanted.TwoLengths(), row => row.Pad, (row, text) => row with { Pad = text }),
        new("allowable_pressure", Stress,
            row => row.AllowablePressure, (row, text) => row with { AllowablePressure = text }),
    ];

    /// <summary>Keys of a hinge.</summary>
    public static ImmutableArray<Field<HingeEntry>> Hinge { get; } =
    [
        new("joint", Joint, row => row.Joint, (row, text) => row with { Joint = text }),
        new("at", Place, row => row.At, (row, text) => row with { At = text }),
    ];

    /// <summary>Keys of a load, of every kind.</summary>
    public static ImmutableArray<Field<LoadEntry>> Load { get; } =
    [
        new("kind", OneOf("point", "distributed", "couple"), row => row.Kind, (row, text) => row with { Kind = text }),
        new("label", Text, row => row.Label, (row, text) => row with { Label = text }),
        new("case", Case, row => row.Case, (row, text) => row with { Case = text }),
        new("at", Place, row => row.At, (row, text) => row with { At = text }),
        new("force", Force, row => row.Force, (row, text) => row with { Force = text }),
        new("angle", Angle, row => row.Angle, (row, text) => row with { Angle = text }),
        new("from", Place, row => row.From, (row, text) => row with { From = text }),
        new("to", Place, row => row.To, (row, text) => row with { To = text }),
        new("intensity", ForcePerLength, row => row.Intensity, (row, text) => row with { Intensity = text }),
        new("intensity_end", ForcePerLength, row => row.IntensityEnd, (row, text) => row with { IntensityEnd = text }),
        new("pressure", Stress, row => row.Pressure, (row, text) => row with { Pressure = text }),
        new("pressure_end", Stress, row => row.PressureEnd, (row, text) => row with { PressureEnd = text }),
        new("width", Length, row => row.Width, (row, text) => row with { Width = text }),
        new("total", Force, row => row.Total, (row, text) => row with { Total = text }),
        new("axial", Truth, row => row.Axial, (row, text) => row with { Axial = text }),
        new("moment", Moment, row => row.Moment, (row, text) => row with { Moment = text }),
        new("side", OneOf("left", "right"), row => row.Side, (row, text) => row with { Side = text }),
    ];

    /// <summary>Keys of the own weight.</summary>
    public static ImmutableArray<Field<SelfWeightEntry>> SelfWeight { get; } =
    [
        new("case", Case, row => row.Case, (row, text) => row with { Case = text }),
    ];

    /// <summary>Keys of a section, in every form; its name is not among them.</summary>
    public static ImmutableArray<Field<SectionEntry>> Section { get; } =
    [
        new("shape", Name("shape"), row => row.Shape, (row, text) => row with { Shape = text }),
        new("width", Length, row => row.Width, (row, text) => row with { Width = text }),
        new("depth", Length, row => row.Depth, (row, text) => row with { Depth = text }),
        new("plies", new Wanted.Whole(1), row => row.Plies, (row, text) => row with { Plies = text }),
        new("diameter", Length, row => row.Diameter, (row, text) => row with { Diameter = text }),
        new("wall", Length, row => row.Wall, (row, text) => row with { Wall = text }),
        new("flange_width", Length, row => row.FlangeWidth, (row, text) => row with { FlangeWidth = text }),
        new("flange_thickness", Length, row => row.FlangeThickness, (row, text) => row with { FlangeThickness = text }),
        new("web_thickness", Length, row => row.WebThickness, (row, text) => row with { WebThickness = text }),
        new("inertia", Measure(QuantityKind.Inertia), row => row.Inertia, (row, text) => row with { Inertia = text }),
        new("area", Area, row => row.Area, (row, text) => row with { Area = text }),
        new("section_modulus", Measure(QuantityKind.SectionModulus),
            row => row.SectionModulus, (row, text) => row with { SectionModulus = text }),
        new("shear_area", Area, row => row.ShearArea, (row, text) => row with { ShearArea = text }),
        new("weight", ForcePerLength, row => row.Weight, (row, text) => row with { Weight = text }),
        new("flat", Truth, row => row.Flat, (row, text) => row with { Flat = text }),
    ];

    /// <summary>Keys of a material; its name and <see cref="MaterialFactors"/> are not among them.</summary>
    public static ImmutableArray<Field<MaterialEntry>> Material { get; } =
    [
        new("grade", Name("grade"), row => row.Grade, (row, text) => row with { Grade = text }),
        new("modulus", Stress, row => row.Modulus, (row, text) => row with { Modulus = text }),
        new("shear_modulus", Stress, row => row.ShearModulus, (row, text) => row with { ShearModulus = text }),
        new("density", Measure(QuantityKind.UnitWeight),
            row => row.Density, (row, text) => row with { Density = text }),
        new("allowable_bending", Stress,
            row => row.AllowableBending, (row, text) => row with { AllowableBending = text }),
        new("allowable_shear", Stress, row => row.AllowableShear, (row, text) => row with { AllowableShear = text }),
        new("allowable_bearing", Stress,
            row => row.AllowableBearing, (row, text) => row with { AllowableBearing = text }),
        new("design_bending", Stress, row => row.DesignBending, (row, text) => row with { DesignBending = text }),
        new("design_shear", Stress, row => row.DesignShear, (row, text) => row with { DesignShear = text }),
        new("design_bearing", Stress, row => row.DesignBearing, (row, text) => row with { DesignBearing = text }),
        new("yield", Stress, row => row.Yield, (row, text) => row with { Yield = text }),
        new("creep", Number, row => row.Creep, (row, text) => row with { Creep = text }),
    ];

    /// <summary>Factors of a material, by name.</summary>
    public static FiguresField<MaterialEntry> MaterialFactors { get; } =
        new("factors", Number, row => row.Factors, (row, figures) => row with { Factors = figures });

    /// <summary>Keys of a combination; <see cref="CombinationFactors"/> are not among them.</summary>
    public static ImmutableArray<Field<CombinationEntry>> Combination { get; } =
    [
        new("name", Text, row => row.Name, (row, text) => row with { Name = text }),
        new("basis", OneOf("service", "factored"), row => row.Basis, (row, text) => row with { Basis = text }),
    ];

    /// <summary>Factor of each case that a combination counts.</summary>
    public static FiguresField<CombinationEntry> CombinationFactors { get; } =
        new("factors", Number, row => row.Factors, (row, figures) => row with { Factors = figures });

    /// <summary>Keys of a pattern.</summary>
    public static ImmutableArray<Field<PatternEntry>> Pattern { get; } =
    [
        new("case", Case, row => row.Case, (row, text) => row with { Case = text }),
    ];

    /// <summary>Keys of a rolling load; its axles are rows of their own.</summary>
    public static ImmutableArray<Field<RollingEntry>> Rolling { get; } =
    [
        new("label", Text, row => row.Label, (row, text) => row with { Label = text }),
        new("case", Case, row => row.Case, (row, text) => row with { Case = text }),
        new("impact", Measure(QuantityKind.Share), row => row.Impact, (row, text) => row with { Impact = text }),
    ];

    /// <summary>Keys of an axle.</summary>
    public static ImmutableArray<Field<AxleEntry>> Axle { get; } =
    [
        new("offset", Length, row => row.Offset, (row, text) => row with { Offset = text }),
        new("force", Force, row => row.Force, (row, text) => row with { Force = text }),
    ];

    /// <summary>Keys of a stated reaction.</summary>
    public static ImmutableArray<Field<StatedEntry>> Stated { get; } =
    [
        new("support", Label, row => row.Support, (row, text) => row with { Support = text }),
        new("vertical", Force, row => row.Vertical, (row, text) => row with { Vertical = text }),
        new("horizontal", Force, row => row.Horizontal, (row, text) => row with { Horizontal = text }),
        new("moment", Moment, row => row.Moment, (row, text) => row with { Moment = text }),
        new("combination", Name("combination"), row => row.Combination, (row, text) => row with { Combination = text }),
        new("case", Case, row => row.Case, (row, text) => row with { Case = text }),
        new("extreme", OneOf("max", "min"), row => row.Extreme, (row, text) => row with { Extreme = text }),
        new("basis", OneOf("service", "factored", "unknown"),
            row => row.Basis, (row, text) => row with { Basis = text }),
        new("tolerance", ShareOrForce, row => row.Tolerance, (row, text) => row with { Tolerance = text }),
        new("source", Text, row => row.Source, (row, text) => row with { Source = text }),
    ];

    /// <summary>Keys of how well places and loads are known.</summary>
    public static ImmutableArray<Field<ToleranceEntry>> Tolerance { get; } =
    [
        new("position", Length, row => row.Position, (row, text) => row with { Position = text }),
        new("load", ShareOrForce, row => row.Load, (row, text) => row with { Load = text }),
    ];

    /// <summary>
    /// Keys of what the beam is held against; <see cref="DeflectionCases"/> and <see cref="Lasting"/> are not among them.
    /// </summary>
    public static ImmutableArray<Field<LimitsEntry>> Limits { get; } =
    [
        new("deflection", ShareOfSpan, row => row.Deflection, (row, text) => row with { Deflection = text }),
        new("deflection_overhang", ShareOfSpan,
            row => row.DeflectionOverhang, (row, text) => row with { DeflectionOverhang = text }),
        new("deflection_final", ShareOfSpan,
            row => row.DeflectionFinal, (row, text) => row with { DeflectionFinal = text }),
        new("deflection_final_overhang", ShareOfSpan,
            row => row.DeflectionFinalOverhang, (row, text) => row with { DeflectionFinalOverhang = text }),
        new("deflection_absolute", Length,
            row => row.DeflectionAbsolute, (row, text) => row with { DeflectionAbsolute = text }),
        new("rules", OneOf(
            "elastic allowable", "AISC 360-16 ASD", "AISC 360-16 LRFD", "EN 1993-1-1", "NDS", "EN 1995-1-1"),
            row => row.Rules, (row, text) => row with { Rules = text }),
    ];

    /// <summary>Deflection limits of single cases.</summary>
    public static FiguresField<LimitsEntry> DeflectionCases { get; } =
        new("deflection_cases", ShareOfSpan,
            row => row.DeflectionCases, (row, figures) => row with { DeflectionCases = figures });

    /// <summary>Share of each case that lasts.</summary>
    public static FiguresField<LimitsEntry> Lasting { get; } =
        new("lasting", Number, row => row.Lasting, (row, figures) => row with { Lasting = figures });

    private static Wanted Text => new Wanted.FreeText();

    private static Wanted Truth => new Wanted.Truth();

    private static Wanted Number => new Wanted.BareNumber();

    private static Wanted Joint => new Wanted.Whole(0);

    private static Wanted Place => new Wanted.PlaceOnBeam();

    private static Wanted Label => new Wanted.SupportLabel();

    private static Wanted Case => Name("case");

    private static Wanted Length => Measure(QuantityKind.Length);

    private static Wanted Area => Measure(QuantityKind.Area);

    private static Wanted Angle => Measure(QuantityKind.Angle);

    private static Wanted Force => Measure(QuantityKind.Force);

    private static Wanted ForcePerLength => Measure(QuantityKind.ForcePerLength);

    private static Wanted Stress => Measure(QuantityKind.Pressure);

    private static Wanted Moment => Measure(QuantityKind.Moment);

    private static Wanted ShareOfSpan => new Wanted.ShareOfSpan();

    private static Wanted ShareOrForce => new Wanted.ShareOr(QuantityKind.Force);

    private static Wanted.Measure Measure(QuantityKind kind) => new Wanted.Measure(kind);

    private static Wanted.Name Name(string of) => new Wanted.Name(of);

    private static Wanted.OneOf OneOf(params string[] words) => new Wanted.OneOf(words);
}
