namespace FieldCheck.Mechanics.Checks;

/// <summary>Looks for the place of something at which all figures come out right.</summary>
/// <param name="beam">The beam.</param>
/// <param name="predict">What a place gives [N or N·m]; null: the beam does not stand.</param>
/// <param name="size">Size of what is looked for, where it may vary a little too [N]; else null.</param>
internal sealed class ExplanationPlaces(ExplanationBeam beam, Func<double, double[]?> predict, double? size)
{
    private const int MostTries = 40;

    /// <summary>Near enough: this part of what is allowed.</summary>
    private const double NearEnough = 1e-3;

    /// <summary>Well within what is allowed: no need to do better.</summary>
    private const double WellWithin = 0.5;

    /// <summary>How far a place is moved to see what that does, over the stretch it is looked for on.</summary>
    private const double SmallStep = 1e-4;

    /// <summary>So far off that no small step will do.</summary>
    private const double WorthATry = 30;

    /// <summary>A round must bring what is left down to this part at least.</summary>
    private const double Improving = 0.7;

    private const double MostSteps = 200;
    private const double MostGrown = 0.05;

    private readonly int _figure = FarthestOff(beam);

    /// <summary>Looks between two places in steps; of several, takes the one nearest to a third [m].</summary>
    internal (double Place, double[] Predicted)? Find(double from, double to, double near, int steps)
    {
        if (from >= to)
        {
            return null;
        }

        (double Place, double[] Predicted)? best = null;
        (double Place, double[] Predicted)? start = null;
        double left = from;
        double offLeft = Off(left, out _);
        for (int step = 1; step <= steps; step++)
        {
            double right = step == steps ? to : from + (to - from) * step / steps;
            double offRight = Off(right, out double[]? atRight);
            if (offLeft * offRight <= 0
                && Between(left, right, offLeft, offRight) is (double root, double[] there)
                && Nearest(from, to, root, there) is (double place, double[] predicted)
                && beam.Fit.Worst(predicted) <= 1
                && (best is null || Math.Abs(place - near) < Math.Abs(best.Value.Place - near)))
            {
                best = (place, predicted);
            }

            if (atRight is not null && (start is null || beam.Fit.Worst(atRight) < beam.Fit.Worst(start.Value.Predicted)))
            {
                start = (right, atRight);
            }

            (left, offLeft) = (right, offRight);
        }

        return best ?? From(from, to, start);
    }

    /// <summary>Where the figure only touches what is stated, as at a peak: goes on from the best place seen.</summary>
    private (double Place, double[] Predicted)? From(
        double from, double to, (double Place, double[] Predicted)? start)
    {
        if (start is not (double place, double[] predicted))
        {
            return null;
        }

        double worst = beam.Fit.Worst(predicted);
        double before = double.PositiveInfinity;
        while (worst is > 1 and < WorthATry && worst < Improving * before)
        {
            before = worst;
            (place, predicted) = Nearest(from, to, place, predicted);
            worst = beam.Fit.Worst(predicted);
        }

        return worst <= 1 ? (place, predicted) : null;
    }

    private static int FarthestOff(ExplanationBeam beam)
    {
        int farthest = 0;
        double most = 0;
        for (int i = 0; i < beam.Computed.Length; i++)
        {
            double off = Math.Abs(beam.Computed[i] - beam.Stated.Figures[i].Value) / beam.Fit.Allowed[i];
            (farthest, most) = off > most ? (i, off) : (farthest, most);
        }

        return farthest;
    }

    /// <summary>How far the figure is off [–, in what is allowed]; not a number where nothing stands.</summary>
    private double Off(double place, out double[]? predicted)
    {
        predicted = IsTaken(place) ? null : predict(place);
        return predicted is null
            ? double.NaN
            : (predicted[_figure] - beam.Stated.Figures[_figure].Value) / beam.Fit.Allowed[_figure];
    }

    /// <summary>Where one figure is right to the last digit, others may be just beyond theirs: shares it out.</summary>
    private (double Place, double[] Predicted) Nearest(double from, double to, double place, double[] predicted)
    {
        if (beam.Fit.Worst(predicted) is <= WellWithin or > WorthATry)
        {
            return (place, predicted);
        }

        double step = SmallStep * (place - from > to - place ? from - to : to - from);
        if (predict(place + step) is not { } beside)
        {
            return (place, predicted);
        }

        int count = predicted.Length;
        double[] off = new double[count];
        double[] ofPlace = new double[count];
        double[] ofSize = new double[size is null ? 0 : count];
        for (int i = 0; i < count; i++)
        {
            off[i] = (predicted[i] - beam.Stated.Figures[i].Value) / beam.Fit.Allowed[i];
            ofPlace[i] = (beside[i] - predicted[i]) / beam.Fit.Allowed[i];
            if (size is not null)
            {
                ofSize[i] = (predicted[i] - beam.Computed[i]) / beam.Fit.Allowed[i];
            }
        }

        (double steps, double grown) = ExplanationNearest.Find(off, ofPlace, ofSize, (MostSteps, MostGrown));
        double moved = Math.Clamp(place + steps * step, from, to);
        return predict(moved) is { } there ? (moved, Grown(there, grown)) : (place, predicted);
    }

    private double[] Grown(double[] predicted, double by)
    {
        for (int i = 0; i < predicted.Length; i++)
        {
            predicted[i] += by * (predicted[i] - beam.Computed[i]);
        }

        return predicted;
    }

    private bool IsTaken(double place) => beam.Model.Hinges.Contains(place);

    /// <summary>False position with the end that stays put at half its weight (the Illinois rule).</summary>
    private (double Place, double[] Predicted)? Between(double left, double right, double offLeft, double offRight)
    {
        int side = 0;
        for (int i = 0; i < MostTries; i++)
        {
            double place = offLeft == offRight ? left : (left * offRight - right * offLeft) / (offRight - offLeft);
            double off = Off(place, out double[]? predicted);
            if (predicted is null)
            {
                return null;
            }

            if (Math.Abs(off) <= NearEnough)
            {
                return (place, predicted);
            }

            if (off * offRight > 0)
            {
                (right, offRight) = (place, off);
                offLeft = side == 1 ? offLeft / 2 : offLeft;
                side = 1;
            }
            else
            {
                (left, offLeft) = (place, off);
                offRight = side == -1 ? offRight / 2 : offRight;
                side = -1;
            }
        }

        return null;
    }
}
