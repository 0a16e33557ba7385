using Kitwright.Beginnings;
using Kitwright.Blocks;
using Kitwright.Fabrics;
using Kitwright.Measure;
using Kitwright.Quilts;
using Xunit;

namespace Kitwright.Tests.Beginnings;

public sealed class FirstColorwayTest
{
    private static readonly Quilt Star = (NewQuilt.With(BlockBook.Find("ohio-star")!, LengthUnit.Inch) with { Sashing = Length.Inch }).Make().Value!;

    [Fact]
    public void Every_role_has_a_fabric_light_ones_a_light_one_and_dark_ones_a_dark_one()
    {
        var shelf = Grays("#ffffff", "#d0d0d0", "#a0a0a0", "#707070", "#404040", "#101010");

        var colorway = FirstColorway.Of(Star, shelf, "first")!;

        Assert.Equal(Star.Roles.Select(r => r.Id).Order(), colorway.Fabrics.Keys);
        foreach (var role in Star.Roles.Where(r => r.Value is not null))
        {
            Assert.Contains(colorway.Fabrics[role.Id], role.Value == Value.Light ? ["0", "1"] : role.Value == Value.Dark ? ["4", "5"] : (string[])["2", "3"]);
        }
    }

    [Fact]
    public void A_fabric_without_a_bolt_is_left_on_the_shelf_while_there_are_others()
    {
        var shelf = Grays("#ffffff", "#101010");
        shelf = shelf with { Bolts = shelf.Bolts.RemoveAt(0) };

        Assert.All(FirstColorway.Of(Star, shelf, "first")!.Fabrics.Values, number => Assert.Equal("1", number));
    }

    [Fact]
    public void An_empty_shelf_gives_none() => Assert.Null(FirstColorway.Of(Star, Shelf.Empty, "first"));

    private static Shelf Grays(params string[] colors) =>
        new(
            [.. colors.Select((color, i) => new Fabric($"{i}", color, Length.Inches(44), 1200, color, new(PrintKind.Solid, color, 1)))],
            [.. colors.Select((_, i) => new Bolt($"B{i}", $"{i}", "L", Length.Inches(360)))]
        );
}
