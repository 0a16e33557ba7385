using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using Kitwright.App.Web;
using Kitwright.Exchange;
using Kitwright.Fabrics;
using Kitwright.Findings;
using Kitwright.Quilts;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>Arguments and files that several verbs share.</summary>
internal static class Inputs
{
    private const string WordsName = "--words";

    public static Argument<string> Quilt() => new("QUILT") { Description = Say("command.quilt") };

    public static Option<string?> Stock() => new("--stock") { Description = Say("command.stock") };

    public static Option<string?> Colorway() => new("--colorway") { Description = Say("command.colorway") };

    public static Option<bool> Json() => new("--json") { Description = Say("command.json") };

    /// <summary>Whose words of the trade the answer has; given to the root, so that every verb takes it.</summary>
    public static Option<TradeWords> Words() =>
        new(WordsName)
        {
            Description = Say("command.words"),
            DefaultValueFactory = _ => TradeWords.American,
            Recursive = true,
        };

    public static TradeWords WordsOf(ParseResult parsed) => parsed.GetValue<TradeWords>(WordsName);

    /// <summary>The language of an answer that is about no quilt.</summary>
    public static Catalog Language(ParseResult parsed) => Catalog.For(WordsOf(parsed), Units.OfTemplates);

    /// <summary>The language of an answer about a quilt, in its units; where it could not be read, in inches.</summary>
    public static Catalog Language(ParseResult parsed, Quilt? quilt) => quilt is null ? Language(parsed) : Languages.Of(quilt, WordsOf(parsed));

    public static string Say(string key, params ReadOnlySpan<(string Name, object Value)> slots) => Catalog.English.Say(key, slots);

    public static Checked<Quilt> ReadQuilt(string path)
    {
        var bytes = InputFile.Read(path);
        return bytes.Value is null ? Checked<Quilt>.Failed(bytes.Findings) : QuiltFile.Read(Text(bytes.Value));
    }

    /// <summary>The shelf of a stock file; an empty one where none is named.</summary>
    public static Checked<Shelf> ReadStock(string? path)
    {
        if (path is null)
        {
            return Checked<Shelf>.Of(Shelf.Empty);
        }

        var bytes = InputFile.Read(path);
        return bytes.Value is null ? Checked<Shelf>.Failed(bytes.Findings) : StockFile.Read(bytes.Value);
    }

    /// <summary>UTF-8, with or without its byte order mark; bad bytes become marks that the reader then refuses.</summary>
    public static string Text(byte[] bytes) => new UTF8Encoding(false).GetString(bytes).TrimStart('\uFEFF');

    /// <summary>The colorway of that name, or a finding that lists the names; null without a name is fine.</summary>
    public static (Colorway? Colorway, ImmutableArray<Finding> Findings) Find(Quilt quilt, string? name)
    {
        if (name is null)
        {
            return (null, []);
        }

        if (quilt.Colorway(name) is { } found)
        {
            return (found, []);
        }

        return (
            null,
            [
                Finding.Of(
                    "command.colorway.unknown",
                    "--colorway",
                    ("name", name),
                    ("names", string.Join(", ", quilt.Colorways.Select(c => c.Name)))
                ),
            ]
        );
    }
}
