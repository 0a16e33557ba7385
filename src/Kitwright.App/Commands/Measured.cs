using System.Globalization;
using System.Numerics;
using System.Text.Json;
using System.Text.Json.Serialization;
using Kitwright.Measure;

namespace Kitwright.App.Commands;

/// <summary>
/// A length as the list that it answers writes its own: text in inches, <c>"3 7/8"</c>, or a whole number of the
/// list's unit, <c>62</c>. <c>default</c> is zero inches.
/// </summary>
[JsonConverter(typeof(Writer))]
internal readonly record struct Measured(Length Length, Length? Unit)
{
    public override string ToString() => LengthText.Mixed(Unit is { } unit ? Length / unit : Length.InInches);

    internal sealed class Writer : JsonConverter<Measured>
    {
        public override Measured Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            throw new NotSupportedException("Answers are written, not read.");

        public override void Write(Utf8JsonWriter writer, Measured value, JsonSerializerOptions options)
        {
            if (value.Unit is { } unit && value.Length / unit is { IsInteger: true } whole)
            {
                writer.WriteRawValue(whole.Numerator.ToString(CultureInfo.InvariantCulture));
            }
            else
            {
                writer.WriteStringValue(value.ToString());
            }
        }
    }
}
