using Kitwright.Checking.Exact;
using Kitwright.Checking.Sewing.Verbs;
using Kitwright.Findings;
using Kitwright.Geometry;
using Kitwright.Measure;
using Kitwright.Plans;

namespace Kitwright.Checking.Sewing;

/// <summary>Carries out one run of a recipe on an empty table and looks at what it makes.</summary>
internal static class Interpreter
{
    /// <summary>The cloth that each of the recipe's registers ends with, in unit coordinates; or the first finding.</summary>
    public static Finding? Run(Recipe recipe, Table table, out Face[][] copies)
    {
        copies = [];
        for (var i = 0; i < recipe.Verbs.Length; i++)
        {
            table.Effort.Spend(1);
            if (Do(recipe.Verbs[i], table, recipe.Id.Child("verb", i + 1).Value) is { } finding)
            {
                return finding;
            }
        }

        var made = new List<Face[]>();
        foreach (var register in recipe.Makes)
        {
            if (Made(recipe, register, table, out var faces) is { } finding)
            {
                return finding;
            }

            made.Add(faces);
        }

        if (made.Count == 0)
        {
            return Finding.Of("check.sewing.makes-nothing", recipe.Id.Value);
        }

        if (table.InUse.FirstOrDefault() is { } left)
        {
            return Finding.Of("check.sewing.left-over", recipe.Id.Value, ("register", left));
        }

        copies = [.. made];
        return null;
    }

    private static Finding? Do(Verb verb, Table table, string place) =>
        verb switch
        {
            Take take => Taking.Do(take, table, place),
            Use use => Taking.Do(use, table, place),
            Turn turn => Laying.Do(turn, table, place),
            Lay lay => Laying.Do(lay, table, place),
            Sew sew => Stitching.Do(sew, table, place),
            SewIn sew => SettingIn.Do(sew, table, place),
            SewPart sew => SewingInPart.Do(sew, table, place),
            CloseSeam close => SewingInPart.Do(close, table, place),
            CutAlong cut => Dividing.Do(cut, table, place),
            Press press => Verbs.Pressing.Do(press, table, place),
            Trim trim => Verbs.Trimming.Do(trim, table, place),
            _ => Finding.Of("check.sewing.unknown-verb", place),
        };

    /// <summary>A finished copy is one assembly, right side up, and fills exactly the rectangle that the recipe states.</summary>
    private static Finding? Made(Recipe recipe, string register, Table table, out Face[] faces)
    {
        faces = [];
        var place = recipe.Id.Value;
        if (table.PickCloth(register, place, out var cloth) is { } finding)
        {
            return finding;
        }

        if (!cloth.RightSideUp)
        {
            return Finding.Of("check.sewing.wrong-side-up", place, ("register", register));
        }

        faces = cloth.Laid();
        table.Effort.Spend(faces.Length);
        if (recipe.Outline is { } finished)
        {
            return OutlineRule.Check(recipe, finished, faces, table);
        }

        var outline = UnitOutline.Of(recipe, table.Seam);
        Surd all = Surd.Zero,
            inside = Surd.Zero;
        foreach (var face in faces)
        {
            all += face.Shape.TwiceArea;
            inside += face.Shape.Within(outline)?.TwiceArea ?? Surd.Zero;
        }

        return all == outline.TwiceArea && inside == all
            ? null
            : Finding.Of("check.sewing.unit-size", place, ("register", register)) with
            {
                Measured = Extent(faces),
                Expected = Box(outline[0], outline[2]),
            };
    }

    private static Words.Message Extent(Face[] faces)
    {
        Point low = faces[0].Shape[0],
            high = low;
        foreach (var face in faces)
        {
            for (var i = 0; i < face.Shape.Count; i++)
            {
                var p = face.Shape[i];
                low = new(p.X < low.X ? p.X : low.X, p.Y < low.Y ? p.Y : low.Y);
                high = new(p.X > high.X ? p.X : high.X, p.Y > high.Y ? p.Y : high.Y);
            }
        }

        return Box(low, high);
    }

    private static Words.Message Box(Point low, Point high) =>
        Words.Message.Of(
            "check.box",
            ("size", Say.Size(high.X - low.X, high.Y - low.Y)),
            ("left", Say.Inches(low.X)),
            ("bottom", Say.Inches(low.Y))
        );
}
