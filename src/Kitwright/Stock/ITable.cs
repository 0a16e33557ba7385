using Kitwright.Findings;

namespace Kitwright.Stock;

/// <summary>A table that is read row by row, within <see cref="TableLimits"/>; never throws.</summary>
public interface ITable
{
    /// <summary>Why the reading stopped before the end; null where it did not.</summary>
    Finding? Fault { get; }

    /// <summary>The next row, or false at the end or after a fault.</summary>
    bool TryNext(out TableRow row);
}
