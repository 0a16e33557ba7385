using System.Collections.Immutable;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Quilts;

namespace Kitwright.Blocks;

/// <summary>Draws a block of the log-cabin family from its parameters, log after log in the order of sewing.</summary>
/// <remarks>
/// Roles are <c>center</c>, <c>light1</c> … and <c>dark1</c> … from the center out, <c>stone</c> for cornerstones and
/// <c>unit</c> for what is built in; an hourglass also takes <c>center</c>.
/// </remarks>
internal sealed class LogCabin
{
    private readonly LogCabinPlan plan;
    private readonly List<(string Role, ImmutableArray<Point> Corners)> patches = [];

    // What is sewn so far, and by how much each side grew in this round.
    private Box sewn;
    private readonly Rational[] grown = new Rational[4];

    private LogCabin(LogCabinPlan plan)
    {
        this.plan = plan;
        sewn = new(0, 0, plan.Center, plan.Center);
    }

    public static BookBlock Draw(string id, string name, string? source, LogCabinPlan plan)
    {
        var drawing = new LogCabin(plan);
        drawing.Draw();
        return Drawing.Finish(id, name, BlockFamily.LogCabin, source, drawing.sewn, drawing.patches);
    }

    private void Draw()
    {
        Add("center", sewn);
        for (var round = 1; round <= plan.Rounds; round++)
        {
            Array.Clear(grown);
            foreach (var (side, tone) in Logs())
            {
                AddLog(round, side, tone);
            }
        }
    }

    private IEnumerable<(LogSide Side, string Tone)> Logs()
    {
        LogSide Next(int steps) => (LogSide)(((int)plan.Start + (plan.Clockwise ? 4 - steps : steps)) % 4);
        return plan.Lay switch
        {
            LogLay.Round => [(plan.Start, "light"), (Next(1), "light"), (Next(2), "dark"), (Next(3), "dark")],
            LogLay.CourthouseSteps => [(plan.Start, "light"), (Next(2), "light"), (Next(1), "dark"), (Next(3), "dark")],
            _ => [(plan.Start, "light"), (Next(1), "dark")],
        };
    }

    private void AddLog(int round, LogSide side, string tone)
    {
        var width = tone == "light" ? plan.Light : plan.Dark;
        var role = $"{tone}{((round - 1) * plan.Tones / plan.Rounds) + 1}";
        var log = sewn.Beside(side, width);
        var before = grown[((int)side + 3) % 4];
        var after = grown[((int)side + 1) % 4];
        var (first, rest) = log.SplitAlong(side, plan.Cornerstones ? before : Rational.Zero);
        var (last, body) = rest.SplitAlong(side, plan.Cornerstones ? after : Rational.Zero, fromEnd: true);
        AddIfAny("stone", first);
        AddIfAny("stone", last);
        foreach (var unit in plan.Units.Where(u => u.Round == round && u.Side == side).OrderBy(u => u.At))
        {
            body = AddUnit(unit, body, width, role);
        }

        AddIfAny(role, body);
        grown[(int)side] = width;
        sewn = sewn.Including(log);
    }

    // What is left of the log, for the next unit or for cloth.
    private Box AddUnit(LogUnit unit, Box log, Rational width, string role)
    {
        if (unit.At == LogPlace.Middle)
        {
            var length = unit.Kind == LogUnitKind.FlyingGoose ? width * 2 : width;
            var (before, from) = log.SplitAlong(unit.Side, (log.LengthAlong(unit.Side) - length) / 2);
            var (place, after) = from.SplitAlong(unit.Side, length);
            AddIfAny(role, before);
            Fill(unit, place, role);
            return after;
        }

        var (end, body) = log.SplitAlong(unit.Side, width, fromEnd: unit.At == LogPlace.Last);
        Fill(unit, end, role);
        return body;
    }

    // Corners of a box counted so that the side's inner edge runs from the first to the second.
    private void Fill(LogUnit unit, Box box, string role)
    {
        var corners = box.CornersFrom(unit.Side);
        Point a = corners[0],
            b = corners[1],
            c = corners[2],
            d = corners[3];
        var middle = Middle(a, c);
        switch (unit.Kind)
        {
            case LogUnitKind.FlyingGoose:
                var tip = Middle(c, d);
                patches.Add(("unit", [a, b, tip]));
                patches.Add((role, [b, c, tip]));
                patches.Add((role, [a, tip, d]));
                break;
            case LogUnitKind.Hourglass:
                patches.Add(("unit", [b, c, middle]));
                patches.Add(("unit", [d, a, middle]));
                patches.Add(("center", [a, b, middle]));
                patches.Add(("center", [c, d, middle]));
                break;
            default:
                // The built-in fabric takes the corner that points out of the block.
                var isLast = unit.At == LogPlace.Last;
                patches.Add(("unit", isLast ? [a, c, d] : [b, c, d]));
                patches.Add((role, isLast ? [a, b, c] : [a, b, d]));
                break;
        }
    }

    private static Point Middle(Point p, Point q) => (p + q) * new Surd(new Rational(1, 2));

    private void AddIfAny(string role, Box box)
    {
        if (!box.IsEmpty)
        {
            Add(role, box);
        }
    }

    private void Add(string role, Box box) => patches.Add((role, box.Polygon().Corners));
}
