using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Bending and the force along a member as a plain sum, |N| and |M| each times a share.</summary>
/// <param name="Sum">The greatest sum.</param>
/// <param name="Axial">The force along in it, as a size [N].</param>
/// <param name="Moment">The moment in it, as a size [N·m].</param>
internal sealed record CombinedDemand(Demand Sum, double Axial, double Moment)
{
    /// <summary>The greatest sum on the spans of a member.</summary>
    /// <param name="member">The actions on the member.</param>
    /// <param name="perTension">What a tension of one counts.</param>
    /// <param name="perCompression">What a compression of one counts.</param>
    /// <param name="perMoment">What a moment of one counts.</param>
    internal static CombinedDemand Of(
        MemberDemands member, double perTension, double perCompression, double perMoment) => member.Of.Varies
        ? Bound(member, perTension, perCompression, perMoment)
        : Exact(member, perTension, perCompression, perMoment);

    /// <summary>
    /// |a| + |b| is the greatest of a + b, a - b, -a + b and -a - b, so the sum peaks where one of four polynomials does.
    /// </summary>
    private static CombinedDemand Exact(
        MemberDemands member, double perTension, double perCompression, double perMoment)
    {
        Demand? greatest = null;
        BeamResponse? response = null;
        foreach ((Situation situation, BeamResponse answer) in member.Of.Answers)
        {
            foreach (int span in member.Spans)
            {
                Peak peak = On(member, answer, span, (perTension, -perCompression), perMoment);
                Demand own = new(peak.Value, peak.Position, situation) { Span = span };
                Demand greater = Demand.Greater(greatest, own);
                response = ReferenceEquals(greater, greatest) ? response : answer;
                greatest = greater;
            }
        }

        (double axial, double moment) = At(response!, greatest!, perTension, perCompression, perMoment);
        return new CombinedDemand(greatest!, axial, moment);
    }

    /// <summary>The parts on that side of the place on which the sum is greater.</summary>
    private static (double Axial, double Moment) At(
        BeamResponse response, Demand greatest, double perTension, double perCompression, double perMoment)
    {
        (SectionState left, SectionState right) = response.At(greatest.Position);
        SectionState state = Sum(right) > Sum(left) ? right : left;
        return (Math.Abs(state.Axial), Math.Abs(state.Moment));

        double Sum(SectionState at) =>
            Math.Max(perTension * at.Axial, -perCompression * at.Axial) + perMoment * Math.Abs(at.Moment);
    }

    private static Peak On(
        MemberDemands member, BeamResponse answer, int span, (double, double) perAxial, double perMoment)
    {
        Span<double> axial = stackalloc double[Piece.MostCoefficients];
        Span<double> sum = stackalloc double[Piece.MostCoefficients];
        Peak peak = new();
        double from = member.Of.Problem.Model.JointPositions[span];
        double to = member.Of.Problem.Model.JointPositions[span + 1];
        foreach (ref readonly Piece piece in answer.PiecesOn(from, to))
        {
            foreach (double shareOfAxial in (ReadOnlySpan<double>)[perAxial.Item1, perAxial.Item2])
            {
                foreach (double shareOfMoment in (ReadOnlySpan<double>)[perMoment, -perMoment])
                {
                    axial.Clear();
                    sum.Clear();
                    piece.Polynomial(Curve.Axial, axial);
                    int count = piece.Polynomial(Curve.Moment, sum);
                    for (int k = 0; k < count; k++)
                    {
                        sum[k] = shareOfMoment * sum[k] + shareOfAxial * axial[k];
                    }

                    double start = shareOfMoment * piece.AtStart(Curve.Moment) + shareOfAxial * piece.AtStart(Curve.Axial);
                    double end = shareOfMoment * piece.AtEnd(Curve.Moment) + shareOfAxial * piece.AtEnd(Curve.Axial);
                    peak.Take(sum[..count], start, end, piece);
                }
            }
        }

        return peak;
    }

    /// <summary>The worst of each, whatever the situation of the other.</summary>
    private static CombinedDemand Bound(
        MemberDemands member, double perTension, double perCompression, double perMoment)
    {
        double tension = perTension * member.Tension.Value;
        double compression = perCompression * member.Compression.Value;
        Demand axial = tension > compression ? member.Tension : member.Compression;
        double ofAxial = Math.Max(tension, compression);
        double ofMoment = perMoment * member.Moment.Value;
        Demand at = ofMoment >= ofAxial ? member.Moment : axial;
        EnvelopeCertainty certainty =
            (EnvelopeCertainty)Math.Max((int)axial.Certainty, (int)member.Moment.Certainty);
        return new CombinedDemand(
            at with { Value = ofAxial + ofMoment, Certainty = certainty, IsBound = true },
            axial.Value,
            member.Moment.Value);
    }
}
