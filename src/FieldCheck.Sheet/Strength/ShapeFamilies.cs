using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Strength;

/// <summary>What the shapes of the catalogue, and a beam, are made of: told from weights, stiffness and names.</summary>
internal static class ShapeFamilies
{
    /// <summary>Weights per volume [N/m³] that no other of the three comes near to.</summary>
    private const double HeaviestTimber = 15e3;
    private const double LightestAluminium = 24e3;
    private const double HeaviestAluminium = 30e3;
    private const double LightestSteel = 70e3;
    private const double HeaviestSteel = 85e3;

    /// <summary>Moduli [N/m²] likewise.</summary>
    private const double StiffestTimber = 25e9;
    private const double SoftestAluminium = 60e9;
    private const double StiffestAluminium = 80e9;
    private const double SoftestSteel = 190e9;
    private const double StiffestSteel = 220e9;

    private static readonly ImmutableArray<(string Word, MaterialKind Kind)> Words =
    [
        ("timber", MaterialKind.Timber), ("lumber", MaterialKind.Timber), ("wood", MaterialKind.Timber), ("glulam", MaterialKind.Timber),
        ("steel", MaterialKind.Steel), ("alumin", MaterialKind.Aluminium),
    ];

    /// <summary>Every family, in the order of the catalogue.</summary>
    internal static ImmutableArray<ShapeFamily> Of(SectionCatalogue catalogue) =>
    [
        .. catalogue.Search("")
            .Select(one => catalogue.Shape(one.Name)!)
            .GroupBy(shape => shape.Family)
            .Select(family => new ShapeFamily(
                family.Key, family.Count(), family.Select(Of).Distinct().ToArray() is [MaterialKind only] ? only : null)),
    ];

    /// <summary>What the sticks of one section are made of; null: not known, or more than one.</summary>
    internal static MaterialKind? Of(IEnumerable<Stick> sticks) =>
        sticks.Select(stick => Of(stick.Material)).Distinct().ToArray() is [MaterialKind only] ? only : null;

    private static MaterialKind? Of(Material? material) => material switch
    {
        { Timber: not null } or { Modulus: < StiffestTimber } => MaterialKind.Timber,
        { Modulus: > SoftestAluminium and < StiffestAluminium } => MaterialKind.Aluminium,
        { Modulus: > SoftestSteel and < StiffestSteel } => MaterialKind.Steel,
        _ => null,
    };

    // What a table says that a shape weighs tells what it is made of.
    private static MaterialKind? Of(CatalogueShape shape) => (shape.Upright.WeightPerLength / shape.Upright.Area) switch
    {
        < HeaviestTimber => MaterialKind.Timber,
        > LightestAluminium and < HeaviestAluminium => MaterialKind.Aluminium,
        > LightestSteel and < HeaviestSteel => MaterialKind.Steel,
        not null => null,
        null => Words.Where(word => shape.Family.Contains(word.Word, StringComparison.OrdinalIgnoreCase))
            .Select(word => (MaterialKind?)word.Kind).FirstOrDefault(),
    };
}
