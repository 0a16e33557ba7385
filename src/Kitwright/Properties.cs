using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Kitwright.Tests")]
