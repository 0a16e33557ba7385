namespace Kitwright.WorkTimes;

/// <summary>What hands do, so small that it can be timed with a watch.</summary>
public enum Operation
{
    /// <summary>Squares a strip off the cloth: ruler, cut, aside.</summary>
    CutStrip,

    /// <summary>Cuts one piece off a strip, or one length off a joined strip.</summary>
    SubCut,

    /// <summary>Cuts a sewn pair apart, or a seam allowance off beside a seam.</summary>
    CutApart,

    /// <summary>Takes up two parts, lays them right sides together and feeds them under the needle.</summary>
    LayPair,

    /// <summary>Sews ten inches of seam.</summary>
    SewTenInches,

    /// <summary>Begins a chain: thread, stack in order, first pair.</summary>
    StartChain,

    /// <summary>Presses one seam.</summary>
    Press,

    /// <summary>Matches and pins one place where seams meet.</summary>
    Pin,

    /// <summary>Squares up one unit on its four sides.</summary>
    Trim,
}
