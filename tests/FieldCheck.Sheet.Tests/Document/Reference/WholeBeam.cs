namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>A sound beam in which a row of every table stands.</summary>
internal static class WholeBeam
{
    internal const string Text = """
        format = 1
        title = "One of everything"
        display = "si"
        ask = ["span[1].length"]

        [record]
        job = "J-1042"

        [[span]]
        length = "4 m"
        unbraced = "braced"

        [[span]]
        to = "9 m"
        unbraced = "2 m"

        [[support]]
        kind = "pin"
        joint = 0

        [[support]]
        kind = "roller"
        joint = 1

        [[support]]
        kind = "roller"
        at = "end"

        [[hinge]]
        at = "B + 1.2 m"

        [[load]]
        kind = "point"
        case = "live"
        at = "1 m"
        force = "2 kN"

        [[load]]
        kind = "distributed"
        case = "dead"
        pressure = "0.5 kN/m2"
        width = "2 m"

        [[load]]
        kind = "couple"
        at = "end"
        moment = "1 kNm"

        [self_weight]
        case = "dead"

        [section.bearer]
        width = "75 mm"
        depth = "225 mm"

        [material.timber]
        modulus = "11 GPa"
        density = "420 kg/m3"
        allowable_bending = "12 MPa"
        factors = { duration = 1.25 }
        creep = 0.8

        [[combination]]
        name = "in use"
        basis = "service"
        factors = { dead = 1.0, live = 1.0 }

        [[pattern]]
        case = "live"

        [[rolling]]
        label = "cart"
        case = "live"
        axles = [ { offset = "0 m", force = "1 kN" }, { offset = "1.2 m", force = "1 kN" } ]

        [[stated]]
        support = "A"
        vertical = "2.0 kN"
        combination = "in use"

        [tolerance]
        position = "10 mm"
        load = "10 %"

        [limits]
        deflection = "L/300"
        deflection_cases = { live = "L/360" }
        lasting = { live = 0.3 }
        """;
}
