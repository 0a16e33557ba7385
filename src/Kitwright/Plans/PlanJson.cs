using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Plans;

/// <summary>
/// The one way in which records are written and read as JSON: lengths as "3 7/8" (inches), coordinates as
/// "6 + 1/2√2", points as two of them, enums and names in camel case.
/// </summary>
public static class PlanJson
{
    public static JsonSerializerOptions Options { get; } = Make(indented: false);
    public static JsonSerializerOptions Indented { get; } = Make(indented: true);

    private static JsonSerializerOptions Make(bool indented)
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web)
        {
            WriteIndented = indented,
            NumberHandling = JsonNumberHandling.Strict,
            // Fractions and roots stay readable; files are never pasted into HTML unescaped.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            MaxDepth = 64,
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
        options.Converters.Add(new TextConverter<Length>(LengthText.Inches, (string t, out Length v) => LengthText.TryParse(t, out v)));
        options.Converters.Add(new TextConverter<Rational>(LengthText.Mixed, (string t, out Rational v) => RationalText.TryParse(t, out v)));
        options.Converters.Add(new TextConverter<Surd>(SurdText.Format, (string t, out Surd v) => SurdText.TryParse(t, out v)));
        options.Converters.Add(new TextConverter<PathId>(id => id.Value, (string t, out PathId v) => { v = new(t); return true; }));
        options.Converters.Add(new PointConverter());
        options.Converters.Add(new LineConverter());
        options.Converters.Add(new PolygonConverter());
        options.Converters.Add(new MotionConverter());
        options.Converters.Add(new MessageConverter());
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }

    private delegate bool TryParse<T>(string text, out T value);

    private sealed class TextConverter<T>(Func<T, string> format, TryParse<T> parse) : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.String && parse(reader.GetString()!, out var value)
                ? value
                : throw new JsonException($"Not a {typeof(T).Name}.");

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            writer.WriteStringValue(format(value));

        public override T ReadAsPropertyName(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            parse(reader.GetString()!, out var value) ? value : throw new JsonException($"Not a {typeof(T).Name}.");

        public override void WriteAsPropertyName(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            writer.WritePropertyName(format(value));
    }

    /// <summary>A fixed number of coordinates in an array.</summary>
    private static Surd[] ReadSurds(ref Utf8JsonReader reader, int count)
    {
        var parts = JsonSerializer.Deserialize<string[]>(ref reader) ?? [];
        var surds = new Surd[count];
        if (parts.Length != count)
        {
            throw new JsonException($"Expected {count} coordinates.");
        }

        for (var i = 0; i < count; i++)
        {
            if (!SurdText.TryParse(parts[i], out surds[i]))
            {
                throw new JsonException($"Not a coordinate: {parts[i]}");
            }
        }

        return surds;
    }

    private static void WriteSurds(Utf8JsonWriter writer, params ReadOnlySpan<Surd> surds)
    {
        writer.WriteStartArray();
        foreach (var surd in surds)
        {
            writer.WriteStringValue(SurdText.Format(surd));
        }

        writer.WriteEndArray();
    }

    private sealed class PointConverter : JsonConverter<Point>
    {
        public override Point Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            var s = ReadSurds(ref reader, 2);
            return new(s[0], s[1]);
        }

        public override void Write(Utf8JsonWriter writer, Point p, JsonSerializerOptions options) =>
            WriteSurds(writer, p.X, p.Y);
    }

    private sealed class LineConverter : JsonConverter<Line>
    {
        public override Line Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            var s = ReadSurds(ref reader, 4);
            return new(new(s[0], s[1]), new(s[2], s[3]));
        }

        public override void Write(Utf8JsonWriter writer, Line l, JsonSerializerOptions options) =>
            WriteSurds(writer, l.From.X, l.From.Y, l.To.X, l.To.Y);
    }

    private sealed class MotionConverter : JsonConverter<Motion>
    {
        public override Motion Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            var s = ReadSurds(ref reader, 6);
            return new(s[0], s[1], s[2], s[3], s[4], s[5]);
        }

        public override void Write(Utf8JsonWriter writer, Motion m, JsonSerializerOptions options) =>
            WriteSurds(writer, m.XX, m.XY, m.YX, m.YY, m.DX, m.DY);
    }

    private sealed class PolygonConverter : JsonConverter<Polygon>
    {
        public override Polygon Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            new([.. JsonSerializer.Deserialize<Point[]>(ref reader, options) ?? []]);

        public override void Write(Utf8JsonWriter writer, Polygon polygon, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, polygon.Corners, options);
    }

    /// <summary>A message as its key and slots; a slot names its type so that the round trip is exact.</summary>
    private sealed class MessageConverter : JsonConverter<Message>
    {
        public override Message Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            using var document = JsonDocument.ParseValue(ref reader);
            return ReadMessage(document.RootElement);
        }

        private static Message ReadMessage(JsonElement element)
        {
            var slots = ImmutableSortedDictionary.CreateBuilder<string, object>(StringComparer.Ordinal);
            foreach (var property in element.EnumerateObject())
            {
                if (property.Name != "say")
                {
                    slots[property.Name] = ReadSlot(property.Value);
                }
            }

            return new(element.GetProperty("say").GetString() ?? "", slots.ToImmutable());
        }

        private static object ReadSlot(JsonElement value) =>
            value.ValueKind switch
            {
                JsonValueKind.String => value.GetString()!,
                JsonValueKind.Number => value.GetInt64(),
                JsonValueKind.Array => value.EnumerateArray().Select(ReadMessage).ToImmutableArray(),
                JsonValueKind.Object when value.TryGetProperty("length", out var text)
                    && LengthText.TryParse(text.GetString(), out var length) => length,
                JsonValueKind.Object => ReadMessage(value),
                _ => throw new JsonException("Not a message slot."),
            };

        public override void Write(Utf8JsonWriter writer, Message message, JsonSerializerOptions options)
        {
            writer.WriteStartObject();
            writer.WriteString("say", message.Key);
            foreach (var (name, value) in message.Slots)
            {
                writer.WritePropertyName(name);
                WriteSlot(writer, value, options);
            }

            writer.WriteEndObject();
        }

        private void WriteSlot(Utf8JsonWriter writer, object value, JsonSerializerOptions options)
        {
            switch (value)
            {
                case string text:
                    writer.WriteStringValue(text);
                    break;
                case int number:
                    writer.WriteNumberValue(number);
                    break;
                case long number:
                    writer.WriteNumberValue(number);
                    break;
                case Length length:
                    writer.WriteStartObject();
                    writer.WriteString("length", LengthText.Inches(length));
                    writer.WriteEndObject();
                    break;
                case Message message:
                    Write(writer, message, options);
                    break;
                case ImmutableArray<Message> list:
                    writer.WriteStartArray();
                    foreach (var item in list)
                    {
                        Write(writer, item, options);
                    }

                    writer.WriteEndArray();
                    break;
                default:
                    throw new JsonException($"A message cannot hold a {value.GetType().Name}.");
            }
        }
    }
}
