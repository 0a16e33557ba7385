using System.Text;
using Kitwright.App.Commands;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Quilts;
using Microsoft.AspNetCore.Http.Features;

namespace Kitwright.App.Api;

/// <summary>What a request brings: read whole, and never beyond a limit.</summary>
internal static class ApiBody
{
    /// <summary>Bytes of a quilt or plan document; each reader has its own, tighter limits.</summary>
    public const int MostBytes = 32 * 1024 * 1024;

    public static async Task<Checked<byte[]>> Read(HttpRequest request, int most, CancellationToken cancel)
    {
        var held = new MemoryStream();
        var buffer = new byte[81_920];
        int count;
        while ((count = await request.Body.ReadAsync(buffer, cancel)) > 0)
        {
            held.Write(buffer, 0, count);
            if (held.Length > most)
            {
                return Checked<byte[]>.Failed(Finding.Of("api.too-large", "body", ("megabytes", most / 1024 / 1024)));
            }
        }

        return Checked<byte[]>.Of(held.ToArray());
    }

    /// <summary>The parts of a form by name, files or plain; a body that is no form is a finding.</summary>
    /// <param name="most">Bytes of all parts together.</param>
    public static async Task<Checked<Dictionary<string, byte[]>>> Form(HttpRequest request, int most, CancellationToken cancel)
    {
        try
        {
            var form = await request.ReadFormAsync(new FormOptions { MultipartBodyLengthLimit = most, ValueLengthLimit = most, KeyLengthLimit = 100 }, cancel);
            var parts = new Dictionary<string, byte[]>(StringComparer.Ordinal);
            foreach (var (name, value) in form)
            {
                parts[name] = Encoding.UTF8.GetBytes(value.ToString());
            }

            foreach (var file in form.Files)
            {
                using var held = new MemoryStream();
                await file.CopyToAsync(held, cancel);
                parts[file.Name] = held.ToArray();
            }

            return Checked<Dictionary<string, byte[]>>.Of(parts);
        }
        catch (Exception e) when (e is InvalidDataException or IOException and not Microsoft.AspNetCore.Http.BadHttpRequestException)
        {
            return Checked<Dictionary<string, byte[]>>.Failed(Finding.Of("api.form", "body", ("megabytes", most / 1024 / 1024)));
        }
    }

    /// <summary>The quilt file that a request holds.</summary>
    public static async Task<Checked<Quilt>> Quilt(HttpRequest request, CancellationToken cancel)
    {
        var bytes = await Read(request, MostBytes, cancel);
        return bytes.Value is null ? Checked<Quilt>.Failed(bytes.Findings) : QuiltFile.Read(Inputs.Text(bytes.Value));
    }

    /// <summary>The shop's quilt of that name in addresses.</summary>
    public static Checked<Quilt> Quilt(string slug, IWorkbench workbench) =>
        workbench.Quilts.FirstOrDefault(q => q.Slug == slug)?.Quilt is { } quilt
            ? Checked<Quilt>.Of(quilt)
            : Checked<Quilt>.Failed(Finding.Of("api.no-quilt", $"quilts/{slug}", ("slug", slug)));
}
