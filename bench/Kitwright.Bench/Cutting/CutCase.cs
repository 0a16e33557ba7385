using Kitwright.Cutting;
using Kitwright.Measure;

namespace Kitwright.Bench.Cutting;

/// <summary>One instance to be cut, with what is known of it elsewhere. Heights are sums of strip heights.</summary>
/// <param name="Group">Cases that are summed up together.</param>
/// <param name="Unit">Lengths of the instance are printed in this.</param>
/// <param name="BestKnown">The least height that the file lists.</param>
/// <param name="Peer">The height of the public solver that the file lists.</param>
/// <param name="ProvedInFile">Whether the file lists the best known height as least.</param>
/// <param name="Quilt">The quilt that the cloth belongs to, or null.</param>
/// <param name="IsDemo">Whether that quilt is one of the demo shop's.</param>
internal sealed record CutCase(
    string Set,
    string Group,
    string Name,
    ClothProblem Problem,
    Length Unit,
    Length? BestKnown = null,
    Length? Peer = null,
    bool ProvedInFile = false,
    string? Quilt = null,
    bool IsDemo = false
);
