using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Building;

/// <summary>A beam as read: the model for the solver, and what its rows were called on the sheet.</summary>
/// <param name="Model">The beam in SI.</param>
/// <param name="Supports">One for each support of the model, in its order.</param>
/// <param name="Loads">Every load of the model, in the order of the sheet; own weight first.</param>
/// <param name="Display">The units that results are shown in.</param>
public sealed record BuiltBeam(
    BeamModel Model,
    ImmutableArray<NamedSupport> Supports,
    ImmutableArray<NamedLoad> Loads,
    DisplayUnits Display)
{
    /// <summary>What each span is made of, one for each span of the model.</summary>
    public required ImmutableArray<Stick> Sticks { get; init; }

    /// <summary>What is known only to plus or minus, in the order of the sheet.</summary>
    public ImmutableArray<UncertainInput> Uncertain { get; init; } = [];

    /// <summary>True: what rolls over the beam is known only to plus or minus, which no band takes.</summary>
    public bool HasUncertainRolling { get; init; }

    /// <summary>True: something of the beam, or of what rolls over it, is known only to plus or minus.</summary>
    public bool IsUncertain => HasUncertainRolling || !Uncertain.IsEmpty;

    /// <summary>Cases whose loads may stand or not stand bay by bay, as indices into those of the model.</summary>
    public ImmutableArray<int> PatternCases { get; init; } = [];

    /// <summary>The loads that roll over the beam, in the order of the sheet.</summary>
    public ImmutableArray<RollingLoad> Rolling { get; init; } = [];

    /// <summary>True: names are told in the letters that were typed; false: in plain ASCII, as columns of a terminal need them.</summary>
    public bool KeepsLetters { get; init; }

    /// <summary>True: more may happen to the beam than its combinations say, by patterns or rolling loads.</summary>
    public bool Varies => !PatternCases.IsEmpty || !Rolling.IsEmpty;

    /// <summary>All that may happen to the beam, for the mechanics.</summary>
    public EnvelopeProblem Situations => new(Model, PatternCases, Rolling);

    /// <summary>True: no stiffness was known, and the beam was taken as uniform.</summary>
    public bool UniformStiffnessAssumed { get; init; }

    /// <summary>True: no modulus was known, and inertias were taken as ratios: one modulus all along.</summary>
    public bool OneModulusAssumed { get; init; }

    /// <summary>True: areas were not known although forces along the beam depend on them: taken as uniform.</summary>
    public bool UniformAreaAssumed { get; init; }
}
