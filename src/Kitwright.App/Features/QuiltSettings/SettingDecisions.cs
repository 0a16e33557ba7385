using System.Collections.Immutable;
using Kitwright.App.Features.Deciding;
using Kitwright.Measure;
using Kitwright.Quilts;
using Kitwright.Settings;
using Kitwright.Sizes;

namespace Kitwright.App.Features.QuiltSettings;

/// <summary>How the blocks are laid, as decisions: each is a plain question with a few answers.</summary>
public static class SettingDecisions
{
    private static readonly Length UsualSash = Length.Inches(1, 1, 2);

    public static ImmutableArray<Decision> Of(Quilt quilt) =>
        [
            // On point, sashing comes out with straight seams where cornerstones end it at the edge.
            Question("sashed", Sashing(quilt), quilt.Setting.Kind == SettingKind.OnPoint ? ["edge", "posts"] : ["edge", "between", "round", "posts"]),
            Question("laid", Laid(quilt), "straight", "point"),
            Question("alternate", Alternation(quilt), "alike", "plain"),
            Question("classic", Classic(quilt), [.. Enum.GetValues<ClassicSetting>().Select(NameOf)]),
            Question("lined", Lined(quilt), "columns", "rows", "plain", "drop", "level"),
            Question("ringed", answer => answer == "rings" ? SettingChanges.Ringed(quilt) : null, "rings"),
            Question("framed", answer => answer == "more" ? BorderChanges.Added(quilt) : null, "more"),
            .. BorderDecisions.Of(quilt),
            Question("size", text => SizeChoice.Parse(text) is { } size ? Resizing.Of(quilt, size) : null),
            Question("turns", text => RepeatText.Parse(text) is { } turns ? SettingChanges.Turned(quilt, turns) : null),
        ];

    public static string NameOf(ClassicSetting setting) =>
        System.Text.Json.JsonNamingPolicy.KebabCaseLower.ConvertName(setting.ToString());

    private static Decision Question(string name, Func<string, Quilt?> change, params ImmutableArray<string> answers) =>
        new(name, name, 0, "", [.. answers.Select(answer => new Choice(answer, answer))], change);

    private static Func<string, Quilt?> Sashing(Quilt quilt)
    {
        var width = quilt.Setting.Sashing?.Width ?? UsualSash;
        return answer =>
            answer switch
            {
                "edge" => SettingChanges.EdgeToEdge(quilt),
                "between" => SettingChanges.Sashed(quilt, width, posts: false, outer: false),
                "round" => SettingChanges.Sashed(quilt, width, posts: false, outer: true),
                "posts" => SettingChanges.Sashed(quilt, width, posts: true, outer: true),
                _ => null,
            };
    }

    private static Func<string, Quilt?> Laid(Quilt quilt) =>
        answer =>
            answer switch
            {
                "straight" => SettingChanges.Straight(quilt),
                "point" => SettingChanges.OnPoint(quilt),
                _ => null,
            };

    private static Func<string, Quilt?> Alternation(Quilt quilt) =>
        answer =>
            answer switch
            {
                "alike" => SettingChanges.AllAlike(quilt),
                "plain" => SettingChanges.AlternatingWithPlain(quilt),
                _ when quilt.Blocks.Any(block => block.Id == answer) => SettingChanges.Alternating(quilt, quilt.Setting.Cells[0][0].Block, answer),
                _ => null,
            };

    private static Func<string, Quilt?> Lined(Quilt quilt)
    {
        var width = quilt.Setting.Sashing?.Width ?? UsualSash;
        return answer =>
            answer switch
            {
                "columns" => SettingChanges.Lined(quilt, width, SashLines.Columns),
                "rows" => SettingChanges.Lined(quilt, width, SashLines.Rows),
                // A plain column as wide as the blocks.
                "plain" => SettingChanges.Lined(quilt, Resizing.FirstBlock(quilt).Width, SashLines.Columns),
                "drop" => SettingChanges.HalfDropped(quilt),
                "level" when quilt.Setting.HalfDrop is not null || quilt.Setting.Sashing is { Lines: not SashLines.Both } => SettingChanges.Level(quilt),
                _ => null,
            };
    }

    private static Func<string, Quilt?> Classic(Quilt quilt) =>
        answer =>
            Enum.GetValues<ClassicSetting>().Where(setting => NameOf(setting) == answer).Select(setting => SettingChanges.Classic(quilt, setting)).FirstOrDefault();
}
