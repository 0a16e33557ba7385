using System.Collections;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Kitwright.Geometry;
using Kitwright.Measure;

namespace Kitwright.Plans;

/// <summary>
/// The one way in which records are written and read as JSON: lengths as "3 7/8" (inches), coordinates as
/// "6 + 1/2√2", points as two of them, enums and names in camel case.
/// </summary>
public static partial class PlanJson
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
            // A plan may come from anybody: what is absent, null or there twice is refused here, not met later.
            RespectRequiredConstructorParameters = true,
            RespectNullableAnnotations = true,
            AllowDuplicateProperties = false,
            AllowOutOfOrderMetadataProperties = true,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutWhatIsComputed, RefuseNullInArrays } },
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
        options.MakeReadOnly();
        return options;
    }

    // A document states each thing once: what a plan's records compute from their fields is not written.
    private static void LeaveOutWhatIsComputed(JsonTypeInfo info)
    {
        if (info.Kind == JsonTypeInfoKind.Object && info.Type.Namespace == typeof(PlanJson).Namespace)
        {
            foreach (var computed in info.Properties.Where(p => p.Set is null && p.AssociatedParameter is null).ToList())
            {
                info.Properties.Remove(computed);
            }
        }
    }

    // The serializer looks at the nulls of fields, but not at those inside arrays.
    private static void RefuseNullInArrays(JsonTypeInfo info)
    {
        var arrays = info.Properties.Where(p => IsArray(p.PropertyType) && p.Get is not null).ToList();
        if (arrays.Count > 0)
        {
            info.OnDeserialized = made =>
            {
                foreach (var array in arrays)
                {
                    var items = array.Get!(made)!;
                    if (items.Equals(Activator.CreateInstance(array.PropertyType)) || ((IEnumerable)items).Cast<object?>().Contains(null))
                    {
                        throw new JsonException($"'{array.Name}' is or holds null.");
                    }
                }
            };
        }
    }

    private static bool IsArray(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

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
}
