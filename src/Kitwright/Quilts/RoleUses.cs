namespace Kitwright.Quilts;

/// <summary>Every place of a quilt file where a role is named.</summary>
internal static class RoleUses
{
    public static IEnumerable<(string Place, string Role)> Of(Quilt quilt)
    {
        for (var b = 0; b < quilt.Blocks.Length; b++)
        {
            for (var p = 0; p < quilt.Blocks[b].Patches.Length; p++)
            {
                yield return ($"/blocks/{b}/patches/{p}/role", quilt.Blocks[b].Patches[p].Role);
            }
        }

        if (quilt.Setting.Sashing is { } sashing)
        {
            yield return ("/setting/sashing/role", sashing.Role);
            if (sashing.Cornerstone is { } post)
            {
                yield return ("/setting/sashing/cornerstone", post);
            }
        }

        if (quilt.Setting.Triangles is { } triangles)
        {
            yield return ("/setting/triangles", triangles);
        }

        if (quilt.Setting.HalfDrop is { } filler)
        {
            yield return ("/setting/halfDrop", filler);
        }

        for (var i = 0; i < quilt.Borders.Length; i++)
        {
            yield return ($"/borders/{i}/role", quilt.Borders[i].Role);
            if (quilt.Borders[i].Corner is { } corner)
            {
                yield return ($"/borders/{i}/corner", corner);
            }
        }

        yield return ("/binding/role", quilt.Binding.Role);
        yield return ("/backing/role", quilt.Backing.Role);
    }
}
