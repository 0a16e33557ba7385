namespace Kitwright.Words;

/// <summary>Whose words of the trade are said: batting or wadding, selvage or selvedge, muslin or calico.</summary>
public enum TradeWords
{
    American,
    British,
}
