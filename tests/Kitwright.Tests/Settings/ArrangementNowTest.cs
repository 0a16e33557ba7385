using Kitwright.Quilts;
using Kitwright.Settings;
using Xunit;

namespace Kitwright.Tests.Settings;

public sealed class ArrangementNowTest
{
    private static readonly RepeatGroup Group = new(2, Looks.Of([Position.Identity], mirrored: false));

    /// <summary>Each arrangement is found again in a quilt that is laid in it, however the repeat is shifted or turned.</summary>
    [Fact]
    public void A_quilt_is_found_in_the_gallery_of_its_settings()
    {
        foreach (var arrangement in Arrangements.All(Group))
        {
            foreach (var element in Group.Elements)
            {
                var moved = Arrangement.Of(element.Apply([.. arrangement.Looks]), Group);
                var setting = new Setting(SettingKind.Straight, 5, 3, moved.CellsOf("block", Group.Looks), null);
                Assert.Equal(arrangement.Looks, Arrangements.Of(setting, Group)!.Looks);
            }
        }
    }

    [Fact]
    public void Other_repeats_and_several_blocks_are_in_none()
    {
        Assert.Null(Arrangements.Of(new(SettingKind.Straight, 6, 6, [[new("a", 0, false), new("a", 1, false), new("a", 2, false)]], null), Group));
        Assert.Null(Arrangements.Of(new(SettingKind.Straight, 6, 6, [[new("a", 0, false), new("b", 0, false)]], null), Group));
        Assert.Null(Arrangements.Of(new(SettingKind.Straight, 6, 6, [[new("a", 0, true)]], null), Group));
    }
}
