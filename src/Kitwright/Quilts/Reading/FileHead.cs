namespace Kitwright.Quilts.Reading;

/// <summary>The fields that say what a file is.</summary>
internal static class FileHead
{
    public static void Check(Fields fields, string format, int newest, Report report)
    {
        // Where the schema lies is for editors.
        fields.Optional("$schema");
        var stated = fields.Required("format");
        if (stated.Text() is { Length: > 0 } name && name != format)
        {
            report.Fault("quilt.format", stated.Pointer, ("format", format));
        }

        var version = fields.Required("version");
        var number = version.Whole(1, int.MaxValue);
        if (number > newest)
        {
            report.Fault("quilt.version", version.Pointer, ("version", number), ("newest", newest));
        }
    }
}
