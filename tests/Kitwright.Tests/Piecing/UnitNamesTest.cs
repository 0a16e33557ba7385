using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Piecing;

/// <summary>Units are called by where they go, as a quilter calls them.</summary>
public sealed class UnitNamesTest
{
    [Fact]
    public void The_units_of_the_demo_quilt_say_where_they_go()
    {
        var names = DemoPlanTest.Plan(null).Sewing.Recipes.Select(r => Catalog.English.Say(r.Name)).ToArray();

        Assert.DoesNotContain(names, name => name.Contains("unit of", StringComparison.Ordinal));
        Assert.Contains("center with the sides of border 1", names);
        Assert.Contains("center with border 1", names);
        Assert.Contains(names, name => name.EndsWith("of the Harbor star block", StringComparison.Ordinal));
    }
}
