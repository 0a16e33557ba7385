using System.Collections.Immutable;
using Kitwright.App.Planning;
using Kitwright.App.Tests.Commands;
using Kitwright.Cutting;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.App.Tests.Planning;

/// <summary>Which fabrics may be cut from leftovers on the shelf.</summary>
public sealed class ShelfRoomTest
{
    /// <summary>A leftover shows any part of its print, so that nothing that is matched to the print or is a panel comes from it.</summary>
    [Theory]
    [InlineData("plain", true)]
    [InlineData("matched", false)]
    [InlineData("panel", false)]
    public void What_is_matched_or_a_panel_is_cut_from_the_bolt(string print, bool fromShelf)
    {
        var quilt = QuiltFile.Read(File.ReadAllText(Run.Stars)).Value!;
        var role = quilt.Roles.First(r => r.Id == "background");
        quilt = quilt with { Roles = quilt.Roles.Replace(role, role with { Matched = print == "matched" }) };
        var fabric = new Fabric("F", "Foghorn", Length.Inches(44), 1200, "#335577", new(PrintKind.Solid, "#335577", 1))
        {
            RepeatAlong = print == "matched" ? Length.Inches(6) : null,
            PanelLength = print == "panel" ? Length.Inches(44) : null,
        };
        var colorway = new Colorway("Fog", ImmutableSortedDictionary<string, string>.Empty.Add("background", "F"));
        var plan = PlanningLine.Plan(quilt, colorway, [fabric], PlanOptions.Usual, FirstFit.Plan).Plan!;
        var shelf = new Shelf([fabric], []) { Offcuts = [new("F", Length.Inches(40), Length.Inches(20), 2)] };

        var answer = ShelfRoom.Plan(plan, shelf, [], Length.Zero, oneClothEach: false, PlanOptions.Usual, StashRoom.Looking, TestContext.Current.CancellationToken);

        var rest = answer.Rest.Single(r => r.Cloth.Roles.Contains("background"));
        Assert.Equal(fromShelf, rest.FromShelf > 0);
        Assert.Equal(fromShelf, rest.Purchase < rest.Cloth.Purchase);
    }
}
