using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Kitwright.Measure;
using Kitwright.Words;

namespace Kitwright.Plans;

public static partial class PlanJson
{
    /// <summary>
    /// A message as its key ("say") and its slots: text and whole numbers as such, a length as <c>{"length": "3 7/8"}</c>,
    /// messages and lists of them as themselves. So a slot tells its type and the round trip is exact.
    /// </summary>
    private sealed class MessageConverter : JsonConverter<Message>
    {
        public override Message Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            using var document = JsonDocument.ParseValue(ref reader);
            return ReadMessage(document.RootElement);
        }

        private static Message ReadMessage(JsonElement element)
        {
            if (
                element.ValueKind != JsonValueKind.Object
                || !element.TryGetProperty("say", out var key)
                || key.ValueKind != JsonValueKind.String
            )
            {
                throw new JsonException("Not a message.");
            }

            var slots = ImmutableSortedDictionary.CreateBuilder<string, object>(StringComparer.Ordinal);
            foreach (var property in element.EnumerateObject().Where(p => p.Name != "say"))
            {
                slots[property.Name] = ReadSlot(property.Value);
            }

            return new(key.GetString()!, slots.ToImmutable());
        }

        private static object ReadSlot(JsonElement value) =>
            value.ValueKind switch
            {
                JsonValueKind.String => value.GetString()!,
                JsonValueKind.Number when value.TryGetInt64(out var number) => number,
                JsonValueKind.Array => value.EnumerateArray().Select(ReadMessage).ToImmutableArray(),
                JsonValueKind.Object when value.TryGetProperty("say", out _) => ReadMessage(value),
                JsonValueKind.Object when value.TryGetProperty("length", out var text)
                    && text.ValueKind == JsonValueKind.String
                    && LengthText.TryParse(text.GetString(), out var length) => length,
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
