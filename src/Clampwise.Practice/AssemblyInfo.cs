using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Clampwise.Practice.Tests")]
