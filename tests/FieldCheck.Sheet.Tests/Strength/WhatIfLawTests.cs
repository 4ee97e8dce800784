using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>
/// What every answer obeys whatever the beam: elastic demands follow the loads in proportion (superposition, any book on
/// statics); a headroom put in uses the governing check up just so; a figure told, typed back in as told, holds.
/// </summary>
public sealed partial class WhatIfLawTests
{
    [Fact]
    public void Utilisation_IsInProportionToAllLoads() => Gen.Select(RandomJoists.Gen, Gen.Int[10, 400]).Sample(
        (beam, percent) =>
        {
            Calculation before = RandomJoists.Run(beam);
            string factor = (percent / 100.0).ToString(CultureInfo.InvariantCulture);
            Calculation after = RandomJoists.Run(RandomJoists.Times(beam, factor, isLiveOnly: false));

            Assert.NotEmpty(before.Checks.All);
            Assert.Equal(before.Checks.All.Length, after.Checks.All.Length);
            foreach ((BeamCheck one, BeamCheck other) in before.Checks.All.Zip(after.Checks.All))
            {
                Assert.Equal(one.What, other.What);
                double expected = percent / 100.0 * one.Figures.Utilisation!.Value;
                Assert.Equal(expected, other.Figures.Utilisation!.Value, 1e-9 * Math.Max(expected, 1));
            }
        });

    [Fact]
    public void HeadroomTimesTheLiveLoads_UsesTheGoverningCheckUpJustSo() => RandomJoists.Gen.Sample(
        beam =>
        {
            Headroom live = RandomJoists.Run(beam).WhatIf!.Live!;
            if (live.Most is not double most)
            {
                Assert.Equal(HeadroomEnd.OverWithout, live.End);
                return;
            }

            string factor = most.ToString("R", CultureInfo.InvariantCulture);
            Calculation grown = RandomJoists.Run(RandomJoists.Times(beam, factor, isLiveOnly: true));

            Assert.Equal(1, grown.Checks.Governing!.Figures.Utilisation!.Value, 1e-8);
            Assert.Contains(
                grown.Checks.All,
                check => check.Figures.Kind == live.First!.Kind && check.Figures.Utilisation > 1 - 1e-6);
        });

    [Fact]
    public void HeaviestLoadPutIn_UsesTheGoverningCheckUpJustSo() => Gen.Select(RandomJoists.Gen, Gen.Int[1, 99]).Sample(
        (beam, place) =>
        {
            Calculation before = RandomJoists.Run(beam);
            double at = place * before.Beam!.Model.Length / 100;
            if (before.WhatIf!.HeaviestAt(at)!.Force.Most is double most)
            {
                Calculation after = RandomJoists.Run(With(
                    beam, at.ToString("R", CultureInfo.InvariantCulture) + " m", most.ToString("R", CultureInfo.InvariantCulture) + " N"));

                Assert.Equal(1, after.Checks.Governing!.Figures.Utilisation!.Value, 1e-8);
            }
        });

    [Fact]
    public void FactorTold_TypedInAsTold_Holds() => RandomJoists.Gen.Sample(
        beam =>
        {
            Calculation before = RandomJoists.Run(beam);
            string told = new WhatIfWords(before.Beam!, beam).Live(before.WhatIf!.Live, ["live"]);
            if (Factor().Match(told) is { Success: true } factor)
            {
                Calculation after = RandomJoists.Run(RandomJoists.Times(beam, factor.Groups[1].Value, isLiveOnly: true));

                Assert.Equal(CheckVerdict.Ok, after.Checks.Verdict);
            }
        });

    [Fact]
    public void LoadTold_TypedInAsTold_Holds() => Gen.Select(RandomJoists.Gen, Gen.Int[1, 99]).Sample(
        (beam, place) =>
        {
            Calculation before = RandomJoists.Run(beam);
            double at = place * before.Beam!.Model.Length / 100;
            string told = new WhatIfWords(before.Beam!, beam).Heaviest(at, before.WhatIf!.HeaviestAt(at));
            if (Load().Match(told) is { Success: true } load)
            {
                Calculation after = RandomJoists.Run(With(
                    beam, at.ToString("R", CultureInfo.InvariantCulture) + " m", load.Groups[1].Value));

                Assert.Equal(CheckVerdict.Ok, after.Checks.Verdict);
            }
        });

    [Fact]
    public void FirstBayTold_TypedInAsTold_Holds() => RandomJoists.OneBay.Sample(
        beam =>
        {
            Calculation before = RandomJoists.Run(beam);
            string told = new WhatIfWords(before.Beam!, beam).FirstBay(before.WhatIf!.LongestFirstBay);
            if (Bay().Match(told) is { Success: true } bay)
            {
                SpanEntry span = beam.Spans[0];
                string length = bay.Groups[1].Value;
                Calculation after = RandomJoists.Run(beam with
                {
                    Spans = [span with { Length = length, Unbraced = span.Unbraced == span.Length ? length : span.Unbraced }],
                });

                Assert.Equal(CheckVerdict.Ok, after.Checks.Verdict);
            }
        });

    /// <summary>The modulus told is put in as a section given by its figures, its area and inertia as they were.</summary>
    [Fact]
    public void ModulusTold_TypedInAsTold_IsEnoughForBendingWithAForceAlong() => Gen.Select(
        RandomJoists.Gen, Gen.Int[-3000, 3000]).Sample(
        (beam, along) =>
        {
            SectionEntry given = new() { Name = "s", Area = "300 cm2", Inertia = "22500 cm4", SectionModulus = "1500 cm3" };
            BeamDocument pressed = beam with
            {
                Sections = [given],
                Materials = [new() { Name = "m", Modulus = "11 GPa", AllowableBending = "10 MPa" }],
                Limits = null,
                Loads = beam.Loads.Add(new LoadEntry { Kind = "point", At = "end", Force = RandomJoists.Text(along, "kN"), Angle = "90 deg" }),
            };
            Calculation before = RandomJoists.Run(pressed);
            string told = new WhatIfWords(before.Beam!, pressed).Needed(before.WhatIf!.Needed);
            if (before.WhatIf!.Needed.Modulus!.Modulus < 1e-6)
            {
                // Nothing bends it: every load stands on a support.
                return;
            }

            Assert.StartsWith("Needed: section modulus", told, StringComparison.Ordinal);

            Calculation after = RandomJoists.Run(pressed with
            {
                Sections = [given with { SectionModulus = Modulus().Match(told).Groups[1].Value }],
            });

            Assert.Equal(CheckVerdict.Ok, after.Checks.Verdict);
            Assert.InRange(after.Checks.Governing!.Figures.Utilisation!.Value, 0.98, 1 + 1e-9);
        });

    private static BeamDocument With(BeamDocument beam, string place, string force) =>
        beam with { Loads = beam.Loads.Add(new LoadEntry { Kind = "point", At = place, Force = force }) };

    [GeneratedRegex("to ([0-9.]+) times", RegexOptions.CultureInvariant)]
    private static partial Regex Factor();

    [GeneratedRegex("^A load of (.+?) \\(live\\)", RegexOptions.CultureInvariant)]
    private static partial Regex Load();

    [GeneratedRegex("^The first bay may be (.+?) under", RegexOptions.CultureInvariant)]
    private static partial Regex Bay();

    [GeneratedRegex("section modulus ([0-9.]+ [a-z0-9]+) for", RegexOptions.CultureInvariant)]
    private static partial Regex Modulus();
}
