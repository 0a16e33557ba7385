using System.Numerics;
using CsCheck;
using Xunit;

namespace Kitwright.Tests;

/// <summary>What every value type owes its users, in one call a type.</summary>
public static class Contract
{
    /// <summary>Equality: reflexive, symmetric, agrees with the hash, with == where there is one, and with object.Equals.</summary>
    public static void Equality<T>(Gen<T> gen, Func<T, T> rebuilt)
        where T : struct, IEquatable<T>
    {
        Gen.Select(gen, gen)
            .Sample(
                (x, y) =>
                {
                    var again = rebuilt(x);
                    Assert.True(x.Equals(again) && again.Equals(x));
                    Assert.Equal(x.GetHashCode(), again.GetHashCode());
                    Assert.True(x.Equals((object)again));
                    Assert.Equal(x.Equals(y), y.Equals(x));
                    Assert.False(x.Equals(null));
                    Assert.False(x.Equals(new object()));
                }
            );
        Assert.Equal(default(T), rebuilt(default));
        Assert.Equal(default(T).GetHashCode(), rebuilt(default).GetHashCode());
    }

    /// <summary>Order: total, transitive, agrees with equality and with the operators.</summary>
    public static void Order<T>(Gen<T> gen)
        where T : struct, IEquatable<T>, IComparable<T>, IComparisonOperators<T, T, bool>
    {
        Gen.Select(gen, gen, gen)
            .Sample(
                (x, y, z) =>
                {
                    var order = Math.Sign(x.CompareTo(y));
                    Assert.Equal(-order, Math.Sign(y.CompareTo(x)));
                    Assert.Equal(0, x.CompareTo(x));
                    Assert.Equal(order == 0, x.Equals(y));
                    Assert.Equal(order == 0, x == y);
                    Assert.Equal(order != 0, x != y);
                    Assert.Equal(order < 0, x < y);
                    Assert.Equal(order > 0, x > y);
                    Assert.Equal(order <= 0, x <= y);
                    Assert.Equal(order >= 0, x >= y);
                    if (x <= y && y <= z)
                    {
                        Assert.True(x <= z);
                    }
                }
            );
    }

    /// <summary>Addition: a commutative group.</summary>
    public static void Addition<T>(Gen<T> gen, Func<T, T, T> add, Func<T, T> negate)
        where T : struct
    {
        Gen.Select(gen, gen, gen)
            .Sample(
                (x, y, z) =>
                {
                    Assert.Equal(add(x, y), add(y, x));
                    Assert.Equal(add(add(x, y), z), add(x, add(y, z)));
                    Assert.Equal(x, add(x, default));
                    Assert.Equal(default, add(x, negate(x)));
                }
            );
    }
}
