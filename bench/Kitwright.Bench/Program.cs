using BenchmarkDotNet.Running;
using Kitwright.Bench.Cutting;

if (args is ["cutting", .. var rest])
{
    return CuttingBench.Run(rest);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
