namespace Kitwright.Plans;

/// <summary>Where a one-way or two-way print stands upright.</summary>
public enum PrintSetting
{
    /// <summary>In the finished quilt, however its blocks are turned.</summary>
    InTheQuilt,

    /// <summary>In each block as it is drawn: a block that is turned turns its prints.</summary>
    WithTheBlock,
}
