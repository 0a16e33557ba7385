namespace Kitwright.App.Features.Desk;

/// <summary>The stops of the job, in its order.</summary>
public enum Stop
{
    Quilt,
    Pull,
    Cut,
    Sew,
    Kits,
    Pattern,
}
