using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Kitwright.Geometry;

namespace Kitwright.Plans;

// Points, lines and motions as arrays of coordinates.
public static partial class PlanJson
{
    private static Surd[] ReadSurds(ref Utf8JsonReader reader, int count)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            throw new JsonException($"Expected {count} coordinates.");
        }

        var surds = new Surd[count];
        for (var i = 0; i < count; i++)
        {
            reader.Read();
            if (reader.TokenType != JsonTokenType.String || !SurdText.TryParse(reader.GetString(), out surds[i]))
            {
                throw new JsonException("Not a coordinate.");
            }
        }

        reader.Read();
        return reader.TokenType == JsonTokenType.EndArray
            ? surds
            : throw new JsonException($"Expected {count} coordinates.");
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

    private static Point ReadPoint(ref Utf8JsonReader reader)
    {
        var s = ReadSurds(ref reader, 2);
        return new(s[0], s[1]);
    }

    private sealed class PointConverter : JsonConverter<Point>
    {
        public override Point Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            ReadPoint(ref reader);

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
            var motion = new Motion(s[0], s[1], s[2], s[3], s[4], s[5]);
            return motion.IsRigid ? motion : throw new JsonException("Not a rigid motion.");
        }

        public override void Write(Utf8JsonWriter writer, Motion m, JsonSerializerOptions options) =>
            WriteSurds(writer, m.XX, m.XY, m.YX, m.YY, m.DX, m.DY);
    }

    private sealed class PolygonConverter : JsonConverter<Polygon>
    {
        public override Polygon Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.StartArray)
            {
                throw new JsonException("Expected the corners of a polygon.");
            }

            var corners = ImmutableArray.CreateBuilder<Point>();
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                corners.Add(ReadPoint(ref reader));
            }

            return corners.Count >= 3 ? new(corners.ToImmutable()) : throw new JsonException("A polygon has three corners or more.");
        }

        public override void Write(Utf8JsonWriter writer, Polygon polygon, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var corner in polygon.Corners)
            {
                WriteSurds(writer, corner.X, corner.Y);
            }

            writer.WriteEndArray();
        }
    }
}
