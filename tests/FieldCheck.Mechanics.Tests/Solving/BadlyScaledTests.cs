// Expected values by the script below (Python with mpmath, 70 digits): the method of initial parameters, which shares
// no step with the stiffness method. Run it with python3 to make them again.
//
// from mpmath import mp, mpf, matrix, lu_solve, sin, cos
// mp.dps = 70
//
// def solve(spans, supports, hinges, at):
//     """spans (L, EI, GA or None), supports (x, along, across, turn, slope, settlement): None free, 0 held, else a
//     spring. 8 kN/m all along, 12 kN at `at`. Unknown: movements of the left end, reactions, kinks at hinges."""
//     joints = [0.0]
//     for span in spans:
//         joints.append(joints[-1] + span[0])
//     places = sorted(set(joints) | {s[0] for s in supports} | set(hinges) | {at})
//     n = 3 + sum(k is not None for s in supports for k in s[1:4]) + len(hinges)
//     unit = lambda i: matrix([1 if j == i else 0 for j in range(n + 1)])
//     one, used, rows, held, found = unit(n), 3, [], [], {}
//     N = V = M = unit(n) * 0
//     u, v, t = unit(0), unit(1), unit(2)
//     for x, after in zip(places, places[1:] + [None]):
//         for s in [s for s in supports if s[0] == x]:
//             c, d, parts = cos(mpf(s[4])), sin(mpf(s[4])), []
//             for kind, k in enumerate(s[1:4]):
//                 parts.append(unit(n) * 0)
//                 if k is None:
//                     continue
//                 r, used = unit(used), used + 1
//                 moved = [u, c * v - d * u + mpf(s[5]) * one, t][kind]
//                 rows.append(moved if k == 0 else r + mpf(k) * moved)
//                 parts[kind] = r
//             N, V, M = N - parts[0] + d * parts[1], V + c * parts[1], M - parts[2]
//             held.append((c * parts[1], parts[2]))
//         if x in hinges:
//             rows.append(M)
//             t, used = t + unit(used), used + 1
//         if x == at:
//             found = (M, v)
//             V = V - 12000 * one
//         if after is None:
//             break
//         h, k = mpf(after) - mpf(x), max(i for i in range(len(spans)) if joints[i] <= x)
//         EI, q = mpf(spans[k][1]), mpf(-8000) * one
//         dM = h * V + h**2 / 2 * q
//         u = u + h / mpf(10)**9 * N
//         v = v + h * t + (h**2 / 2 * M + h**3 / 6 * V + h**4 / 24 * q) / EI
//         v = v - dM / spans[k][2] if spans[k][2] else v
//         t = t + (h * M + h**2 / 2 * V + h**3 / 6 * q) / EI
//         M, V = M + dM, V + h * q
//     rows += [N, V, M]
//     A = matrix([[r[j] / max(abs(c) for c in r[:n]) for j in range(n)] for r in rows])
//     z = lu_solve(A, matrix([-r[n] / max(abs(c) for c in r[:n]) for r in rows]))
//     value = lambda r: float(r[n] + sum(r[j] * z[j] for j in range(n)))
//     return [value(r) for r, _ in held], [value(m) for _, m in held], value(found[0]), -value(found[1])
//
// beam, pin, roll, fix = 2e7, (0, 0, None), (None, 0, None), (0, 0, 0)
// at = lambda x, kind, slope=0.0, settlement=0.0: (x, *kind, slope, settlement)
// def chain(lengths, stiffness=None, shear=None):
//     return [(l, e, shear) for l, e in zip(lengths, stiffness or [beam] * len(lengths))]
// def ends(lengths):
//     return [at(0.0, pin), at(sum(lengths), roll)]
// def all_joints(lengths, settlements={}):
//     x, out = 0.0, [at(0.0, pin, 0.0, settlements.get(0, 0.0))]
//     for i, l in enumerate(lengths):
//         x += l
//         out.append(at(x, roll, 0.0, settlements.get(i + 1, 0.0)))
//     return out
// def springs(ks):
//     return [at(6.0 * i, (0 if i == 0 else None, k, None)) for i, k in enumerate(ks)]
// cases = {
//     "typical": (chain([6.0, 8.0, 5.0]), all_joints([6.0, 8.0, 5.0]), [], 8.0),
//     "1 mm span between 100 m spans": (chain([100.0, 0.001, 100.0]), all_joints([100.0, 0.001, 100.0]), [], 30.0),
//     "1 mm unsupported inside 100 m": (chain([60.0, 0.001, 40.0]), ends([60.0, 0.001, 40.0]), [], 30.0),
//     "EI ratio 1e8, supported": (chain([6.0, 6.0], [1e10, 1e2]), all_joints([6.0, 6.0]), [], 2.0),
//     "EI ratio 1e8, free joint": (chain([3.0, 3.0], [1e10, 1e2]), ends([3.0, 3.0]), [], 2.0),
//     "EI ratio 1e-8, free joints": (chain([2.0, 2.0, 2.0], [1e6, 1e-2, 1e6]), [at(0.0, fix), at(6.0, fix)], [], 3.0),
//     "springs all 1e-3": (chain([6.0, 6.0]), springs([1e-3, 1e-3, 1e-3]), [], 4.0),
//     "springs all 1e12": (chain([6.0, 6.0]), springs([1e12, 1e12, 1e12]), [], 4.0),
//     "springs 1e-3, 1e12, 1e-3, 1e3": (chain([6.0, 6.0, 6.0]), springs([1e-3, 1e12, 1e-3, 1e3]), [], 4.0),
//     "20 mm settlement beside a 1 mm span": (
//         chain([6.0, 0.001, 6.0]), all_joints([6.0, 0.001, 6.0], {1: 0.02}), [], 3.0),
//     "sloped, hinged, flexible in shear": (chain([6.0, 8.0], None, 3e7),
//         [at(0.0, (0, 0, 0)), at(6.0, roll), at(14.0, roll, 0.5235987755982988)], [9.5], 8.0),
//     "1 mm span flexible in shear": (
//         chain([100.0, 0.001, 100.0], None, 3e7), all_joints([100.0, 0.001, 100.0]), [], 30.0),
//     "60 joints, ends supported": (chain([0.5] * 60), ends([0.5] * 60), [], 12.25),
//     "cantilever, 40 joints, EI alternating 1e6": (chain([0.5] * 40, [1e10, 1e4] * 20), [at(0.0, fix)], [], 7.75),
//     "three rollers 1 mrad from one point": (chain([12.0]),
//         [at(0.0, roll, -0.5), at(6.0, roll), at(12.0, roll, 0.501)], [], 4.0),
// }
// for name, case in cases.items():
//     vertical, moment, m, d = solve(*case)
//     print(name, vertical, moment, m, d)

using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>
/// Beams whose sizes differ so widely that plain doubles lose up to all digits, against a 70-digit reference.
/// </summary>
public sealed class BadlyScaledTests
{
    private const double Stiff = 2e7;
    private const double Shear = 3e7;

    [Fact]
    public void Typical() => Check(
        Beam([6, 8, 5]),
        AtEveryJoint([6, 8, 5]),
        8,
        [15773.092369477912, 74305.22088353413, 62068.67469879518, 11853.012048192772],
        18795.180722891568,
        0.005069879518072289);

    [Fact]
    public void OneMillimetreSpan_BetweenHundredMetreSpans() => Check(
        Beam([100, 0.001, 100]),
        AtEveryJoint([100, 0.001, 100]),
        30,
        [306763.5163572955, 164304421.48695555, -163299178.51148018, 300001.50816733646],
        5602905.490718865,
        201.09699971284726);

    [Fact]
    public void OneMillimetreUnsupported_InsideHundredMetres() => Check(
        Beam([60, 0.001, 40]),
        AtBothEnds([60, 0.001, 40]),
        30,
        [408404.03599964, 403603.96400036],
        8652121.0799892,
        432.33426395016255);

    [Fact]
    public void RigidityRatio1e8_Supported() => Check(
        Beam([6, 6], [1e10, 1e2]),
        AtEveryJoint([6, 6]),
        2,
        [25999.999982222223, 64000.00003555555, 17999.999982222223],
        35999.99996444445,
        9.599999981037038e-06);

    [Fact]
    public void RigidityRatio1e8_FreeJoint() => Check(
        Beam([3, 3], [1e10, 1e2]), AtBothEnds([3, 3]), 2, [32000.0, 28000.0], 48000.0, 570.0000103);

    [Fact]
    public void RigidityRatio1eMinus8_FreeJoints() => Check(
        Beam([2, 2, 2], [1e6, 1e-2, 1e6]),
        [Support.Fixed(0), Support.Fixed(6)],
        3,
        [30000.0, 30000.0],
        4333.333833333323,
        83333.4229999985,
        moments: [49666.66616666668, -49666.66616666668]);

    [Fact]
    public void Springs_AllVerySoft() => Check(
        Beam([6, 6]),
        OnSprings(1e-3, 1e-3, 1e-3),
        4,
        [37999.999979466666, 36000.00004106667, 33999.999979466666],
        87999.99991786666,
        36666666.701866664);

    [Fact]
    public void Springs_AllVeryStiff() => Check(
        Beam([6, 6]),
        OnSprings(1e12, 1e12, 1e12),
        4,
        [20888.903148136265, 70222.19370372746, 16888.903148136265],
        19555.61259254506,
        0.0032593225431876956);

    [Fact]
    public void Springs_SoftAndStiffTogether() => Check(
        Beam([6, 6, 6]),
        OnSprings(1e-3, 1e12, 1e-3, 1e3),
        4,
        [-0.01689999110539696, 122000.01683379091, 0.017032391501616076, 33999.9830338087],
        -64000.06759996442,
        -5.643996965065637);

    [Fact]
    public void SettlementBesideAOneMillimetreSpan()
    {
        Support[] supports = AtEveryJoint([6, 0.001, 6]);
        supports[1] = supports[1] with { Settlement = 0.02 };
        Check(
            Beam([6, 0.001, 6]),
            supports,
            3,
            [33357862.29137606, -400019798982.9305, 400019861683.20184, -33312554.56275271],
            100037586.8741282,
            22.515757046678843);
    }

    [Fact]
    public void SlopedHingedAndFlexibleInShear() => Check(
        Beam([6, 8], null, Shear),
        [Support.Fixed(0), Support.Roller(6), Support.Roller(14, 0.5235987755982988)],
        8,
        [-2526.315789473684, 108526.31578947368, 18000.0],
        -36000.0,
        0.0327859649122807,
        hinges: [9.5],
        moments: [-23157.894736842107, 0, 0]);

    [Fact]
    public void OneMillimetreSpan_FlexibleInShear() => Check(
        Beam([100, 0.001, 100], null, Shear),
        AtEveryJoint([100, 0.001, 100]),
        30,
        [307582.6959157648, 4499523.279793403, -3494320.6226446903, 299222.64693552203],
        5627480.877472943,
        203.2490332083648);

    [Fact]
    public void SixtyJoints_OnlyTheEndsSupported() => Check(
        Beam([.. Enumerable.Repeat(0.5, 60)]),
        AtBothEnds([.. Enumerable.Repeat(0.5, 60)]),
        12.25,
        [127100.0, 124900.0],
        956725.0,
        4.364740716145834);

    [Fact]
    public void Cantilever_RigidityAlternatingByAMillion() => Check(
        Beam(
            [.. Enumerable.Repeat(0.5, 40)],
            [.. Enumerable.Repeat((double[])[1e10, 1e4], 20).SelectMany(pair => pair)]),
        [Support.Fixed(0)],
        7.75,
        [172000.0],
        -600250.0,
        1770.2376467916667,
        moments: [1693000.0]);

    [Fact]
    public void ThreeRollersOneMilliradianFromOnePoint() => Check(
        Beam([12]),
        [Support.Roller(0, -0.5), Support.Roller(6), Support.Roller(12, 0.501)],
        4,
        [1686022.0132468338, -3260044.0264936676, 1682022.0132468338],
        6680088.052987335,
        1682.4360748286247);

    private static void Check(
        Span[] spans,
        Support[] supports,
        double at,
        double[] verticals,
        double moment,
        double deflection,
        double[]? hinges = null,
        double[]? moments = null)
    {
        double length = Joints([.. spans.Select(span => span.Length)])[^1];
        BeamResponse response = Solve(
            Beams.Beam(spans, supports, [Uniform(0, length, 8000), new Load.Point(at, 12000)], hinges));

        double force = verticals.Max(Math.Abs);
        for (int i = 0; i < verticals.Length; i++)
        {
            Equal(verticals[i], response.Reactions[i].Vertical, force);
            Equal(moments?[i] ?? 0, response.Reactions[i].Moment, force * length);
        }

        Equal(moment, response.At(at).Left.Moment);
        Equal(deflection, response.At(at).Left.Deflection);
    }

    private static Span[] Beam(double[] lengths, double[]? rigidities = null, double? shear = null) =>
        [.. lengths.Select((length, i) => new Span(length, rigidities?[i] ?? Stiff, 1e9, shear))];

    private static Support[] AtEveryJoint(double[] lengths) =>
        [.. Joints(lengths).Select((x, i) => i == 0 ? Support.Pin(x) : Support.Roller(x))];

    private static Support[] AtBothEnds(double[] lengths) => [Support.Pin(0), Support.Roller(Joints(lengths)[^1])];

    private static Support[] OnSprings(params double[] stiffnesses) =>
    [
        .. stiffnesses.Select((stiffness, i) => new Support(
            6.0 * i, i == 0 ? Restraint.Held : Restraint.Free, new Restraint.Spring(stiffness), Restraint.Free)),
    ];

    private static double[] Joints(double[] lengths)
    {
        double[] joints = new double[lengths.Length + 1];
        for (int i = 0; i < lengths.Length; i++)
        {
            joints[i + 1] = joints[i] + lengths[i];
        }

        return joints;
    }
}
