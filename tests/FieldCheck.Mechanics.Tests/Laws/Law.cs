using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Holds a law against many drawn beams. A failing draw is printed in full, with its seed.</summary>
internal static class Law
{
    /// <summary>Beams drawn a law; FIELDCHECK_DRAWS asks for more, for a long run.</summary>
    internal static readonly int Draws = int.Parse(
        Environment.GetEnvironmentVariable("FIELDCHECK_DRAWS") ?? "300", CultureInfo.InvariantCulture);

    internal static void Holds(Gen<BeamModel> beams, Action<BeamModel> law) =>
        beams.Sample(law, iter: Draws, print: BeamText.Of);

    internal static void Holds<T>(Gen<BeamModel> beams, Gen<T> more, Action<BeamModel, T> law) =>
        Gen.Select(beams, more).Sample(
            (model, drawn) => law(model, drawn),
            iter: Draws,
            print: pair => $"{pair.Item2}\n{BeamText.Of(pair.Item1)}");

    /// <summary>Equality to a share of the scale on which rounding acts.</summary>
    internal static void Equal(double expected, double actual, double tolerance, string what) => Assert.True(
        Math.Abs(expected - actual) <= tolerance,
        $"{what}: {expected:R} against {actual:R}, off by {Math.Abs(expected - actual):E2}, allowed {tolerance:E2}");
}
