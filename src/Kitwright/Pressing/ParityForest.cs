namespace Kitwright.Pressing;

/// <summary>
/// Disjoint sets whose members also know whether they are equal or unequal to their root: answers whether a system of
/// equations x = y and x ≠ y over two values has a solution, as it grows.
/// </summary>
/// <remarks>
/// R. E. Tarjan, "Efficiency of a good but not linear set union algorithm", Journal of the ACM 22(2), 1975, with the
/// parity kept along the path (from memory).
/// </remarks>
public sealed class ParityForest
{
    private readonly int[] parents;
    private readonly bool[] differs;
    private readonly int[] sizes;

    public ParityForest(int count)
    {
        parents = [.. Enumerable.Range(0, count)];
        differs = new bool[count];
        sizes = [.. Enumerable.Repeat(1, count)];
    }

    /// <summary>The root of a member's set, and whether the member differs from it.</summary>
    public (int Root, bool Differs) Find(int member)
    {
        var root = member;
        var parity = false;
        while (parents[root] != root)
        {
            parity ^= differs[root];
            root = parents[root];
        }

        var whole = parity;
        while (parents[member] != root && member != root)
        {
            var (next, own) = (parents[member], differs[member]);
            parents[member] = root;
            differs[member] = parity;
            parity ^= own;
            member = next;
        }

        return (root, whole);
    }

    /// <summary>Adds an equation. False, and nothing changed, where it contradicts those before.</summary>
    public bool Join(int one, int other, bool equal)
    {
        var (p, pDiffers) = Find(one);
        var (q, qDiffers) = Find(other);
        if (p == q)
        {
            return (pDiffers == qDiffers) == equal;
        }

        if (sizes[p] < sizes[q])
        {
            (p, q) = (q, p);
        }

        parents[q] = p;
        differs[q] = pDiffers ^ qDiffers ^ !equal;
        sizes[p] += sizes[q];
        return true;
    }
}
