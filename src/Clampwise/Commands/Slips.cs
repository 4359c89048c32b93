using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Clampwise.Commands;

/// <summary>What is wrong with a command line, in one line of our own words.</summary>
internal static class Slips
{
    /// <summary>The first thing that is wrong; null if the line can be carried out.</summary>
    public static string? First(ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        return UnknownCommand(parsed, command)
            ?? UnknownOption(parsed, command)
            ?? (parsed.UnmatchedTokens is [var extra, ..] ? Unmatched(parsed, extra, command) : null)
            ?? Options(parsed).Select(OfOption).FirstOrDefault(words => words is not null)
            ?? Useless(parsed, command)
            ?? (IsAsked(parsed) ? null : Missing(parsed, command) ?? (parsed.Errors is [var error, ..] ? error.Message.TrimEnd('.').ReplaceLineEndings(" ") : null));
    }

    // Help and version are shown whatever else is missing.
    private static bool IsAsked(ParseResult parsed) => parsed.Action is { ClearsParseErrors: true };

    // Before its options: they may well be those of the command that was meant.
    private static string? UnknownCommand(ParseResult parsed, Command command) =>
        command.Subcommands.Count > 0 && parsed.UnmatchedTokens.FirstOrDefault(word => !IsLikeAnOption(word)) is { } unknown ? Unmatched(parsed, unknown, command) : null;

    // What begins with a hyphen and a letter was meant as an option, and must not pass for data.
    private static string? UnknownOption(ParseResult parsed, Command command)
    {
        string? unknown = parsed.Tokens.FirstOrDefault(token => token.Type == TokenType.Argument && IsLikeAnOption(token.Value))?.Value.Split('=')[0];
        return unknown is null ? null : $"there is no option {unknown} here{Nearest.Hint(unknown, OptionsOf(command).Select(option => option.Name))}";
    }

    private static bool IsLikeAnOption(string word) => word.StartsWith("--", StringComparison.Ordinal) || (word.Length > 1 && word[0] == '-' && char.IsAsciiLetter(word[1]));

    private static string Unmatched(ParseResult parsed, string extra, Command command) =>
        command.Subcommands.Count > 0
            ? $"there is no command '{extra}'{Nearest.Hint(extra, command.Subcommands.Select(sub => sub.Name).Append("--help"))}"
            : $"'{extra}' is a word too many: {parsed.CommandResult.Command.Name} takes {Taken(command)}";

    private static string? OfOption(OptionResult given)
    {
        Option option = given.Option;
        string found = string.Join(' ', given.Tokens.Select(token => token.Value));
        return given.IdentifierTokenCount > 1 && option.Arity.MaximumNumberOfValues <= 1 ? $"{option.Name} stands there {given.IdentifierTokenCount} times: give it once"
            : given.Tokens.Count < option.Arity.MinimumNumberOfValues ? $"{option.Name}: expected <{option.HelpName ?? option.Name.TrimStart('-')}> after it, found nothing"
            : given.Tokens.Count > 0 && !IsNumber(option.ValueType, found) ? $"{option.Name}: expected a {(IsWhole(option.ValueType) ? "whole " : "")}number, found '{found}'"
            : given.Errors.FirstOrDefault()?.Message;
    }

    // A comma groups nothing: 442,5 would be taken for ten times as much.
    private static bool IsNumber(Type type, string found) =>
        IsWhole(type) ? int.TryParse(found, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _)
        : (Nullable.GetUnderlyingType(type) ?? type) != typeof(double) || double.TryParse(found, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static bool IsWhole(Type type) => (Nullable.GetUnderlyingType(type) ?? type) == typeof(int);

    // An option that is read before the command, and that the command does nothing with.
    private static string? Useless(ParseResult parsed, Command command) =>
        Options(parsed).Select(given => given.Option).FirstOrDefault(option => !OptionsOf(command).Contains(option)) is { } useless
            ? $"{useless.Name} means nothing to {command.Name}"
            : null;

    private static string? Missing(ParseResult parsed, Command command)
    {
        if (command.Action is null && command.Subcommands.Count > 0)
        {
            return $"{command.Name}: expected one of {string.Join(", ", command.Subcommands.Select(sub => sub.Name))}, found nothing";
        }

        Argument? missing = command.Arguments.FirstOrDefault(argument => (parsed.GetResult(argument)?.Tokens.Count ?? 0) < argument.Arity.MinimumNumberOfValues);
        return missing is null ? null : $"{command.Name} takes {Taken(command)}: the {missing.Name} is missing";
    }

    private static string Taken(Command command) => command.Arguments.Count == 0
        ? "no words"
        : string.Join(' ', command.Arguments.Select(argument => argument.Arity.MinimumNumberOfValues == 0 ? $"[{argument.Name}]" : $"<{argument.Name}>"));

    private static IEnumerable<OptionResult> Options(ParseResult parsed)
    {
        for (SymbolResult? at = parsed.CommandResult; at is not null; at = at.Parent)
        {
            foreach (OptionResult given in ((CommandResult)at).Children.OfType<OptionResult>().Where(given => !given.Implicit))
            {
                yield return given;
            }
        }
    }

    /// <summary>The options that a command knows: its own, and those that hold for all that stands under a command.</summary>
    private static IEnumerable<Option> OptionsOf(Command command)
    {
        IEnumerable<Option> inherited = command.Parents.OfType<Command>().SelectMany(OptionsOf).Where(option => option.Recursive);
        return command.Options.Concat(inherited);
    }
}
