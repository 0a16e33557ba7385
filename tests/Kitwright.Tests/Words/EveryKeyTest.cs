using System.Text.Json;
using System.Text.RegularExpressions;
using Kitwright.Tests.House;
using Kitwright.Words;
using Xunit;

namespace Kitwright.Tests.Words;

/// <summary>The catalog against the sources: nothing said that has no words, no words that nobody says.</summary>
public sealed partial class EveryKeyTest
{
    [Fact]
    public void Every_key_stands_in_one_file_and_every_template_parses()
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(Repository.PathOf("src", "Kitwright", "Words"), "en.*.json"))
        {
            foreach (var (key, text) in JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(file), Strict)!)
            {
                var name = Path.GetFileName(file);
                Assert.True(seen.TryAdd(key, name), $"'{key}' stands in {name} and in {seen[key]}");
                Assert.Matches("^[a-z][a-z0-9-]*(\\.[a-z0-9-]+)*$", key);
                _ = Template.Parse(text);
            }
        }

        Assert.Equal(seen.Keys.Order(), Catalog.English.Keys.Order());
    }

    [Fact]
    public void No_slot_has_the_name_that_files_give_to_the_key() =>
        Assert.DoesNotContain(Catalog.English.Keys, key => Catalog.English[key].Slots().ContainsKey("say"));

    [Fact]
    public void Apostrophes_are_typographic() =>
        Rule.Holds(
            from file in Directory.EnumerateFiles(Repository.PathOf("src", "Kitwright", "Words"), "*.json")
            from entry in JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(file), Strict)!
            where entry.Value.Contains('\'')
            select $"{Path.GetFileName(file)}: '{entry.Key}' has a straight apostrophe: {entry.Value}"
        );

    [Fact]
    public void Every_message_that_is_said_has_words() =>
        Rule.Holds(
            from call in SourceText.Calls(Said())
            from key in call.Keys
            where !key.Contains('{') && !Catalog.English.Has(key)
            select $"{call.Place}: no words for '{key}'"
        );

    [Fact]
    public void Every_finding_has_a_reason_and_a_remedy() =>
        Rule.Holds(
            from call in SourceText.Calls(Found())
            from key in call.Keys
            from wanted in new[] { key, key + ".remedy" }
            where !key.Contains('{') && !Catalog.English.Has(wanted)
            select $"{call.Place}: no words for '{wanted}'"
        );

    [Fact]
    public void Every_message_brings_the_slots_that_its_words_ask_for() =>
        Rule.Holds(
            from call in SourceText.Calls(Said())
            where call.SlotNames is not null
            from key in call.Keys
            from template in call.Method.StartsWith("Finding", StringComparison.Ordinal) ? new[] { key, key + ".remedy" } : [key]
            where Catalog.English.Has(template)
            from slot in Catalog.English[template].Slots().Keys
            where !call.SlotNames!.Contains(slot)
            select $"{call.Place}: '{template}' asks for {{{slot}}}"
        );

    /// <summary>Any literal in the shape of a key whose first word is that of a file's keys must be one.</summary>
    [Fact]
    public void Every_literal_that_looks_like_a_key_is_one()
    {
        var areas = Catalog.English.Keys.Where(k => k.Contains('.')).Select(k => k.Split('.')[0]).ToHashSet();
        Rule.Holds(
            from file in SourceText.All
            from literal in SourceText.Literals(file.Text)
            where SourceText.IsKey(literal) && areas.Contains(literal.Split('.')[0])
            where !Catalog.English.Has(literal) && !FileNames.Contains(Path.GetExtension(literal))
            select $"{file.Path}: no words for '{literal}'"
        );
    }

    [Fact]
    public void Every_key_is_said_somewhere()
    {
        var literals = SourceText.All.SelectMany(file => SourceText.Literals(file.Text)).ToHashSet();
        // An interpolated key, or the first half of one that is put together.
        var patterns = literals
            .Where(l => l.Contains('.') && (l.Contains('{') || l.EndsWith('.')))
            .Select(l => new Regex("^" + Hole().Replace(Regex.Escape(l.Replace("{", "\0{")), "[a-z0-9-]+") + (l.EndsWith('.') ? "[a-z0-9-]+" : "") + "$"))
            .ToList();
        bool Said(string key) => literals.Contains(key) || patterns.Any(p => p.IsMatch(key));

        Rule.Holds(
            from key in Catalog.English.Keys
            // A finding says its remedy, and a list its numbered lines.
            let rule = Regex.Replace(key, @"\.(remedy|[0-9]+)$", "")
            where !Said(key) && !Said(rule)
            orderby key
            select $"nobody says '{key}'"
        );
    }

    private static readonly JsonSerializerOptions Strict = new() { AllowDuplicateProperties = false };

    private static readonly string[] FileNames = [".json", ".csv", ".pdf", ".svg", ".css", ".js", ".db", ".html", ".txt", ".cs", ".razor", ".v1"];

    [GeneratedRegex(@"\b(Message\.Of|Finding\.Of|Finding\.NoteOf|Say)\((?!string|Message )")]
    private static partial Regex Said();

    [GeneratedRegex(@"\b(Finding\.Of|Finding\.NoteOf|Fault|Note)\((?!string)")]
    private static partial Regex Found();

    [GeneratedRegex("\0\\\\\\{[^}]*\\}")]
    private static partial Regex Hole();
}
