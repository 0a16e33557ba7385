using Kitwright.Shop.Revisions;
using Kitwright.Words;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace Kitwright.Shop.Tests.Revisions;

public sealed class ProjectChainsTest
{
    private static CancellationToken Cancel => OpenedShop.Cancel;

    private static Message Change(string text) => Message.Plain(text);

    private static async Task<ProjectState> Begin(OpenedShop shop, string name = "Low tide stars") =>
        (await shop.Store.Projects.Begin(Guid.NewGuid(), name, "one", Change("Begun"), "Wren", Cancel)).Value!;

    private static async Task<Kept> Keep(OpenedShop shop, ProjectState state, Guid on, string json)
    {
        var kept = await shop.Store.Projects.Keep(state.Project.Id, new(Guid.NewGuid(), on, Change(json), json, "Wren"), Cancel);
        Assert.Empty(kept.Findings);
        return kept.Value!;
    }

    [Fact]
    public async Task A_project_is_found_by_its_address_and_listed()
    {
        using var shop = new OpenedShop();
        var first = await Begin(shop);
        var second = await Begin(shop);
        Assert.Equal(("low-tide-stars", "low-tide-stars-2"), (first.Project.Slug, second.Project.Slug));
        Assert.Equal(first.Current.Id, (await shop.Store.Projects.Find("low-tide-stars", Cancel))!.Current.Id);
        Assert.Equal(2, (await shop.Store.Projects.All(Cancel)).Length);
        Assert.Null(await shop.Store.Projects.Find("high-tide", Cancel));
    }

    [Fact]
    public async Task An_edit_on_the_current_revision_becomes_current()
    {
        using var shop = new OpenedShop();
        var state = await Begin(shop);
        var kept = await Keep(shop, state, state.Current.Id, "two");
        shop.Reopen();
        Assert.False(kept.Beside);
        var current = (await shop.Store.Projects.Find(state.Project.Slug, Cancel))!.Current;
        Assert.Equal(("two", 2, state.Current.Id), (current.Json, current.Number, current.Base));
        Assert.Equal(Change("two"), current.Change);
    }

    [Fact]
    public async Task Of_two_tabs_on_one_base_both_edits_are_kept()
    {
        using var shop = new OpenedShop();
        var state = await Begin(shop);
        var first = await Keep(shop, state, state.Current.Id, "first tab");
        var second = await Keep(shop, state, state.Current.Id, "second tab");
        Assert.True(second.Beside);
        Assert.Equal(first.Revision.Id, second.Current.Id);
        Assert.Equal(["one", "first tab", "second tab"], (await shop.Store.Projects.Chain(state.Project.Id, Cancel)).Select(r => r.Json));
        var restored = (await shop.Store.Projects.Restore(state.Project.Id, Guid.NewGuid(), second.Revision.Id, "Wren", Cancel)).Value!;
        Assert.Equal(("second tab", first.Revision.Id), (restored.Current.Json, restored.Current.Base));
    }

    [Fact]
    public async Task An_edit_that_is_sent_twice_is_kept_once()
    {
        using var shop = new OpenedShop();
        var state = await Begin(shop);
        var edit = new Edit(Guid.NewGuid(), state.Current.Id, Change("two"), "two", "Wren");
        await shop.Store.Projects.Keep(state.Project.Id, edit, Cancel);
        await Keep(shop, state, edit.Id, "three");
        var again = (await shop.Store.Projects.Keep(state.Project.Id, edit, Cancel)).Value!;
        Assert.Equal((false, "three"), (again.Beside, again.Current.Json));
        Assert.Equal(3, (await shop.Store.Projects.Chain(state.Project.Id, Cancel)).Length);
        var other = await shop.Store.Projects.Keep(state.Project.Id, edit with { Json = "else" }, Cancel);
        Assert.Equal("revision.other", Assert.Single(other.Findings).Rule);
    }

    [Fact]
    public async Task Undo_is_a_new_revision_and_goes_back_one_change_at_a_time()
    {
        using var shop = new OpenedShop();
        var state = await Begin(shop);
        var two = await Keep(shop, state, state.Current.Id, "two");
        var three = await Keep(shop, state, two.Revision.Id, "three");
        var id = Guid.NewGuid();
        var once = (await shop.Store.Projects.Undo(state.Project.Id, id, three.Revision.Id, "Wren", Cancel)).Value!;
        var replay = (await shop.Store.Projects.Undo(state.Project.Id, id, three.Revision.Id, "Wren", Cancel)).Value!;
        var twice = (await shop.Store.Projects.Undo(state.Project.Id, Guid.NewGuid(), once.Current.Id, "Wren", Cancel)).Value!;
        Assert.Equal(("two", "two", "one"), (once.Current.Json, replay.Current.Json, twice.Current.Json));
        Assert.Equal("Undone: three", Catalog.English.Say(once.Current.Change));
        Assert.Equal("Undone: two", Catalog.English.Say(twice.Current.Change));
        Assert.Equal(5, (await shop.Store.Projects.Chain(state.Project.Id, Cancel)).Length);
        var nothing = await shop.Store.Projects.Undo(state.Project.Id, Guid.NewGuid(), twice.Current.Id, "Wren", Cancel);
        Assert.Equal("revision.nothing-before", Assert.Single(nothing.Findings).Rule);
    }

    [Fact]
    public async Task An_undo_after_somebody_else_moved_on_is_refused()
    {
        using var shop = new OpenedShop();
        var state = await Begin(shop);
        var two = await Keep(shop, state, state.Current.Id, "two");
        await Keep(shop, state, two.Revision.Id, "three");
        var undo = await shop.Store.Projects.Undo(state.Project.Id, Guid.NewGuid(), two.Revision.Id, "Wren", Cancel);
        Assert.Equal("revision.moved-on", Assert.Single(undo.Findings).Rule);
    }

    [Fact]
    public async Task A_base_of_another_project_is_refused()
    {
        using var shop = new OpenedShop();
        var one = await Begin(shop);
        var two = await Begin(shop);
        var kept = await shop.Store.Projects.Keep(one.Project.Id, new(Guid.NewGuid(), two.Current.Id, Change("x"), "x", "Wren"), Cancel);
        Assert.Equal("revision.no-base", Assert.Single(kept.Findings).Rule);
        var lost = await shop.Store.Projects.Keep(Guid.NewGuid(), new(Guid.NewGuid(), one.Current.Id, Change("x"), "x", "Wren"), Cancel);
        Assert.Equal("revision.no-project", Assert.Single(lost.Findings).Rule);
    }

    [Theory]
    [InlineData("UPDATE Revisions SET Json = 'x'")]
    [InlineData("DELETE FROM Revisions")]
    public async Task The_database_itself_keeps_revisions_as_they_were_written(string sql)
    {
        using var shop = new OpenedShop();
        await Begin(shop);
        await using var context = shop.Store.NewContext();
        await Assert.ThrowsAsync<SqliteException>(() => context.Database.ExecuteSqlRawAsync(sql, Cancel));
    }

    [Theory]
    [InlineData("Low Tide", "low-tide")]
    [InlineData("  Été -- 2!", "t-2")]
    [InlineData("…", "quilt")]
    public void A_slug_holds_letters_digits_and_single_hyphens(string name, string slug) => Assert.Equal(slug, Slug.Of(name));
}
