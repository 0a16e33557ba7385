using System.Collections.Immutable;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>What each way of making a quilt's units comes to, as text for the terminal.</summary>
internal static class TechniqueText
{
    public static void Write(TextWriter output, ImmutableArray<UnitTechniques> units, Catalog words)
    {
        foreach (var unit in units)
        {
            output.WriteLine();
            output.WriteLine(SentenceStart.Of(words.Say("technique.title", ("unit", Message.Of($"technique.{unit.Kind.Name}")), ("count", unit.Units))));
            foreach (var way in unit.Ways)
            {
                output.WriteLine(
                    words.Say(
                        "technique.line",
                        ("mark", way.Technique.Name == unit.Chosen ? "*" : " "),
                        ("way", Message.Of($"technique.{unit.Kind.Name}.{way.Technique.Name}")),
                        ("choose", $"{unit.Kind.Name}={way.Technique.Name}"),
                        ("cloth", way.Cloth),
                        ("cuts", way.Cuts),
                        ("seams", way.Seams),
                        ("trims", way.Trims),
                        ("accuracy", Message.Of($"technique.accuracy.{way.Technique.Accuracy.ToString().ToLowerInvariant()}"))
                    )
                );
            }
        }
    }
}
