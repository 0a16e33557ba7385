using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Kitwright.Fabrics;
using Kitwright.Plans;
using Kitwright.Quilts;

namespace Kitwright.Piecing;

/// <summary>
/// What a plan is frozen by: SHA-256 over the quilt, the colorway, the options and the engine's version. The mark is
/// its first 40 bits in Crockford's base 32, without letters that read like figures.
/// </summary>
public static class PlanHash
{
    /// <summary>Raised whenever equal input may give another plan.</summary>
    public const string Engine = "6";

    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <param name="shelf">What it says of prints is a part of the problem.</param>
    public static string Of(Quilt quilt, Colorway? colorway, PlanOptions options, ImmutableArray<Fabric> shelf)
    {
        var prints = PrintRoles.Of(quilt, colorway, shelf).Prints;
        var text = string.Join(
            '\n',
            Engine,
            JsonSerializer.Serialize(quilt with { Colorways = [] }, PlanJson.Options),
            JsonSerializer.Serialize(colorway, PlanJson.Options),
            JsonSerializer.Serialize(options, PlanJson.Options)
        );
        if (!prints.IsEmpty)
        {
            text += '\n' + JsonSerializer.Serialize(prints, PlanJson.Options);
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>"K7M2-9QXD": read aloud at the table, typed into a search field.</summary>
    public static string Mark(string hash)
    {
        var bits = Convert.ToUInt64(hash[..10], 16);
        var mark = new char[9];
        for (var i = 8; i >= 0; i--)
        {
            if (i == 4)
            {
                mark[i] = '-';
                continue;
            }

            mark[i] = Alphabet[(int)(bits % 32)];
            bits /= 32;
        }

        return new(mark);
    }
}
