using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.Findings;
using Kitwright.WorkTimes;

namespace Kitwright.App.Commands;

/// <summary>The options that say who sews, shared by the verbs that tell times or draw rulers.</summary>
internal sealed class SewistOptions
{
    private readonly Option<string?> times = new("--times") { Description = Inputs.Say("command.times") };
    private readonly Option<string?> personal = new("--personal") { Description = Inputs.Say("command.personal") };
    private readonly Option<string?> fatigue = new("--fatigue") { Description = Inputs.Say("command.fatigue") };
    private readonly Option<bool> leftHanded = new("--left-handed") { Description = Inputs.Say("command.left-handed") };

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { times, personal, fatigue, leftHanded })
        {
            command.Add(option);
        }
    }

    public (Sewist Sewist, ImmutableArray<Finding> Findings) Read(ParseResult parsed) =>
        Sewist.Read(parsed.GetValue(times), parsed.GetValue(personal), parsed.GetValue(fatigue), parsed.GetValue(leftHanded));
}
