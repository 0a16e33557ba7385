namespace Kitwright.Accuracy;

/// <summary>The normal distribution.</summary>
public static class Normal
{
    /// <summary>The share above z deviations.</summary>
    /// <remarks>Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17: error below 7.5e-8 (from memory).</remarks>
    public static double Above(double z)
    {
        if (z < 0)
        {
            return 1 - Above(-z);
        }

        var t = 1 / (1 + (0.2316419 * z));
        var tail = t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * tail;
    }

    /// <summary>Deviations above which lies a share, by bisection; shares between 0 and 1.</summary>
    public static double Beyond(double share)
    {
        double low = -8,
            high = 8;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Above(middle) > share ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
