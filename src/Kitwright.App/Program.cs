using Kitwright.App.Commands;

return await CommandLine.RunAsync(args, Console.Out, Console.Error);
