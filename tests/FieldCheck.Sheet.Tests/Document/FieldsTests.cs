using System.Collections.Immutable;
using System.Reflection;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Document;

public sealed class FieldsTests
{
    [Fact]
    public void EveryTable_EachFieldGivesBackWhatItTook_AndTouchesNoOther()
    {
        EachFieldStandsAlone(Fields.Top, new BeamDocument());
        EachFieldStandsAlone(Fields.Record, new RecordEntry());
        EachFieldStandsAlone(Fields.Span, new SpanEntry());
        EachFieldStandsAlone(Fields.Support, new SupportEntry());
        EachFieldStandsAlone(Fields.Hinge, new HingeEntry());
        EachFieldStandsAlone(Fields.Load, new LoadEntry());
        EachFieldStandsAlone(Fields.SelfWeight, new SelfWeightEntry());
        EachFieldStandsAlone(Fields.Section, new SectionEntry { Name = "s" });
        EachFieldStandsAlone(Fields.Material, new MaterialEntry { Name = "m" });
        EachFieldStandsAlone(Fields.Combination, new CombinationEntry());
        EachFieldStandsAlone(Fields.Pattern, new PatternEntry());
        EachFieldStandsAlone(Fields.Rolling, new RollingEntry());
        EachFieldStandsAlone(Fields.Axle, new AxleEntry());
        EachFieldStandsAlone(Fields.Stated, new StatedEntry());
        EachFieldStandsAlone(Fields.Tolerance, new ToleranceEntry());
        EachFieldStandsAlone(Fields.Limits, new LimitsEntry());
    }

    private static void EachFieldStandsAlone<TRow>(ImmutableArray<Field<TRow>> fields, TRow empty)
    {
        foreach (Field<TRow> field in fields)
        {
            TRow changed = field.Set(empty, "x");

            Assert.Equal([field.Key], fields.Where(other => other.Get(changed) == "x").Select(other => other.Key));
            Assert.Equal(PropertyName(field.Key), Texts<TRow>().Single(text => (string?)text.GetValue(changed) == "x").Name);
        }

        Assert.Equal(Texts<TRow>().Length, fields.Length);
    }

    private static PropertyInfo[] Texts<TRow>() =>
        [.. typeof(TRow).GetProperties().Where(item => item.PropertyType == typeof(string) && item.Name != NameOf<TRow>())];

    private static string NameOf<TRow>() =>
        typeof(TRow) == typeof(SectionEntry) || typeof(TRow) == typeof(MaterialEntry) ? "Name" : "";

    private static string PropertyName(string key) =>
        string.Concat(key.Split('_').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
}
