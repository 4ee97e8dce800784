namespace FieldCheck.Sheet;

/// <summary>The stable words that messages carry for other programs; docs/command-line.md lists the same.</summary>
public static class MessageCodes
{
    /// <summary>A support is pulled, and the sheet does not say whether it can hold down.</summary>
    public const string Uplift = "uplift";

    /// <summary>Within the plus or minus a support may be pulled, and the sheet does not say whether it can hold down.</summary>
    public const string UpliftWithin = "uplift_within";

    /// <summary>A support is pulled, and the sheet says that it can.</summary>
    public const string HoldsDown = "holds_down";

    /// <summary>A support that acts one way only has let go.</summary>
    public const string LiftsOff = "lifts_off";

    /// <summary>Within the plus or minus a support that acts one way only lets go.</summary>
    public const string LiftsOffWithin = "lifts_off_within";

    /// <summary>Within the plus or minus the beam tips, can move or has no answer.</summary>
    public const string TipsWithin = "tips_within";

    /// <summary>Within the plus or minus no beam is left: places cross, or lie off it.</summary>
    public const string BandNotWhole = "band_not_whole";

    /// <summary>With some loads away, or one rolling, the beam tips or has no answer.</summary>
    public const string Tips = "tips";

    /// <summary>Nothing holds the beam lengthways, and no load asks for it.</summary>
    public const string NotHeldLengthways = "not_held_lengthways";

    /// <summary>The supports barely hold the beam.</summary>
    public const string NearlyMovable = "nearly_movable";

    /// <summary>No answer could be found.</summary>
    public const string Undecided = "undecided";

    /// <summary>No stiffness was known, and the beam was solved as uniform.</summary>
    public const string UniformStiffnessAssumed = "uniform_stiffness_assumed";

    /// <summary>No modulus was known, and inertias were taken as ratios.</summary>
    public const string OneModulusAssumed = "one_modulus_assumed";

    /// <summary>Areas were not known, and were taken as uniform.</summary>
    public const string UniformAreaAssumed = "uniform_area_assumed";

    /// <summary>A case with loads stands in no combination of a basis.</summary>
    public const string CaseLeftOut = "case_left_out";

    /// <summary>Without combinations a load that may be away is counted against the others.</summary>
    public const string RelievingCase = "relieving_case";

    /// <summary>A combination holds several rolling loads, and they were taken one at a time.</summary>
    public const string OneRolls = "one_rolls";

    /// <summary>No load stands on the beam.</summary>
    public const string NoLoads = "no_loads";

    /// <summary>A support gets more than is stated: the unsafe side.</summary>
    public const string StatedLow = "stated_low";

    /// <summary>A support gets less than is stated.</summary>
    public const string StatedHigh = "stated_high";

    /// <summary>A stated figure agrees only because it is written to few digits.</summary>
    public const string StatedRough = "stated_rough";

    /// <summary>A stated figure was held against the loads as they stand, and more may happen.</summary>
    public const string StatedNotWorst = "stated_not_worst";

    /// <summary>A stated extreme was held against an envelope that is an estimate.</summary>
    public const string StatedEstimate = "stated_estimate";

    /// <summary>A support is pulled, thrust along or turned, and no figure states it.</summary>
    public const string NotStated = "not_stated";

    /// <summary>The beam has more than it may have.</summary>
    public const string Over = "over";

    /// <summary>Something that the sheet asks for was not judged.</summary>
    public const string NotJudged = "not_judged";

    /// <summary>A grade stands alone, and nothing asks for its strength.</summary>
    public const string StrengthNotJudged = "strength_not_judged";

    /// <summary>A check is close to its limit.</summary>
    public const string MeasureAgain = "measure_again";

    /// <summary>A span that is held all along hogs somewhere, where its bottom is pressed.</summary>
    public const string BottomNotHeld = "bottom_not_held";

    /// <summary>One factor for how long loads last stands for all combinations.</summary>
    public const string OneDurationFactor = "one_duration_factor";

    /// <summary>A section is thicker than the yield of its grade holds for.</summary>
    public const string YieldThickness = "yield_thickness";

    /// <summary>The yield of a grade is that of other shapes.</summary>
    public const string YieldShape = "yield_shape";

    /// <summary>A stress given to be held against is nearer to the yield than practice allows.</summary>
    public const string StressNearYield = "stress_near_yield";

    /// <summary>The figures of a grade of timber are for pieces of another size.</summary>
    public const string GradeSize = "grade_size";

    /// <summary>What creeps has no limit on its final deflection, which was not judged.</summary>
    public const string NoFinalLimit = "no_final_limit";

    /// <summary>A case adds no creep to a final deflection because nobody wrote what share of it lasts.</summary>
    public const string NotLasting = "not_lasting";

    /// <summary>A section is bent about its weak axis.</summary>
    public const string WeakAxis = "weak_axis";

    /// <summary>Figures of the catalogue that were not read in their source.</summary>
    public const string FromMemory = "from_memory";

    /// <summary>A material has factors that the rules chosen do not take.</summary>
    public const string FactorNotTaken = "factor_not_taken";

    /// <summary>A factor on a strength lets more than the tables of its rules do.</summary>
    public const string FactorBeyondTable = "factor_beyond_table";

    /// <summary>A section or material comes from the person's own catalogue.</summary>
    public const string OwnCatalogue = "own_catalogue";

    /// <summary>In the form: too much is uncertain for what may be within it to be found at every key.</summary>
    public const string NotFollowed = "not_followed";

    /// <summary>Something is kept with the beam and does not yet change a figure.</summary>
    public const string NotCarried = "not_carried";

    /// <summary>What a message makes of the check: that something does not hold or could not be judged, or more.</summary>
    /// <param name="code">The message's code.</param>
    public static CheckStatus StatusOf(string code) => code switch
    {
        Tips => CheckStatus.CanMove,
        Uplift or UpliftWithin or TipsWithin or StatedLow or StatedHigh or NotStated or Over or NotJudged or Undecided
            => CheckStatus.DoesNotHold,
        _ => CheckStatus.Holds,
    };
}
