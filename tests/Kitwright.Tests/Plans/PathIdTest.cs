using CsCheck;
using Kitwright.Plans;
using Xunit;

namespace Kitwright.Tests.Plans;

public sealed class PathIdTest
{
    private static readonly Gen<PathId> Ids = Gen.Select(Gen.Const("abc"), Gen.Int[0, 3], (_, n) => new PathId(n == 0 ? null : $"piece/A{n}"));

    [Fact]
    public void Equality_is_ordinal()
    {
        Contract.Equality(Ids, id => new PathId(id.Path is null ? "" : new string(id.Path)));
        Assert.NotEqual(new PathId("piece/a1"), new PathId("piece/A1"));
    }

    [Fact]
    public void Default_is_the_empty_path()
    {
        Assert.Equal(new PathId(""), default);
        Assert.Equal("", default(PathId).Value);
        Assert.Equal("", default(PathId).ToString());
    }

    [Fact]
    public void Children_are_appended()
    {
        Assert.Equal("cloth/A/strip/3/cut/2", default(PathId).Child("cloth", "A").Child("strip", 3).Child("cut", 2).Value);
    }
}
