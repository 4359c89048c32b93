using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Clampwise.Commands;

/// <summary>A command of the program: it has examples for its help, and says which of its options go together.</summary>
internal sealed class Verb : Command
{
    private readonly ImmutableArray<string> _examples;

    /// <param name="name">As it is typed.</param>
    /// <param name="words">What it does, one or two sentences.</param>
    /// <param name="examples">Command lines without the program's name, each ready to be typed.</param>
    public Verb(string name, string words, params string[] examples)
        : base(name, words) => _examples = [.. examples];

    /// <summary>Command lines that show it, without the program's name.</summary>
    public IReadOnlyList<string> Examples => _examples;

    /// <summary>Options that mean something only beside one of others, or beside a word for an argument; alone they are refused.</summary>
    public Verb Needs(Option one, params Symbol[] others)
    {
        Validators.Add(result =>
        {
            if (IsGiven(result, one) && !others.Any(other => IsGiven(result, other)))
            {
                result.AddError($"{one.Name} means something only with {Listed(others)}");
            }
        });
        return this;
    }

    /// <summary>An option whose number must lie in a range.</summary>
    public Verb Within(Option<int> one, int least, int most)
    {
        one.Validators.Add(result =>
        {
            if (result.Tokens is [var token] && int.TryParse(token.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int asked) && (asked < least || asked > most))
            {
                result.AddError($"{one.Name}: expected {least} to {most}, found {asked}");
            }
        });
        return this;
    }

    /// <summary>Options that a further one makes useless; beside it they are refused.</summary>
    public Verb Excludes(Option one, params Symbol[] others)
    {
        Validators.Add(result =>
        {
            if (IsGiven(result, one) && others.FirstOrDefault(other => IsGiven(result, other)) is { } useless)
            {
                result.AddError($"{one.Name} leaves no use for {(useless is Option ? useless.Name : $"the word for {useless.Name}")}: give one of the two");
            }
        });
        return this;
    }

    /// <summary>Puts the examples and the exit codes at the end of a command's help, and of the help of all that stand under it.</summary>
    public static void ExplainHelp(RootCommand root)
    {
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new WithExamples((HelpAction)help.Action!);
    }

    /// <summary>True if it stands on the command line, rather than by its default.</summary>
    internal static bool IsGiven(SymbolResult result, Symbol symbol) => symbol switch
    {
        Option option => result.GetResult(option) is { Implicit: false },
        Argument argument => result.GetResult(argument) is { Tokens.Count: > 0 },
        _ => false,
    };

    private static string Listed(Symbol[] symbols) => string.Join(" or ", symbols.Select(symbol => symbol is Option ? symbol.Name : $"a word for {symbol.Name}"));

    private sealed class WithExamples(HelpAction usual) : SynchronousCommandLineAction
    {
        // Help is given whatever else is missing.
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            int code = usual.Invoke(parseResult);
            TextWriter to = parseResult.InvocationConfiguration.Output;
            if (parseResult.CommandResult.Command is Verb { Examples: { Count: > 0 } examples })
            {
                to.WriteLine("Examples:");
                foreach (string example in examples)
                {
                    to.WriteLine($"  clampwise {example}");
                }

                to.WriteLine();
            }

            to.WriteLine("Exit codes: 0 good, 1 trouble outside the input, 2 bad input.");
            return code;
        }
    }
}
