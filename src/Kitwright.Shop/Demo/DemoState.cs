namespace Kitwright.Shop.Demo;

/// <summary>What has become of the demo shop.</summary>
public enum DemoState
{
    /// <summary>Never put in.</summary>
    Absent,
    Present,

    /// <summary>Being taken out: the one time at which entries and revisions may go.</summary>
    Emptying,

    /// <summary>Taken out; it does not come back by itself.</summary>
    Emptied,
}
