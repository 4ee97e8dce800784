using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Rows of figures: three a reaction, and of each piece for N, V, M and the deflection its coefficients in Bernstein's form, the
/// last one the value kept at its end, and its values at a quarter, a half and three quarters.
/// </summary>
public sealed class FigureTableTests
{
    private const int APiece = 6 + 6 + 7 + 9;

    /// <summary>N = 1 + 2u + 4u², V = 2 + 8u + 6u², M = 3 + 4u + 8u² + 4u³; worked apart. Its ends are put elsewhere, to be told apart.</summary>
    private static readonly Piece Loaded = new()
    {
        From = 2,
        To = 4,
        Length = 2,
        Start = new PieceEnd(1, 2, 3, 0.5, -7),
        End = new PieceEnd(100, 200, 300, 9, -400),
        Up = 4,
        UpChange = 3,
        Right = -1,
        RightChange = -2,
        FlexuralRigidity = 2,
        ShearFlexibility = 0.25,
    };

    private static readonly double[] Axial = [1, 2, 100, 1.75, 3, 4.75];
    private static readonly double[] Shear = [2, 6, 200, 4.375, 7.5, 11.375];
    private static readonly double[] Moment = [3, 13 / 3.0, 25 / 3.0, 300, 4.5625, 7.5, 12.1875];

    [Fact]
    public void Row_HasRoomForAllFigures()
    {
        Assert.Equal((3 * 2) + (APiece * 3), new FigureTable(2, 3).Length);
        Assert.Equal(3 * 5, new FigureTable(5, 0).Length);
    }

    /// <summary>A reaction and a piece, the last of each, times -2, on a row of ones; nothing before them is touched.</summary>
    [Fact]
    public void Answer_IsAddedWhereItBelongs()
    {
        FigureTable table = new(3, 2);
        double[] row = [.. Enumerable.Repeat(1.0, table.Length)];

        table.Add(row, -2, 1, [new Reaction(10, 20, 30, null, false), new Reaction(4, 5, 6, null, false)], 1, [Loaded]);

        Assert.Equal([1, 1, 1, -19, -39, -59, -7, -9, -11], row[..9]);
        Assert.Equal(Enumerable.Repeat(1.0, APiece), row[9..(9 + APiece)]);
        Near([.. Axial.Select(Added), .. Shear.Select(Added), .. Moment.Select(Added)], row[(9 + APiece)..^9]);
        Near([.. Deflection().Select(Added)], row[^9..]);

        static double Added(double one) => 1 - (2 * one);
    }

    /// <summary>Of two pieces each has its own bounds and inner values.</summary>
    [Fact]
    public void Figures_AreReadWhereTheyWereAdded()
    {
        FigureTable table = new(1, 3);
        double[] row = new double[table.Length];
        ImmutableArray<Piece> pieces = [Loaded, Loaded with { Start = new PieceEnd(5, 2, 3, 0.5, -7), RightChange = -4 }];

        table.Add(row, 1, 0, [], 1, pieces);

        Assert.Equal([0, 0, 0], table.Bounds(row, 0, 0).ToArray());
        Assert.Equal([0, 0, 0], table.Inner(row, 0, 3).ToArray());
        Near(Axial[..3], table.Bounds(row, 1, 0).ToArray());
        Near(Axial[3..], table.Inner(row, 1, 0).ToArray());
        Near(Shear[..3], table.Bounds(row, 1, 1).ToArray());
        Near(Moment[..4], table.Bounds(row, 1, 2).ToArray());
        Near(Moment[4..], table.Inner(row, 1, 2).ToArray());
        Near(Deflection()[..6], table.Bounds(row, 1, 3).ToArray());
        Near(Deflection()[6..], table.Inner(row, 1, 3).ToArray());
        Near([5, 6, 100], table.Bounds(row, 2, 0).ToArray());
        Near([6, 8, 11], table.Inner(row, 2, 0).ToArray());
        Near(Shear[3..], table.Inner(row, 2, 1).ToArray());
    }

    /// <summary>Lengths that fill the machine's wide numbers and that do not.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(19)]
    [InlineData(32)]
    public void Rows_AddUp(int length)
    {
        double[] to = [.. Enumerable.Range(0, length).Select(i => 100.0 + i)];
        double[] row = [.. Enumerable.Range(0, length).Select(i => i + 1.0)];

        FigureTable.Add(to, row, -3);

        Assert.Equal(Enumerable.Range(0, length).Select(i => 97.0 - (2 * i)), to);
    }

    private static double[] Deflection()
    {
        double[] polynomial = new double[Piece.MostCoefficients];
        Loaded.Polynomial(Curve.Deflection, polynomial);
        double[] bounds = new double[Piece.MostCoefficients];
        Bernstein.AddTo(bounds, polynomial, 1);
        bounds[^1] = 400;
        return
        [
            .. bounds,
            Loaded.At(0.5, Curve.Deflection), Loaded.At(1, Curve.Deflection), Loaded.At(1.5, Curve.Deflection),
        ];
    }

    private static void Near(double[] expected, double[] actual) =>
        Assert.Equal(expected, actual, (one, other) => Math.Abs(one - other) < 1e-12);
}
