using System.Collections.Immutable;
using Kitwright.Print.Drawing;
using Kitwright.Print.Flow;

namespace Kitwright.Print.Tests.Flow;

/// <summary>Space given, elements, expected rectangles on each page.</summary>
public sealed class FlowTest
{
    private static readonly Space Page = new(100, 100);

    /// <summary>A block that shows as a rectangle of its size; the height is also its name.</summary>
    private static Picture Block(double height, double width = 10) =>
        new(new Shape(Outline.Rectangle(new(0, 0, width, height)), Paint.Of(Color.White), null), width, height);

    private static Picture Head(double height) => Block(height) with { KeepWithNext = true };

    private static string[] Laid(Element content) =>
        [.. Pager.Pages(content, Page).Select(page => string.Join(" ", Boxes(page, Affine.Identity)))];

    private static IEnumerable<string> Boxes(Node node, Affine transform) =>
        node switch
        {
            Group group => group.Nodes.SelectMany(child => Boxes(child, group.Transform.Then(transform))),
            Shape { Fill: not null } shape => [Text(shape.Outline.Moved(transform).Bounds())],
            _ => [],
        };

    private static string Text(Box box) => $"{box.Left},{box.Top},{box.Width}x{box.Height}";

    [Fact]
    public void AStackBreaksBetweenElements() =>
        Assert.Equal(["0,0,10x40 0,45,10x40", "0,0,10x40"], Laid(Stack.Of(5, Block(40), Block(40), Block(40))));

    [Fact]
    public void ExactlyFullIsFull() => Assert.Equal(["0,0,10x50 0,50,10x50"], Laid(Stack.Of(0, Block(50), Block(50))));

    [Fact]
    public void AHeadingGoesOverleafWithWhatItHeads() =>
        Assert.Equal(["0,0,10x60", "0,0,10x20 0,20,10x40"], Laid(Stack.Of(0, Block(60), Head(20), Block(40))));

    [Fact]
    public void HeadingsOneUnderAnotherGoTogether() =>
        Assert.Equal(
            ["0,0,10x60", "0,0,10x10 0,10,10x10 0,20,10x40"],
            Laid(Stack.Of(0, Block(60), Head(10), Head(10), Block(40)))
        );

    [Fact]
    public void SpaceVanishesAtTheHeadOfAPage() =>
        Assert.Equal(["0,0,10x80", "0,0,10x80"], Laid(Stack.Of(0, Block(80), new Blank(15), Block(80))));

    [Fact]
    public void ARowIsBrokenWhereACellMustBeAndTheOtherCellSaysSo()
    {
        var row = new Row(
            [new(30, Block(10)) { Continued = Block(5) }, new(null, Stack.Of(0, Block(60), Block(60)))]
        );
        Assert.Equal(["0,0,10x10 30,0,10x60", "0,0,10x5 30,0,10x60"], Laid(row));
    }

    [Fact]
    public void WhatIsKeptTogetherMovesAsOne() =>
        Assert.Equal(
            ["0,0,10x50", "0,0,10x40 0,40,10x40"],
            Laid(Stack.Of(0, Block(50), new Together(Stack.Of(0, Block(40), Block(40)))))
        );

    [Fact]
    public void CellsShareWhatTheFixedOnesLeave()
    {
        var row = new Row([new(20, Block(10)), new(null, Block(10)), new(null, Block(10))], Gap: 10);
        Assert.Equal(["0,0,10x10 30,0,10x10 70,0,10x10"], Laid(row));
    }

    [Fact]
    public void ATableRepeatsItsHeadAndKeepsItsRowsWhole()
    {
        var grid = new Grid([null], [Block(12)], [.. Enumerable.Repeat(ImmutableArray.Create<Element>(Block(22)), 4)], new(Color.White, 1));
        // 4 above and below each row: the head takes 20, a row 30.
        Assert.Equal(["0,4,10x12 0,24,10x22 0,54,10x22", "0,4,10x12 0,24,10x22 0,54,10x22"], Laid(grid));
    }

    [Fact]
    public void WhatFitsNoPageSaysWhy()
    {
        var error = Assert.Throws<InvalidOperationException>(() => Laid(Stack.Of(0, Block(50), Block(120))));
        Assert.Contains("120", error.Message, StringComparison.Ordinal);
        Assert.Contains("100", error.Message, StringComparison.Ordinal);
        Assert.Equal(new Refused("a picture 120 pt wide in 100 pt", 10, 100), Block(10, width: 120).Lay(Page));
    }
}
