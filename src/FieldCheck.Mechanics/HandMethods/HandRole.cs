namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What a named number of the working stands for.</summary>
public enum HandRole
{
    /// <summary>Force of a support along the beam, positive to the right; index: the support.</summary>
    Horizontal,

    /// <summary>Force of a support across the beam, positive up; index: the support.</summary>
    Vertical,

    /// <summary>Push of a support square to its sloped surface, positive into the beam; index: the support.</summary>
    Normal,

    /// <summary>Couple that a support exerts on the beam, positive counter-clockwise; index: the support.</summary>
    Couple,

    /// <summary>Where a support stands; index: the support.</summary>
    SupportPlace,

    /// <summary>How far a surface rises to the right; index: the support.</summary>
    Surface,

    /// <summary>Sine of a surface's slope; index: the support.</summary>
    SurfaceSine,

    /// <summary>Cosine of a surface's slope; index: the support.</summary>
    SurfaceCosine,

    /// <summary>Tangent of a surface's slope; index: the support.</summary>
    SurfaceTangent,

    /// <summary>
    /// Force across the beam in a hinge: up on the part that is worked first, down on its neighbour; index: the hinge.
    /// </summary>
    HingeForce,

    /// <summary>Where a hinge stands; index: the hinge.</summary>
    HingePlace,

    /// <summary>Size of a load as one force; index: the load, part: the piece of it.</summary>
    LoadForce,

    /// <summary>Where that force acts; index: the load, part: the piece of it.</summary>
    LoadPlace,

    /// <summary>Length on which a piece of a load is spread; index: the load, part: the piece of it.</summary>
    LoadWidth,

    /// <summary>Intensity of a load at the left of a piece, in this combination; index: the load, part: the piece.</summary>
    Intensity,

    /// <summary>Intensity of a load at the right of a piece; index: the load, part: the piece.</summary>
    IntensityEnd,

    /// <summary>How much the greater intensity of a piece is above the smaller; index: the load, part: the piece.</summary>
    IntensityStep,

    /// <summary>Size of a couple that loads the beam; index: the load.</summary>
    LoadCouple,

    /// <summary>Size of a load's part along the beam; index: the load, part: the piece of it.</summary>
    LoadAlong,

    /// <summary>Bending moment over a node, positive sagging; index: the node.</summary>
    SupportMoment,

    /// <summary>Bending moment just left of a node where it jumps, positive sagging; index: the node.</summary>
    MomentLeft,

    /// <summary>Bending moment just right of a node where it jumps, positive sagging; index: the node.</summary>
    MomentRight,

    /// <summary>Movement down of a node times the rigidity of comparison; index: the node.</summary>
    ScaledMovement,

    /// <summary>Movement down of a support that yields or settles; index: the support.</summary>
    Movement,

    /// <summary>Turn of the beam at a support that yields, counter-clockwise, as a plain number; index: the support.</summary>
    Turn,

    /// <summary>Length of a bay between two nodes; index and part: the nodes at the left and right of the bay.</summary>
    BayLength,

    /// <summary>Rigidity of comparison over that of a bay; index and part: the nodes at the left and right of the bay.</summary>
    RigidityRatio,

    /// <summary>Load term of a bay at its left end; index and part: the nodes at the left and right of the bay.</summary>
    LoadTermLeft,

    /// <summary>Load term of a bay at its right end; index and part: the nodes at the left and right of the bay.</summary>
    LoadTermRight,

    /// <summary>Flexural rigidity; index and part: the nodes at the left and right of the bay.</summary>
    Rigidity,

    /// <summary>Shear just left of a mark; index: the mark.</summary>
    ShearLeft,

    /// <summary>Shear just right of a mark; index: the mark.</summary>
    ShearRight,

    /// <summary>Bending moment just left of a mark; index: the mark.</summary>
    SectionMomentLeft,

    /// <summary>Bending moment just right of a mark; index: the mark.</summary>
    SectionMomentRight,

    /// <summary>How far behind a mark the shear is zero; index: the mark.</summary>
    ZeroShearDistance,

    /// <summary>A square root on the way to that; index: the mark.</summary>
    ZeroShearRoot,

    /// <summary>How much an intensity grows along a length; index: the mark behind it.</summary>
    IntensitySlope,

    /// <summary>Length of a stretch between two marks; index: the mark behind it.</summary>
    StretchLength,

    /// <summary>Intensity of an even load on a stretch, all loads together, positive down; index: the mark behind it.</summary>
    StretchEven,

    /// <summary>Intensity at the left of a stretch, all loads together, positive down; index: the mark behind it.</summary>
    StretchStart,

    /// <summary>Intensity at the right of a stretch; index: the mark behind it.</summary>
    StretchEnd,

    /// <summary>Where the load on a stretch is nothing and changes its sense; index: the mark behind it.</summary>
    LoadTurnPlace,

    /// <summary>Place of zero shear; index: the mark behind its stretch.</summary>
    ZeroShear,

    /// <summary>Bending moment at a place of zero shear; index: the mark behind its stretch.</summary>
    PeakMoment,

    /// <summary>Axial force just right of a mark; index: the mark.</summary>
    AxialRight,

    /// <summary>Axial rigidity of a portion between two supports; index: the left support, part: the portion.</summary>
    PortionRigidity,

    /// <summary>The first portion's axial rigidity over that of another; index: the left support, part: the portion.</summary>
    PortionRatio,

    /// <summary>Axial force just right of a support that holds along; index: the support.</summary>
    AxialBetween,

    /// <summary>How far a support settles, down; index: the support.</summary>
    Settlement,

    /// <summary>Turn that a support imposes, as a plain number, counter-clockwise; index: the support.</summary>
    ImposedTurn,

    /// <summary>Force across for a movement of one; index: the support.</summary>
    Stiffness,

    /// <summary>Moment for a turn of one; index: the support.</summary>
    TurnStiffness,

    /// <summary>Length that stands for a spring in turning; index: the support.</summary>
    TurnLength,

    /// <summary>Length of a bay times its rigidity ratio; index and part: the nodes at its left and right.</summary>
    ReducedLength,

    /// <summary>Shear rigidity; index and part: the nodes at the left and right of a bay.</summary>
    ShearRigidity,

    /// <summary>Length that stands for shear; index and part: the nodes at the left and right of a bay.</summary>
    ShearLength,

    /// <summary>Upward force at the left end of a bay hung as a simple span; index and part: its nodes.</summary>
    SimpleLeft,

    /// <summary>Upward force at the right end of a bay hung as a simple span; index and part: its nodes.</summary>
    SimpleRight,

    /// <summary>Shear that the end moments of a bay make; index and part: its nodes.</summary>
    MomentShare,

    /// <summary>Distance of a load's centre from the left end of its bay; index: the load, part: the piece of it.</summary>
    FromBayLeft,

    /// <summary>Distance of a load's centre from the right end of its bay; index: the load, part: the piece of it.</summary>
    FromBayRight,

    /// <summary>Axial rigidity; index: the span.</summary>
    AxialRigidity,

    /// <summary>How far a force of one along the beam moves a sloped support to the right; index: the support.</summary>
    StretchOfOne,

    /// <summary>How far the loads along the beam move a sloped support to the right; index: the support.</summary>
    ShiftByLoads,

    /// <summary>Movement down of a node; index: the node.</summary>
    NodeMovement,
}
