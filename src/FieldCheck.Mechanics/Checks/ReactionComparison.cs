namespace FieldCheck.Mechanics.Checks;

/// <summary>A stated reaction beside the computed one, judged in the sense in which the beam acts.</summary>
/// <remarks>
/// Only the size in the sense of the computed reaction counts: a hold-down stated at 2 kN against one of 5 kN is low, as
/// is any push stated for it. A computed reaction within the allowed difference of nothing has no sense of its own, and
/// that of the stated one counts.
/// </remarks>
public readonly record struct ReactionComparison
{
    /// <summary>The stated reaction [N or N·m], signed like the computed one.</summary>
    public required double Stated { get; init; }

    /// <summary>The computed reaction [N or N·m].</summary>
    public required double Computed { get; init; }

    /// <summary>The difference that still agrees, to either side [N or N·m].</summary>
    public required double Allowed { get; init; }

    /// <summary>What the computed reaction may be; null where all that it depends on is taken as exact.</summary>
    public required Band? Band { get; init; }

    /// <summary>What it comes to.</summary>
    public required ReactionVerdict Verdict { get; init; }

    /// <summary>Stated less computed [N or N·m].</summary>
    public double Difference => Stated - Computed;

    /// <summary>The difference as a part of the computed reaction [–], signed; null where that is 0.</summary>
    public double? Ratio => Computed == 0 ? null : Difference / Computed;

    /// <summary>True: what is stated acts the other way, and neither is as good as nothing.</summary>
    public bool IsWrongWay => Math.Abs(Computed) > Allowed && Math.Abs(Stated) > Allowed
        && Math.Sign(Stated) != Math.Sign(Computed);

    /// <summary>Compares one stated reaction with the computed one.</summary>
    /// <param name="stated">The stated reaction [N or N·m].</param>
    /// <param name="computed">The computed reaction [N or N·m].</param>
    /// <param name="allowance">How far it may be off.</param>
    /// <param name="band">What the computed reaction may be; null: just what it is.</param>
    public static ReactionComparison Of(
        double stated, double computed, ReactionAllowance allowance, Band? band = null)
    {
        double allowed = allowance.For(computed);
        ReactionVerdict verdict = Judge(Require.Finite(stated), computed, allowed);
        double half = allowance.AsWritten;
        return new ReactionComparison
        {
            Stated = stated,
            Computed = computed,
            Allowed = allowed,
            Band = band,
            Verdict = verdict != ReactionVerdict.Agrees && band?.Widened(-half, half).Holds(stated) == true
                ? ReactionVerdict.WithinBand
                : verdict,
        };
    }

    private static ReactionVerdict Judge(double stated, double computed, double allowed)
    {
        int sense = Math.Sign(Math.Abs(computed) <= allowed ? stated : computed);
        double size = Math.Abs(computed);
        return sense * stated < size - allowed ? ReactionVerdict.Low
            : sense * stated > size + allowed ? ReactionVerdict.High
            : ReactionVerdict.Agrees;
    }
}
