using System.Text.RegularExpressions;

namespace Kitwright.Tests.Words;

/// <summary>One call in a source file that names a message: where, the method, and its arguments as written.</summary>
internal sealed record SourceCall(string Place, string Method, IReadOnlyList<string> Arguments)
{
    /// <summary>The keys that the first argument may be: one, or two where it chooses.</summary>
    public IEnumerable<string> Keys =>
        Arguments.Count == 0 ? [] : SourceText.Literals(Arguments[0]).Where(l => SourceText.IsKey(l) || Arguments[0] == $"\"{l}\"");

    /// <summary>The names of the slots, or null where some are passed on from elsewhere.</summary>
    public IReadOnlySet<string>? SlotNames
    {
        get
        {
            var names = new HashSet<string>(StringComparer.Ordinal);
            foreach (var argument in Arguments.Skip(Method.StartsWith("Finding", StringComparison.Ordinal) ? 2 : 1))
            {
                var name = Regex.Match(argument, "^\\(\\s*\"([^\"]+)\"\\s*,");
                if (!name.Success)
                {
                    return null;
                }

                names.Add(name.Groups[1].Value);
            }

            return names;
        }
    }
}

/// <summary>The project's own sources, C# and Razor, read as text.</summary>
internal static partial class SourceText
{
    private static readonly string[] Extensions = [".cs", ".razor"];

    public static IReadOnlyList<(string Path, string Text)> All { get; } =
        Directory
            .EnumerateFiles(Repository.PathOf("src"), "*", SearchOption.AllDirectories)
            .Where(path => Extensions.Contains(Path.GetExtension(path)))
            .Select(path => (Path: Path.GetRelativePath(Repository.PathOf(), path).Replace('\\', '/'), Full: path))
            .Where(file => !file.Path.Contains("/obj/", StringComparison.Ordinal) && !file.Path.Contains("/bin/", StringComparison.Ordinal))
            .OrderBy(file => file.Path, StringComparer.Ordinal)
            .Select(file => (file.Path, Comments().Replace(File.ReadAllText(file.Full), "")))
            .ToList();

    /// <summary>String literals, holes of interpolated ones included as written.</summary>
    public static IEnumerable<string> Literals(string text) => Literal().Matches(text).Select(m => m.Groups[1].Value);

    public static bool IsKey(string literal) => KeyShape().IsMatch(literal);

    public static IEnumerable<SourceCall> Calls(Regex method)
    {
        foreach (var (path, text) in All)
        {
            foreach (Match match in method.Matches(text))
            {
                var line = text[..match.Index].Count(c => c == '\n') + 1;
                yield return new($"{path}:{line}", match.Groups[1].Value, Arguments(text, match.Index + match.Length));
            }
        }
    }

    /// <summary>The arguments from just after the opening parenthesis, split at the commas of the outermost level.</summary>
    private static List<string> Arguments(string text, int start)
    {
        var arguments = new List<string>();
        var depth = 0;
        var from = start;
        for (var at = start; at < text.Length; at++)
        {
            switch (text[at])
            {
                case '"':
                    at += Literal().Match(text, at) is { Success: true } literal && literal.Index == at ? literal.Length - 1 : 0;
                    break;
                case '(' or '[' or '{':
                    depth++;
                    break;
                case ',' when depth == 0:
                    arguments.Add(text[from..at].Trim());
                    from = at + 1;
                    break;
                case ')' or ']' or '}' when --depth < 0:
                    var last = text[from..at].Trim();
                    return last.Length > 0 ? [.. arguments, last] : arguments;
            }
        }

        return arguments;
    }

    [GeneratedRegex(@"^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$")]
    private static partial Regex KeyShape();

    [GeneratedRegex("\"((?:[^\"\\\\\n]|\\\\.)*)\"")]
    private static partial Regex Literal();

    [GeneratedRegex(@"(?m)^[ \t]*//.*$|@\*[\s\S]*?\*@")]
    private static partial Regex Comments();
}
