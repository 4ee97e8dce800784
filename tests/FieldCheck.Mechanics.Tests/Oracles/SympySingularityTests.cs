// Run with SymPy 1.14 (python3 this-script < beams).
// It reads the beams below and writes them back with their figures ("= ..." lines); pure numbers in one set of units.
//
// import sys
// from sympy import Rational, Symbol, SingularityFunction
// from sympy.physics.continuum_mechanics.beam import Beam
//
// def number(word): return Rational(word) if word not in ('-', 'r', 'L', 'R', 'across') else word
//
// def solve(rows):
//     rows = [[words[0]] + [number(w) for w in words[1:]] for words in rows if words[0] != 'beam' and words[0] != 'at']
//     get = lambda kind: [row[1:] for row in rows if row[0] == kind]
//     length = sum(span[0] for span in get('span')); beam = Beam(length, 1, get('span')[0][1]); x = beam.variable
//     sinks, turns, forces = [], [], {}
//     for i, (at, _, across, turn, _, down, twist) in enumerate(get('support')):
//         forces[f'V{i}'] = Symbol(f'V{i}'); beam.apply_load(forces[f'V{i}'], at, -1); sinks.append((at, -down))
//         if turn == 'r':
//             forces[f'M{i}'] = Symbol(f'M{i}'); beam.apply_load(-forces[f'M{i}'], at, -2); turns.append((at, twist))
//     for hinge, in get('hinge'): beam.apply_rotation_hinge(hinge)
//     for at, down, _ in get('point'): beam.apply_load(-down, at, -1)
//     for at, moment, _ in get('couple'): beam.apply_load(-moment, at, -2)
//     for start, end, first, last, _ in get('spread'):
//         beam.apply_load(-first, start, 0, end=end)
//         if last != first: beam.apply_load(-(last - first) / (end - start), start, 1, end=end)
//     beam.bc_deflection, beam.bc_slope = sinks, turns
//     beam.solve_for_reaction_loads(*forces.values())
//     return beam, forces
//
// def value(expression, x, at, side):
//     return expression.subs(x, at + (Rational(1, 10**30) if side == 'R' else -Rational(1, 10**30))).evalf(40)
//
// beams = []
// for line in sys.stdin.read().splitlines():
//     words = line.split()
//     if words and words[0] == 'beam': beams.append([])
//     if words and words[0] != '=': beams[-1].append(words)
// for rows in beams:
//     print('\n'.join(' '.join(words) for words in rows))
//     beam, forces = solve(rows); x = beam.variable
//     pairs = [(name, beam.reaction_loads[symbol].evalf(17)) for name, symbol in forces.items()]
//     curves = {'V': -beam.shear_force(), 'M': -beam.bending_moment(),      # its loads are positive up
//               's': beam.slope(), 'd': -beam.deflection()}
//     for station in [w for words in rows if words[0] == 'at' for w in words[1:]]:
//         pairs += [(f'{name}@{station}', value(curve, x, Rational(station[:-1]), station[-1]))
//                   for name, curve in curves.items()]
//     text = [f'{name} {float(figure):.16g}' for name, figure in pairs]
//     print('\n'.join('= ' + ' '.join(text[i:i+4]) for i in range(0, len(text), 4)))

namespace FieldCheck.Mechanics.Tests.Oracles;

/// <summary>SymPy 1.14, singularity functions in exact fractions.</summary>
public sealed class SympySingularityTests
{
    private const double Tolerance = 1e-12;

    private const string Frozen =
        """
        beam built in and two rollers, trapezium, couple
        span 9 20000 1 -
        support 0 r r r 0 0 0
        support 5 - r - 0 0 0
        support 9 - r - 0 0 0
        spread 1 6 3 8 across
        couple 7 -5 L
        at 2L 5L 5R 7L 7R
        = V0 7.581441935483871 M0 9.393069892473118 V1 19.2483564516129 V2 0.6702016129032258
        = V@2L 4.081441935483871 M@2L 4.103147311827957 s@2L -0.0002082461290322581 d@2L 0.0004405441935483871
        = V@5L -12.41855806451613 M@5L -6.15252688172043 s@5L 0.0002568004032258064 d@5L 2.568004032258064e-34
        = V@5R 6.829798387096774 M@5R -6.15252688172043 s@5R 0.0002568004032258064 d@5R -2.568004032258064e-34
        = V@7L -0.6702016129032258 M@7L -3.659596774193548 s@7L -0.0001067224462365591 d@7L -0.0001240846774193549
        = V@7R -0.6702016129032258 M@7R 1.340403225806452 s@7R -0.0001067224462365591 d@7R -0.0001240846774193549
        beam built in, hinge, two rollers
        span 9 12000 1 -
        support 0 r r r 0 0 0
        support 5 - r - 0 0 0
        support 9 - r - 0 0 0
        hinge 3
        spread 1 6 3 3 across
        point 8 4 0
        at 2L 3L 3R 5L 7R
        = V0 5.113970588235294 M0 9.341911764705882 V1 12.45404411764706 V2 1.431985294117647
        = V@2L 2.113970588235294 M@2L -0.6139705882352942 s@2L -0.0007463235294117647 d@2L 0.0009991830065359476
        = V@3L -0.8860294117647058 M@3L 8.860294117647058e-31 s@3L -0.0007510723039215687 d@3L 0.001752144607843137
        = V@3R -0.8860294117647058 M@3R -8.860294117647058e-31 s@3R 0.001008629493464052 d@3R 0.001752144607843137
        = V@5L -6.886029411764706 M@5L -7.772058823529412 s@5L 0.000527624591503268 d@5L 5.27624591503268e-34
        = V@7R 2.568014705882353 M@7R -1.136029411764706 s@7R -0.0001313827614379085 d@7R -0.0002223243464052288
        beam built in at both ends, triangle and couple
        span 8 15000 1 -
        support 0 r r r 0 0 0
        support 8 r r r 0 0 0
        spread 2 8 0 12 across
        couple 3 9 L
        at 0R 3L 3R 5L 8L
        = V0 8.66953125 M0 15.553125 V1 27.33046875 M1 -27.196875
        = V@0R 8.66953125 M@0R -15.553125 s@0R -1.036875e-33 d@0R 5.184375e-64
        = V@3L 7.66953125 M@3L 10.12213541666667 s@3L -0.0005153211805555555 d@3L 0.002066189236111111
        = V@3R 7.66953125 M@3R 1.122135416666667 s@3R -0.0005153211805555555 d@3R 0.002066189236111111
        = V@5L -0.33046875 M@5L 9.79453125 s@5L 0.000390234375 d@5L 0.002389921875
        = V@8L -27.33046875 M@8L -27.196875 s@8L 1.813125e-33 d@8L 9.065625e-64
        beam five supports, overhangs, many loads
        span 16 25000 1 -
        support 1 r r - 0 0 0
        support 4 - r - 0 0 0
        support 9 - r - 0 0 0
        support 12 - r - 0 0 0
        support 15 - r - 0 0 0
        point 0 6 0
        spread 0 7 5 5 across
        spread 6 10 2 9 across
        point 13.5 21 0
        point 16 -3 0
        at 1L 2.5R 6L 9R 13.5L 16L
        = V0 18.26853056823947 V1 21.70887239979706 V2 22.68806189751395 V3 13.6604236428209
        = V4 4.674111491628615 V@1L -11 M@1L -8.5 s@1L 0.0002988881659056317
        = d@1L 2.988881659056317e-34 V@2.5R -0.2314694317605276 M@2.5R -3.222204147640792 s@2.5R 3.472041476407915e-06
        = d@2.5R -0.0001871866866438356 V@6L 3.97740296803653 M@6L 8.760397640791476 s@6L -0.0001968034246575342
        = d@6L 0.0007489771689497717 V@9R 7.790464865550482 M@9R -8.682393455098934 s@9R 0.0003407934931506849
        = d@9R -3.407934931506849e-34 V@13.5L 13.32588850837138 M@13.5L 14.51116723744292 s@13.5L -4.238832762557078e-05
        = d@13.5L 0.0004167525256849315 V@16L -3 M@16L 3e-30 s@16L 0.0005429466894977169
        = d@16L -0.0005229466894977169
        """;

    public static TheoryData<string> Beams() => new(OracleText.Read(Frozen).Select(beam => beam.Title));

    [Theory]
    [MemberData(nameof(Beams))]
    public void EveryFigure_IsTheOraclesFigure(string title) =>
        OracleText.Read(Frozen).Single(beam => beam.Title == title).HoldsWithin(Tolerance);
}
