namespace FieldCheck.Mechanics.Strength;

/// <summary>Why a check that was asked for could not be judged.</summary>
public enum NotJudgedReason
{
    /// <summary>No combination of the basis that the limit belongs to.</summary>
    NoCombination,

    /// <summary>The span has no section.</summary>
    NoSection,

    /// <summary>The section modulus is not known.</summary>
    NoSectionModulus,

    /// <summary>The area of the section is not known.</summary>
    NoArea,

    /// <summary>The section's plates, or its area in shear, are not known.</summary>
    NoShape,

    /// <summary>The rules have no such shape.</summary>
    ShapeNotInRules,

    /// <summary>The section is too slender for what is built in of the rules.</summary>
    TooSlender,

    /// <summary>It may buckle sideways between lateral supports so far apart that the rules permit it for no load.</summary>
    TooSlenderSideways,

    /// <summary>The span has no material.</summary>
    NoMaterial,

    /// <summary>The material has no yield stress.</summary>
    NoYield,

    /// <summary>The material has no strengths of the kind that the rules start from.</summary>
    NoStrength,

    /// <summary>The strengths of the grade are for pieces of other sizes.</summary>
    GradeOfOtherSize,

    /// <summary>A factor that the rules ask for is not given.</summary>
    NoFactor,

    /// <summary>How the compression side is held is not given.</summary>
    NoLateralSupport,

    /// <summary>The length of the bearing is not given.</summary>
    NoBearingLength,

    /// <summary>The width of the stick on its bearing is not known.</summary>
    NoBearingWidth,

    /// <summary>The bearing is shorter than the rules let their formula count it.</summary>
    BearingTooShort,

    /// <summary>The support also turns the beam, so that the pressure on its seat is not even.</summary>
    MomentOnSeat,

    /// <summary>A hinge stands on the bearing, so that two sticks share it.</summary>
    HingeOnSeat,

    /// <summary>No size of the pad is given.</summary>
    NoPad,

    /// <summary>The stiffness is not known, so no movement is.</summary>
    NoStiffness,

    /// <summary>
    /// The modulus for lateral stability, or another figure of the material, is not known: of a final deflection how much it
    /// creeps.
    /// </summary>
    NoModulus,

    /// <summary>There is no overhang, or no bay, for the limit to speak of.</summary>
    NothingToJudge,

    /// <summary>The beam stands in none of the situations.</summary>
    NoAnswer,

    /// <summary>No allowable or design stress is given where a limit would need it.</summary>
    NoLimit,

    /// <summary>The rules say nothing of sideways buckling between lateral supports.</summary>
    LateralNotInRules,

    /// <summary>The modulus is not that of the material that the rules are for.</summary>
    MaterialNotInRules,

    /// <summary>A force presses along the member, which may buckle; that is not worked out.</summary>
    MayBuckle,
}
