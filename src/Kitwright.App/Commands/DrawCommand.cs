using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using Kitwright.Findings;
using Kitwright.Print.Pictures;

namespace Kitwright.App.Commands;

/// <summary><c>draw QUILT --svg FILE --png FILE</c>: the picture of a quilt, alone, at any size.</summary>
internal static class DrawCommand
{
    public static Command Make()
    {
        var quilt = Inputs.Quilt();
        var colorway = Inputs.Colorway();
        var stock = Inputs.Stock();
        var files = new PictureFiles();
        var command = new Command("draw", Inputs.Say("command.draw")) { quilt, colorway, stock };
        files.AddTo(command);
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var read = Inputs.ReadQuilt(parsed.GetValue(quilt)!);
            var shelf = Inputs.ReadStock(parsed.GetValue(stock));
            ImmutableArray<Finding> findings = [.. read.Findings, .. shelf.Findings];
            if (read.Value is { } found && shelf.Value is { } cloths)
            {
                var (chosen, unknown) = Inputs.Find(found, parsed.GetValue(colorway));
                findings = [.. findings, .. unknown];
                if (unknown.IsEmpty)
                {
                    findings = [.. findings, .. files.Write(parsed, output, QuiltPictureFile.Of(found, chosen, cloths))];
                }
            }

            Report.Write(output, findings, Inputs.Language(parsed, read.Value));
            return Report.ExitFor(findings);
        });
        return command;
    }
}

/// <summary>The options that say where pictures go, shared by the verbs that draw.</summary>
internal sealed class PictureFiles
{
    private readonly Option<string?> svg = new("--svg") { Description = Inputs.Say("command.draw.svg") };
    private readonly Option<string?> png = new("--png") { Description = Inputs.Say("command.draw.png") };
    private readonly Option<int> width = new("--width")
    {
        Description = Inputs.Say("command.draw.width"),
        DefaultValueFactory = _ => 1_200,
    };

    /// <param name="needed">Whether one of the two files must be named.</param>
    public void AddTo(Command command, bool needed = true)
    {
        width.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int>() is < PictureFile.LeastWidth or > PictureFile.MostWidth)
            {
                r.AddError(Inputs.Say("command.draw.width.bad", ("least", PictureFile.LeastWidth), ("most", PictureFile.MostWidth)));
            }
        });
        command.Add(svg);
        command.Add(png);
        command.Add(width);
        if (needed)
        {
            command.Validators.Add(r =>
            {
                if (r.GetValue(svg) is null && r.GetValue(png) is null)
                {
                    r.AddError(Inputs.Say("command.draw.none"));
                }
            });
        }
    }

    public bool Wanted(ParseResult parsed) => parsed.GetValue(svg) is not null || parsed.GetValue(png) is not null;

    public ImmutableArray<Finding> Write(ParseResult parsed, TextWriter output, PictureFile drawing)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (parsed.GetValue(svg) is { } text)
        {
            findings.AddRange(Outputs.Write(output, text, stream => stream.Write(Encoding.UTF8.GetBytes(drawing.Svg))));
        }

        if (parsed.GetValue(png) is { } pixels)
        {
            var wide = parsed.GetValue(width);
            findings.AddRange(
                drawing.Fits(wide)
                    ? Outputs.Write(output, pixels, stream => drawing.WritePng(wide, stream))
                    : [Finding.Of("picture.large", "--width", ("width", wide), ("most", PictureFile.MostPixels))]
            );
        }

        return findings.ToImmutable();
    }
}
