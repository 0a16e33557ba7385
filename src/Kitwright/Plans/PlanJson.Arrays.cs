using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Kitwright.Plans;

public static partial class PlanJson
{
    /// <summary>Arrays that hold no null, where the serializer's own would let one pass.</summary>
    private sealed class ArrayConverterFactory : JsonConverterFactory
    {
        public override bool CanConvert(Type type) =>
            type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>);

        public override JsonConverter CreateConverter(Type type, JsonSerializerOptions options) =>
            (JsonConverter)Activator.CreateInstance(typeof(ArrayConverter<>).MakeGenericType(type.GetGenericArguments()))!;
    }

    private sealed class ArrayConverter<T> : JsonConverter<ImmutableArray<T>>
    {
        public override ImmutableArray<T> Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.StartArray)
            {
                throw new JsonException("Expected an array.");
            }

            var item = (JsonConverter<T>)options.GetConverter(typeof(T));
            var items = ImmutableArray.CreateBuilder<T>();
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                items.Add(
                    reader.TokenType == JsonTokenType.Null
                        ? throw new JsonException("An array holds no null.")
                        : item.Read(ref reader, typeof(T), options)!
                );
            }

            return items.ToImmutable();
        }

        public override void Write(Utf8JsonWriter writer, ImmutableArray<T> items, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var item in items)
            {
                JsonSerializer.Serialize(writer, item, options);
            }

            writer.WriteEndArray();
        }
    }
}
