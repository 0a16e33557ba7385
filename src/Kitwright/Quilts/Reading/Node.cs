using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Quilts.Reading;

/// <summary>
/// One value of a JSON file with its place. Each getter gives the value, or reports a fault and gives a harmless
/// stand-in, so that one reading finds all faults; a file with a fault yields no quilt.
/// </summary>
internal readonly record struct Node(JsonElement Json, string Pointer, Source Source)
{
    /// <summary>A field that is not there and has been reported: its getters give stand-ins and stay silent.</summary>
    private bool IsAbsent => Json.ValueKind == JsonValueKind.Undefined;

    private Report Report => Source.Report;

    public Node Child(string key, JsonElement json) =>
        new(json, $"{Pointer}/{key.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}", Source);

    /// <summary>A name or a note: not empty, of bounded length.</summary>
    public string Text(int longest = QuiltLimits.Name)
    {
        if (!Is(JsonValueKind.String, "text"))
        {
            return "";
        }

        var text = Json.GetString()!;
        if (string.IsNullOrWhiteSpace(text))
        {
            Report.Fault("quilt.text.empty", Pointer);
        }
        else if (text.Length > longest)
        {
            Report.Fault("quilt.text.long", Pointer, ("length", text.Length), ("most", longest));
        }

        return text;
    }

    /// <summary>A short name that becomes a part of paths: letters, digits, hyphen and underscore.</summary>
    public string Id()
    {
        if (!Is(JsonValueKind.String, "text"))
        {
            return "";
        }

        var text = Json.GetString()!;
        if (text.Length is 0 or > QuiltLimits.Id || !text.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'))
        {
            Report.Fault("quilt.id", Pointer, ("text", Shown(text)), ("most", QuiltLimits.Id));
        }

        return text;
    }

    public bool Flag()
    {
        if (IsAbsent || Json.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return Json.ValueKind == JsonValueKind.True;
        }

        Report.Fault("quilt.kind", Pointer, ("wanted", "flag"));
        return false;
    }

    public int Whole(int least, int most)
    {
        if (!Is(JsonValueKind.Number, "whole"))
        {
            return least;
        }

        if (Json.TryGetInt32(out var number) && number >= least && number <= most)
        {
            return number;
        }

        Report.Fault("quilt.whole", Pointer, ("text", Shown(Json.GetRawText())), ("least", least), ("most", most));
        return least;
    }

    /// <summary>A length above zero; bare numbers are in the file's units.</summary>
    public Length Size()
    {
        var length = Measure();
        if (length.Sign <= 0)
        {
            Report.Fault("quilt.size", Pointer, ("text", Shown(RawText())));
            return Length.Inch;
        }

        if (length > QuiltLimits.Side)
        {
            Report.Fault("quilt.size.large", Pointer, ("text", Shown(RawText())), ("most", QuiltLimits.Side));
            return Length.Inch;
        }

        return length;
    }

    /// <summary>A length of zero or more.</summary>
    public Length SizeOrZero()
    {
        var length = Measure();
        if (length.IsZero)
        {
            return length;
        }

        return Size();
    }

    private Length Measure()
    {
        if (IsAbsent)
        {
            return Length.Inch;
        }

        if (TryRawText(out var text) && LengthText.TryParse(text, out var length, Source.Units))
        {
            return IsTooFine(length.InInches, text) ? Length.Inch : length;
        }

        Report.Fault("quilt.length", Pointer, ("text", Shown(Json.GetRawText())));
        return Length.Inch;
    }

    /// <summary>A coordinate, in inches.</summary>
    public Surd Coordinate()
    {
        if (IsAbsent)
        {
            return Surd.Zero;
        }

        if (TryRawText(out var text) && SurdText.TryParse(text, out var coordinate))
        {
            return
                IsTooFine(coordinate.One, text)
                || IsTooFine(coordinate.Root2, text)
                || IsTooFine(coordinate.Root3, text)
                || IsTooFine(coordinate.Root6, text)
                ? Surd.Zero
                : coordinate * LengthText.Of(1, Source.Units);
        }

        Report.Fault("quilt.coordinate", Pointer, ("text", Shown(Json.GetRawText())));
        return Surd.Zero;
    }

    // Exact work grows with the digits of fractions, so these are bounded.
    private bool IsTooFine(Rational part, string text)
    {
        if (part.Denominator <= QuiltLimits.Denominator && Rational.Abs(part) <= QuiltLimits.Denominator)
        {
            return false;
        }

        Report.Fault("quilt.fine", Pointer, ("text", Shown(text)), ("most", QuiltLimits.Denominator));
        return true;
    }

    // JSON numbers are read by their digits, so "12.5" never passes through a double.
    private bool TryRawText([NotNullWhen(true)] out string? text)
    {
        text = Json.ValueKind switch
        {
            JsonValueKind.String => Json.GetString(),
            JsonValueKind.Number => Json.GetRawText(),
            _ => null,
        };
        return text is not null;
    }

    private string RawText() => TryRawText(out var text) ? text : "";

    /// <summary>One of an enum's names in camel case.</summary>
    public T OneOf<T>()
        where T : struct, Enum
    {
        if (!Is(JsonValueKind.String, "text"))
        {
            return default;
        }

        var text = Json.GetString()!;
        var names = Enum.GetNames<T>();
        var at = Array.FindIndex(names, name => JsonNamingPolicy.CamelCase.ConvertName(name) == text);
        if (at >= 0)
        {
            return Enum.GetValues<T>()[at];
        }

        Report.Fault(
            "quilt.choice",
            Pointer,
            ("text", Shown(text)),
            ("choices", string.Join(", ", names.Select(JsonNamingPolicy.CamelCase.ConvertName)))
        );
        return default;
    }

    /// <summary>The items of an array; none where there are more than <paramref name="most"/>.</summary>
    public IEnumerable<Node> Items(int least, int most)
    {
        if (!Is(JsonValueKind.Array, "list"))
        {
            return [];
        }

        var count = Json.GetArrayLength();
        if (count < least || count > most)
        {
            Report.Fault("quilt.count", Pointer, ("count", count), ("least", least), ("most", most));
            return [];
        }

        var self = this;
        return Json.EnumerateArray().Select((item, i) => new Node(item, $"{self.Pointer}/{i}", self.Source));
    }

    /// <summary>The names and values of an object whose names are free.</summary>
    public IEnumerable<(string Key, Node Value)> Entries(int most)
    {
        if (!Is(JsonValueKind.Object, "object"))
        {
            return [];
        }

        var count = Json.GetPropertyCount();
        if (count > most)
        {
            Report.Fault("quilt.count", Pointer, ("count", count), ("least", 0), ("most", most));
            return [];
        }

        var self = this;
        return Json.EnumerateObject().Select(entry => (entry.Name, self.Child(entry.Name, entry.Value)));
    }

    /// <summary>The named fields of an object; empty where this is no object.</summary>
    public Fields Fields() => new(this, IsAbsent || Is(JsonValueKind.Object, "object"));

    private bool Is(JsonValueKind kind, string wanted)
    {
        if (Json.ValueKind != kind && !IsAbsent)
        {
            Report.Fault("quilt.kind", Pointer, ("wanted", wanted));
        }

        return Json.ValueKind == kind;
    }

    private static string Shown(string text) => text.Length <= 40 ? text : text[..40] + "…";
}

/// <summary>What all nodes of one file share.</summary>
internal sealed class Source
{
    public Report Report { get; } = new();

    /// <summary>What bare numbers and all coordinates are in.</summary>
    public LengthUnit Units { get; set; } = LengthUnit.Inch;
}
