namespace Kitwright.Plans;

/// <summary>Which ways round a print may lie; its up runs along the selvage. Common practice, no source.</summary>
public enum PrintDirection
{
    /// <summary>Any way round.</summary>
    Any,

    /// <summary>Upright or upside down, as stripes along the selvage.</summary>
    TwoWay,

    /// <summary>Upright only, as houses or letters.</summary>
    OneWay,
}
