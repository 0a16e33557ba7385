using Kitwright.Print.Drawing;
using Kitwright.Print.Pictures;
using Kitwright.Print.Text;
using SkiaSharp;

namespace Kitwright.Print.Tests.Pictures;

/// <summary>The painted picture, read back pixel by pixel.</summary>
public sealed class PngTest
{
    private static SKBitmap Paint(Node drawing, Box box, int width)
    {
        var png = new MemoryStream();
        new PictureFile(drawing, box, "a picture").WritePng(width, png);
        return SKBitmap.Decode(png.ToArray());
    }

    private static Color At(SKBitmap picture, int x, int y)
    {
        var pixel = picture.GetPixel(x, y);
        return new(pixel.Red, pixel.Green, pixel.Blue);
    }

    [Theory]
    [InlineData(16)]
    [InlineData(301)]
    [InlineData(2_000)]
    public void AQuiltHasItsProportionsAtEveryWidth(int width)
    {
        var file = QuiltPictureFile.Of(Demo.Quilt, null, Demo.Shelf);
        using var picture = Paint(file.Drawing, file.Box, width);

        Assert.Equal(width, picture.Width);
        Assert.Equal(width * file.Box.Height / file.Box.Width, picture.Height, 0.5);
    }

    [Fact]
    public void APatchIsWhereTheDrawingHasIt()
    {
        Color left = new(200, 30, 30),
            right = new(30, 30, 200);
        var drawing = new Group(
            [
                new Shape(Outline.Rectangle(new(0, 0, 1, 2)), Drawing.Paint.Of(left), null),
                new Shape(Outline.Rectangle(new(1, 0, 3, 2)), new NamedPaint("elsewhere", right), null),
            ]
        );
        using var picture = Paint(drawing, new(0, 0, 4, 2), 400);

        Assert.Equal(left, At(picture, 95, 10));
        Assert.Equal(right, At(picture, 105, 190));
    }

    [Fact]
    public void APrintRepeatsFromTheDrawingsOrigin()
    {
        Color ground = new(250, 250, 250),
            dot = new(10, 120, 10);
        var print = new TilePaint("dots", ground, 1, 1, [new Shape(Outline.Rectangle(new(0, 0, 0.5, 0.5)), Drawing.Paint.Of(dot), null)]);
        using var picture = Paint(new Shape(Outline.Rectangle(new(0, 0, 3, 3)), print, null), new(0, 0, 3, 3), 300);

        foreach (var (x, y) in ((int, int)[])[(0, 0), (100, 0), (200, 200)])
        {
            Assert.Equal(dot, At(picture, x + 25, y + 25));
            Assert.Equal(ground, At(picture, x + 75, y + 75));
        }
    }

    [Fact]
    public void TextIsPainted()
    {
        var line = new TextLine(SetText.Of("3 7/8 in", Look.Section), new(10, 40));
        using var picture = Paint(line, new(0, 0, 200, 60), 400);

        Assert.Contains(picture.Pixels, pixel => pixel.Red < 80);
    }

    [Fact]
    public void WhatWouldNotFitInMemoryIsNotPainted()
    {
        var tall = new PictureFile(new Group([]), new(0, 0, 1, 100), "tall");
        Assert.True(tall.Fits(1_000));
        Assert.False(tall.Fits(1_001));
        Assert.False(tall.Fits(15));
    }
}
