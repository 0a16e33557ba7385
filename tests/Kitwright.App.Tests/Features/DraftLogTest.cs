using Kitwright.App.Features.BlockDrawing;

namespace Kitwright.App.Tests.Features;

public sealed class DraftLogTest
{
    private static string Folder() => Scratch.Folder();

    [Fact]
    public void Undo_and_redo_have_no_end_and_outlive_the_process()
    {
        var folder = Folder();
        var log = new DraftLog(folder);
        log.Open("a.b", () => "0");
        for (var i = 1; i <= 300; i++)
        {
            log.Edit("a.b", $"{i}");
        }

        // As after a crash: another process reads what this one wrote.
        var again = new DraftLog(folder);
        var state = again.Open("a.b", () => "never");
        Assert.Equal("300", state.Document);
        for (var i = 299; i >= 0; i--)
        {
            state = again.Undo("a.b");
            Assert.Equal($"{i}", state.Document);
        }

        Assert.False(state.CanUndo);
        Assert.Equal("0", again.Undo("a.b").Document);
        Assert.Equal("1", again.Redo("a.b").Document);
        Assert.Equal("new", again.Edit("a.b", "new").Document);
        Assert.False(new DraftLog(folder).Open("a.b", () => "never").CanRedo);
    }

    [Fact]
    public void A_line_that_a_crash_cut_off_is_left_out()
    {
        var folder = Folder();
        new DraftLog(folder).Open("a", () => "first");
        File.AppendAllText(Path.Combine(folder, "a.jsonl"), "{\"Do\":\"edit\",\"Docu");
        var log = new DraftLog(folder);
        Assert.Equal("first", log.Open("a", () => "never").Document);
        log.Edit("a", "second");
        Assert.Equal("second", new DraftLog(folder).Open("a", () => "never").Document);
    }

    [Fact]
    public void A_key_never_leaves_the_folder() => Assert.Throws<ArgumentException>(() => new DraftLog(Folder()).Open("../a", () => ""));
}
