using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The state of a section from that at the start of its element and the forces down between the two: each takes 1 from V
/// and v from M, v its distance to the section, and lets the section sink by v³/6EI - v/GA.
/// </summary>
internal readonly struct SectionRelation(Span span)
{
    private readonly double _bend = 1 / span.FlexuralRigidity;
    private readonly double _shear = span.ShearRigidity is double rigidity ? 1 / rigidity : 0;

    /// <summary>What an axle left of the section adds, its distance to it being left - length·u.</summary>
    internal void AddAxle(Span<double> to, Curve curve, double force, double left, double length)
    {
        switch (curve)
        {
            case Curve.Axial:
                break;
            case Curve.Shear:
                to[0] -= force;
                break;
            case Curve.Moment:
                to[0] -= force * left;
                to[1] += force * length;
                break;
            default:
                to[0] += force * left * (left * left * _bend / 6 - _shear);
                to[1] += force * length * (_shear - left * left * _bend / 2);
                to[2] += force * length * length * left * _bend / 2;
                to[3] -= force * length * length * length * _bend / 6;
                break;
        }
    }

    /// <summary>
    /// How far a line can rise above its chord over one step, where no moment on it and no forces together are more: by
    /// l²/8 times what it bends, and l/4 times its kinks.
    /// </summary>
    internal double Between(double step, double moment, double force) =>
        step * (step * moment * _bend / 8 + force * _shear / 4);

    /// <summary>A section's state from that at the start of its element, no axle between.</summary>
    internal void Weigh(Curve curve, double d, double scale, Span<double> weights)
    {
        weights.Clear();
        switch (curve)
        {
            case Curve.Axial:
                weights[0] = scale;
                break;
            case Curve.Shear:
                weights[1] = scale;
                break;
            case Curve.Moment:
                weights[1] = scale * d;
                weights[2] = scale;
                break;
            default:
                weights[1] = -scale * d * (d * d * _bend / 6 - _shear);
                weights[2] = -scale * d * d * _bend / 2;
                weights[3] = -scale * d;
                weights[4] = -scale;
                break;
        }
    }
}
