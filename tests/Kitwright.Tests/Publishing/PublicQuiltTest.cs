using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using Kitwright.Measure;
using Kitwright.Plans;
using Kitwright.Publishing;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Publishing;

/// <summary>Nothing that is public of somebody else's pattern can hold a size.</summary>
public sealed class PublicQuiltTest
{
    private static readonly Quilt Stars = QuiltFile.Read(Repository.Read("examples", "quilts", "ostrel-bay-stars.json")).Value!;

    private static readonly License License = new("Somebody Else", true, false, false, ShowDrawing: true, false)
    {
        Lengths = ImmutableSortedDictionary<string, Length>.Empty.Add(Stars.Roles[0].Id, Length.Yards(new Rational(9, 4))),
    };

    [Fact]
    public void Only_names_flags_and_the_count_of_copies_are_fields()
    {
        Assert.All(
            new[] { typeof(PublicQuilt), typeof(PublicColorway) }.SelectMany(t => t.GetProperties(BindingFlags.Instance | BindingFlags.Public)),
            property => Assert.Contains(Element(property.PropertyType), new[] { typeof(string), typeof(bool), typeof(int), typeof(PublicColorway) })
        );
        Assert.Equal(["Copies"], typeof(PublicQuilt).GetProperties().Where(p => p.PropertyType == typeof(int)).Select(p => p.Name));
    }

    private static Type Element(Type type) =>
        type != typeof(string) && type.IsAssignableTo(typeof(IEnumerable)) ? type.GetGenericArguments()[0] : type;

    [Fact]
    public void A_kit_of_it_holds_what_was_typed_in_and_one_copy()
    {
        var licensed = Stars with { Licensed = License };
        var need = Assert.Single(LicensedNeeds.Of(licensed, Stars.Colorways[0])!.Lengths);
        Assert.Equal((NeedKind.Top, Length.Yards(new Rational(9, 4)), "A"), (need.Kind, need.Length, need.Letter));
        Assert.Null(LicensedNeeds.Of(Stars, Stars.Colorways[0]));
        Assert.Equal(1, PublicQuilt.Of(licensed).Copies);
        Assert.NotNull(PublicQuilt.NoBooklet(licensed));
        Assert.Null(PublicQuilt.NoBooklet(Stars));
    }

    [Fact]
    public void A_license_is_kept_in_the_file()
    {
        var licensed = Stars with { Licensed = License };
        var read = QuiltFile.Read(QuiltFile.Write(licensed)).Value!.Licensed!;
        Assert.Equal(License.Lengths, read.Lengths);
        Assert.Equal(License.Owner, read.Owner);
        var unknown = License with { Lengths = License.Lengths.Add("no-such-role", Length.Inch) };
        Assert.Contains(QuiltRules.Check(Stars with { Licensed = unknown }), f => f.Rule == "quilt.role.unknown");
    }
}
