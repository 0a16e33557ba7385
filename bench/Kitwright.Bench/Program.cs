using BenchmarkDotNet.Running;
using Kitwright.Bench.Cutting;
using Kitwright.Bench.Sewing;
using Kitwright.Bench.Shop;
using Kitwright.Bench.Stash;

if (args is ["cutting", .. var rest])
{
    return CuttingBench.Run(rest);
}

if (args is ["stash", .. var sheets])
{
    return StashBench.Run(sheets);
}

if (args is ["shop"])
{
    return await ShopBench.Run();
}

if (args is ["sewing", ..])
{
    return SewingBench.Run();
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
