using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>Figures of a material; null where one is not known.</summary>
public sealed record Material
{
    /// <summary>Modulus of elasticity [N/m²]; greater than zero.</summary>
    public double? Modulus { get; init; }

    /// <summary>What use and treatment leave of the modulus [–]; greater than zero, at most 1.</summary>
    public double ModulusFactor { get; init; } = 1;

    /// <summary>The modulus that a beam of it bends with [N/m²]; null where it is not known.</summary>
    public double? ModulusInUse => Modulus * ModulusFactor;

    /// <summary>Shear modulus [N/m²]; greater than zero.</summary>
    public double? ShearModulus { get; init; }

    /// <summary>Weight per volume [N/m³]; zero or greater.</summary>
    public double? UnitWeight { get; init; }

    /// <summary>Yield stress [N/m²]; greater than zero.</summary>
    public double? Yield { get; init; }

    /// <summary>Thickness up to which the yield stress holds [m]; thicker plates yield sooner. Null: any, or not known.</summary>
    public double? YieldThickness { get; init; }

    /// <summary>What its stresses are held against under service combinations: all safety is inside.</summary>
    public Strengths? Allowable { get; init; }

    /// <summary>What its stresses are held against under factored combinations: all factors are inside.</summary>
    public Strengths? Design { get; init; }

    /// <summary>Strengths of timber before the factors of its rules; null for other materials.</summary>
    public TimberStrengths? Timber { get; init; }

    /// <summary>Factors on the strengths of timber that were chosen for this beam.</summary>
    public ImmutableArray<StrengthFactor> Factors { get; init; } = [];

    /// <summary>Share by which a lasting deflection grows in time [–]; zero or greater.</summary>
    public double? Creep { get; init; }
}
