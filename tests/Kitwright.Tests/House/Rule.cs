using Xunit;

namespace Kitwright.Tests.House;

/// <summary>A rule that holds for all of something, and otherwise lists every breach.</summary>
internal static class Rule
{
    public static void Holds(IEnumerable<string> breaches)
    {
        var all = breaches.ToList();
        if (all.Count > 0)
        {
            Assert.Fail(string.Join('\n', all));
        }
    }
}
