// Run with SciPy 1.10.1 (python3 this-script < beams).
// It reads the beams below and writes them back with their figures ("= ..." lines); pure numbers in one set of units.
//
// import sys
// from math import sin, cos
// import numpy as np
// from scipy.integrate import solve_bvp
//
// def number(word): return None if word == '-' else word if word == 'r' else float(word)
//
// def solve(beam):
//     rows = lambda kind: [[number(w) if w not in ('L', 'R', 'across', 'along') else w for w in words[1:]]
//                          for words in beam if words[0] == kind]
//     spans, supports, hinges = rows('span'), rows('support'), [row[0] for row in rows('hinge')]
//     points, couples, spreads = rows('point'), rows('couple'), rows('spread')
//     joints = np.concatenate([[0], np.cumsum([span[0] for span in spans])])
//     xs = sorted({*joints, *hinges, *[row[0] for row in supports + points + couples + spreads],
//                  *[s[1] for s in spreads]})
//     parts = list(zip(xs, xs[1:])); n = len(parts)
//     of = [spans[max(i for i, joint in enumerate(joints[:-1]) if joint <= a)] for a, _ in parts]
//     unknown = [(i, c) for i, support in enumerate(supports) for c in range(3) if support[1 + c] is not None]
//
//     def load(k, x, way):
//         return 0 * x + sum(s[2] + (s[3] - s[2]) * (x - s[0]) / (s[1] - s[0]) for s in spreads
//                            if s[4] == way and s[0] <= parts[k][0] and parts[k][1] <= s[1])
//
//     def rhs(s, y, p):          # u along, N, v up, t turn of the section, V, M; each stretch mapped on 0..1
//         out = np.zeros_like(y)
//         for k, (a, b) in enumerate(parts):
//             _, EI, EA, GA = of[k]; u, N, v, t, V, M = y[6*k:6*k+6]; x = a + (b - a) * s
//             out[6*k:6*k+6] = (b - a) * np.array(
//                 [N / EA, -load(k, x, 'along'), t - (V / GA if GA else 0 * V), M / EI, -load(k, x, 'across'), V])
//         return out
//
//     def ends(ya, yb, p):       # the reactions p are free parameters of the boundary-value problem
//         res = []
//         for j, x in enumerate(xs):
//             left = yb[6*(j-1):6*j] if j > 0 else None; right = ya[6*j:6*j+6] if j < n else None
//             here = left if left is not None else right
//             fx, fy = sum(q[2] for q in points if q[0] == x), -sum(q[1] for q in points if q[0] == x)
//             cl = sum(q[1] for q in couples if q[0] == x and q[2] == 'L')
//             cr = sum(q[1] for q in couples if q[0] == x and q[2] == 'R'); m = 0
//             for i, (at, along, across, turn, g, down, twist) in enumerate(supports):
//                 if at != x: continue
//                 if along is not None: fx += p[unknown.index((i, 0))]; res.append(here[0])
//                 if across is not None:
//                     r = p[unknown.index((i, 1))]; fx -= sin(g) * r; fy += cos(g) * r
//                     move = -sin(g) * here[0] + cos(g) * here[2] + down
//                     res.append(move if across == 'r' else r + across * move)
//                 if turn is not None:
//                     r = p[unknown.index((i, 2))]; m += r
//                     res.append(here[3] - twist if turn == 'r' else r + turn * here[3])
//             l = left if left is not None else np.zeros(6); r = right if right is not None else np.zeros(6)
//             res += [r[1] - l[1] + fx, r[4] - l[4] - fy]
//             res += [l[5] - cl, r[5] + cr] if x in hinges else [r[5] - l[5] + m + cl + cr]
//             if left is not None and right is not None:
//                 res += [l[0] - r[0], l[2] - r[2]] + ([] if x in hinges else [l[3] - r[3]])
//         return np.array(res)
//
//     sol = solve_bvp(rhs, ends, np.linspace(0, 1, 9), np.zeros((6*n, 9)), np.zeros(len(unknown)), tol=1e-11,
//                     max_nodes=9999)
//     assert sol.status == 0, sol.message
//     out = []
//     for i, (at, *_, g, down, twist) in enumerate(supports):
//         p = [sol.p[unknown.index((i, c))] if (i, c) in unknown else 0 for c in range(3)]
//         out += [f'H{i}', p[0] - sin(g) * p[1], f'V{i}', cos(g) * p[1], f'M{i}', p[2]]
//     for station in [w for words in beam if words[0] == 'at' for w in words[1:]]:
//         x, side = float(station[:-1]), station[-1]
//         k = next(i for i, (a, b) in enumerate(parts) if (a < x <= b if side == 'L' else a <= x < b))
//         a, b = parts[k]; u, N, v, t, V, M = sol.sol((x - a) / (b - a))[6*k:6*k+6]; GA = of[k][3]
//         out += [f'N@{station}', N, f'V@{station}', V, f'M@{station}', M,
//                 f's@{station}', t - (V / GA if GA else 0), f'd@{station}', -v]
//     return out
//
// beams = []
// for line in sys.stdin.read().splitlines():
//     words = line.split()
//     if words and words[0] == 'beam': beams.append([])
//     if words and words[0] != '=': beams[-1].append(words)
// for beam in beams:
//     print('\n'.join(' '.join(words) for words in beam))
//     out = solve(beam); pairs = [f'{a} {b:.12g}' for a, b in zip(out[::2], out[1::2])]
//     print('\n'.join('= ' + ' '.join(pairs[i:i+5]) for i in range(0, len(pairs), 5)))

namespace FieldCheck.Mechanics.Tests.Oracles;

/// <summary>SciPy 1.10.1, a general boundary-value solver by collocation: another method in another language.</summary>
public sealed class ScipyBoundaryValueTests
{
    private const double Tolerance = 1e-9;

    private const string Frozen =
        """
        beam stepped, on a spring, trapezium over the joint
        span 4 2e4 1e6 -
        span 3.5 8e3 1e6 -
        support 0 r r - 0 0 0
        support 4 - 900 - 0 0 0
        support 7.5 - r - 0 0.002 0
        point 1.25 12 0
        spread 2.5 6 4 10 across
        at 2R 4L 5R
        = H0 0 V0 14.5279290937 M0 0 H1 0 V1 11.2972947993
        = M1 0 H2 0 V2 10.674776107 M2 0 N@2R 0
        = V@2R 2.52792909365 M@2R 20.0558581873 s@2R -0.00325932697059 d@2R 0.00816039865367 N@4L 0
        = V@4L -5.40064233492 M@4L 19.6474306603 s@4L -0.00113152859964 d@4L 0.012552549777 N@5R 0
        = V@5R -1.53191896418 M@5R 21.9726545533 s@5R 0.0015471076786 d@5R 0.0123692789388
        beam sloped roller, lengthways load, soft in tension
        span 5 1e4 3e3 -
        span 2 1e4 3e3 -
        support 0 r r - 0 0 0
        support 5 - r - 0.5 0.01 0
        support 7 - r - -0.3 0 0
        point 3 20 -8
        spread 0 7 2 2 across
        at 1.5R 5L 6R
        = H0 5.520412179 V0 17.5582280644 M0 0 H1 -1.664147614 V1 3.04620177454
        = M1 0 H2 4.143735435 V2 13.395570161 M2 0 N@1.5R -5.520412179
        = V@1.5R 14.5582280644 M@1.5R 24.0873420966 s@1.5R -0.00657966454119 d@1.5R 0.011718234969 N@5L 2.479587821
        = V@5L -12.4417719356 M@5L 22.7911403221 s@5L 0.00533865321541 d@5L 0.0135076841913 N@6R 4.143735435
        = V@6R -11.395570161 M@6R 12.395570161 s@6R 0.00711465540624 d@6R 0.00719440012916
        beam built in, turning spring at the far end, couple
        span 6 1.5e4 1e6 -
        support 0 r r r 0 0 0
        support 6 - r 4e3 0 0 0
        couple 2 15 L
        spread 3 6 0 7 across
        at 1L 2L 2R 4.5R
        = H0 0 V0 4.56860119048 M0 2.2080357143 H1 0 V1 5.93139880952
        = M1 -0.296428571423 N@1L 0 V@1L 4.56860119048 M@1L 2.36056547618 s@1L 5.08432539611e-06
        = d@1L 2.28389550268e-05 N@2L 0 V@2L 4.56860119048 M@2L 6.92916666666 s@2L 0.000314742063491
        = d@2L -0.000111693121692 N@2R 0 V@2R 4.56860119048 M@2R -8.07083333334 s@2R 0.000314742063491
        = d@2R -0.000111693121692 N@4.5R 0 V@4.5R 1.94360119048 M@4.5R 2.03816964286 s@4.5R -0.000111417410716
        = d@4.5R -4.40848212812e-07
        beam guide and roller, overhang
        span 8 1.2e4 1e6 -
        support 0 r - r 0 0 0
        support 6 - r - 0 0 0
        spread 0 4 5 2 across
        point 8 6 0
        at 0R 3R 7L
        = H0 0 V0 0 M0 -48 H1 0 V1 20
        = M1 0 N@0R 0 V@0R 9.48333339972e-32 M@0R 48 s@0R 0
        = d@0R 0.0536444444444 N@3R 0 V@3R -11.625 M@3R 28.875 s@3R 0.0103359375
        = d@3R 0.0369241319444 N@7L 0 V@7L 6 M@7L -6 s@7L 0.0118055555556
        = d@7L -0.0121388888889
        beam three spans, soft in shear
        span 2 1e4 1e6 2.5e3
        span 3 1e4 1e6 2.5e3
        span 1.5 1e4 1e6 -
        support 0 r r - 0 0 0
        support 2 - r - 0 0 0
        support 5 - r - 0 0.004 0
        support 6.5 - r - 0 0 0
        point 1 30 0
        point 3.5 45 0
        spread 5 6.5 8 20 across
        at 1L 1R 2R 4L 6R
        = H0 0 V0 10.5426546392 M0 0 H1 0 V1 45.5578608247
        = M1 0 H2 0 V2 26.641580756 M2 0 H3 0
        = V3 13.2579037801 M3 0 N@1L 0 V@1L 10.5426546392 M@1L 10.5426546392
        = s@1L -0.00592571091065 d@1L 0.00627713273196 N@1R 0 V@1R -19.4573453608 M@1R 10.5426546392
        = s@1R 0.00607428908935 d@1R 0.00627713273196 N@2R 0 V@2R 26.1005154639 M@2R -8.91469072165
        = s@2R -0.0120674570447 d@2R 6.92564408002e-31 N@4L 0 V@4L -18.8994845361 M@4L 20.7863402062
        = s@4L 0.00880720790378 d@4L 0.0135315335052 N@6R 0 V@6R -4.25790378007 M@6R 4.2956185567
        = s@6R 0.0027901975945 d@6R 0.00143554839633
        beam couples on both sides of a hinge
        span 3 9e3 1e6 -
        span 4 6e3 1e6 -
        support 0 r r r 0 0 0
        support 5 - r 2e3 0 0 0
        support 7 - r - 0 0 0
        hinge 3
        couple 3 4 L
        couple 3 -7 R
        point 3 9 0
        spread 1 6 3 6 across
        at 2R 3L 3R 4R 5L
        = H0 0 V0 9.6950698324 M0 18.2852094972 H1 0 V1 26.7245321229
        = M1 -2.47065642458 H2 0 V2 -4.91960195531 M2 0 N@2R 0
        = V@2R 6.3950698324 M@2R -0.495069832403 s@2R -0.00196725325885 d@2R 0.00264151769088 N@3L 0
        = V@3L 2.4950698324 M@3L 4 s@3L -0.00173642380509 d@3L 0.0045350698324 N@3R 0
        = V@3R -6.5049301676 M@3R 7 s@3R 0.00207030493482 d@3R 0.0045350698324 N@4R 0
        = V@4R -11.0049301676 M@4R -1.7049301676 s@4R 0.00257406075419 d@4R 0.0020921240689 N@5L 0
        = V@5L -16.1049301676 M@5L -15.2098603352 s@5L 0.00123532821229 d@5L 1.68589748596e-22
        beam overhangs on two springs, lengthways spread load
        span 1.5 2e4 5e3 -
        span 5 2e4 5e3 -
        span 2 2e4 5e3 -
        support 1.5 r 2e3 - 0 0 0
        support 6.5 - 5e2 1.5e3 0 0.003 0
        point 0 8 2
        spread 1 7 6 6 across
        spread 2 8.5 3 1 along
        point 8.5 4 0
        at 0R 1.5L 4R 7R 8.5L
        = H0 -15 V0 28.2348039216 M0 0 H1 0 V1 19.7651960784
        = M1 7.17401960784 N@0R -2 V@0R -8 M@0R -7.86421393958e-33 s@0R -0.00566068218954
        = d@0R 0.00540059742647 N@1.5L -2 V@1.5L -11 M@1.5L -12.75 s@1.5L -0.00611693218954
        = d@1.5L 0.0141174019608 N@4R 7.61538461538 V@4R 2.23480392157 M@4R 11.5870098039 s@4R -0.0057989940768
        = d@4R 0.0296460860907 N@7R 1.84615384615 V@7R 4 M@7R -6 s@7R -0.00496392973856
        = d@7R 0.0449699091095 N@8.5L -1.7205748886e-19 V@8.5L 4 M@8.5L 0 s@8.5L -0.00518892973856
        = d@8.5L 0.0526408037173
        beam built-in end that turns, prop that sinks
        span 5 1.8e4 1e6 -
        support 0 r r r 0 0.005 -0.002
        support 5 - r - 0 0.012 0
        spread 0 5 4 4 across
        at 0R 2.5R 5L
        = H0 0 V0 11.204 M0 6.02 H1 0 V1 8.796
        = M1 0 N@0R 0 V@0R 11.204 M@0R -6.02 s@0R -0.002
        = d@0R 0.005 N@2.5R 0 V@2.5R 1.204 M@2.5R 9.49 s@2.5R -0.00146967592593
        = d@2.5R 0.00978587962963 N@5L 0 V@5L -8.796 M@5L 6.28837260042e-18 s@5L -0.000521296296296
        = d@5L 0.012
        beam fixed at both ends between sloped rollers
        span 3 7e3 2e3 -
        span 3 9e3 4e3 -
        span 2 5e3 2e3 4e3
        support 0 r r r 0 0 0
        support 3 - r - 0.6435011087932844 0 0
        support 6 - r - -0.3947911196997615 0.006 0
        support 8 r r r 0 0 0.001
        point 1.5 25 10
        point 4.5 15 -5
        couple 7 6 L
        at 1.5L 3R 4.5R 7R
        = H0 -0.827675493716 V0 21.0822235608 M0 25.2587914468 H1 -9.60991079235 V1 12.8132143898
        = M1 0 H2 1.38228924119 V2 3.31749417886 M2 0 H3 4.05529704488
        = V3 2.78706787056 M3 -6.89994265384 N@1.5L 0.827675493716 V@1.5L 21.0822235608 M@1.5L 6.36454389439
        = s@1.5L -0.00202438366633 d@1.5L 0.00236534137495 N@3R 0.437586286067 V@3R 8.89543795058 M@3R 0.487879235557
        = s@3R -0.00129019547383 d@3R 0.00469386506957 N@4.5R 5.43758628607 V@4.5R -6.10456204942 M@4.5R 13.8310361614
        = s@4.5R -9.69525240839e-05 d@4.5R 0.00601220850396 N@7R 4.05529704488 V@7R -2.78706787056 M@7R -4.11287478327
        = s@7R 0.00279804871135 d@7R 0.00229385897067
        beam two hinges, four supports, loads over the hinges
        span 4 1e4 1e6 -
        span 5 1.4e4 1e6 -
        span 4 1e4 1e6 -
        support 0 r r - 0 0 0
        support 4 - r - 0 0 0
        support 9 - r - 0 0.02 0
        support 13 - r - 0 0 0
        hinge 5
        hinge 7.5
        spread 2 8 9 1 across
        point 7.5 10 0
        spread 10 13 2 8 across
        at 3R 5L 5R 6R 7.5R 11R
        = H0 0 V0 2.15972222222 M0 0 H1 0 V1 23.7013888889
        = M1 0 H2 0 V2 23.9027777778 M2 0 H3 0
        = V3 5.23611111111 M3 0 N@3R 0 V@3R -6.17361111111 M@3R 2.20138888889
        = s@3R 0.000392615740741 d@3R 0.000368958333333 N@5L 0 V@5L 4.86111111111 M@5L -1.28094914913e-18
        = s@5L -5.52513227512e-05 d@5L -1.82936507937e-05 N@5R 0 V@5R 4.86111111111 M@5R 0
        = s@5R -0.0127435767196 d@5R -1.82936507937e-05 N@6R 0 V@6R 0.527777777778 M@6R 2.58333333333
        = s@6R -0.012625521164 d@6R 0.0126815 N@7.5R 0 V@7.5R -13.4722222222 M@7.5R 3.4666738999e-32
        = s@7.5R 0.00799893518518 d@7.5R 0.0314402058532 N@11R 0 V@11R 6.76388888889 M@11R -2.86111111111
        = s@11R 0.00457740740741 d@11R 0.00916444444444
        beam hinge at midspan, built in both ends, soft in shear, spring under the hinge
        span 6 8e3 1e6 1.6e3
        support 0 r r r 0 0 0
        support 3 - 7e2 - 0 0 0
        support 6 r r r 0 0 0
        hinge 3
        spread 0 2 0 12 across
        point 4.5 14 0
        at 1R 3L 3R 4.5L 4.5R
        = H0 0 V0 10.0143800813 M0 10.0431402439 H1 0 V1 5.42019817073
        = M1 0 H2 0 V2 10.565421748 M2 -10.6962652439 N@1R 0
        = V@1R 7.0143800813 M@1R -1.0287601626 s@1R -0.00504473132622 d@1R 0.0060593008977 N@3L 0
        = V@3L -1.9856199187 M@3L -9.63735264432e-20 s@3L 0.000857923653454 d@3L 0.0077431402439 N@3R 0
        = V@3R 3.43457825203 M@3R 0 s@3R -0.00210981167429 d@3R 0.0077431402439 N@4.5L 0
        = V@4.5L 3.43457825203 M@4.5L 5.15186737805 s@4.5L -0.0016268241076 d@4.5L 0.010666363972 N@4.5R 0
        = V@4.5R -10.565421748 M@4.5R 5.15186737805 s@4.5R 0.0071231758924 d@4.5R 0.010666363972
        beam stepped cantilever with a spring at its tip
        span 2 3e4 1e6 -
        span 2 1.5e4 1e6 -
        span 1 5e3 1e6 -
        support 0 r r r 0 0 0
        support 5 - 120 - 0 -0.01 0
        spread 0 5 9 0 across
        couple 4 -5 L
        at 0R 2R 4L 4R 5L
        = H0 0 V0 20.5717880795 M0 32.8589403973 H1 0 V1 1.92821192053
        = M1 0 N@0R 0 V@0R 20.5717880795 M@0R -32.8589403973 s@0R -5.35007722007e-32
        = d@0R -0 N@2R 0 V@2R 6.17178807947 M@2R -7.31536423841 s@2R -0.00117914348786
        = d@2R 0.00146029433407 N@4L 0 V@4L -1.02821192053 M@4L -3.37178807947 s@4L -0.00173162030905
        = d@4L 0.00445335982341 N@4R 0 V@4R -1.02821192053 M@4R 1.62821192053 s@4R -0.00173162030905
        = d@4R 0.00445335982341 N@5L 0 V@5L -1.92821192053 M@5L 1.15716611996e-18 s@5L -0.001553799117
        = d@5L 0.00606843267109
        """;

    public static TheoryData<string> Beams() => new(OracleText.Read(Frozen).Select(beam => beam.Title));

    [Theory]
    [MemberData(nameof(Beams))]
    public void EveryFigure_IsTheOraclesFigure(string title) =>
        OracleText.Read(Frozen).Single(beam => beam.Title == title).HoldsWithin(Tolerance);
}
