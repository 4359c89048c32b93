using System.Collections.Concurrent;
using System.Globalization;
using CsCheck;
using Terminal.Gui.Input;

namespace Clampwise.Terminal.Tests;

/// <summary>
/// What the terminal sends, as characters. The forms are those of ECMA-48 (CSI, SS3, OSC), xterm control sequences (keys, mouse) and the
/// kitty keyboard protocol.
/// </summary>
[Collection(nameof(NotedContent))]
public class TerminalSequencesTests
{
    // A number of a key or a place: usual ones, those at the edges of what a character or an int can be, and any.
    private static readonly Gen<string> s_number = Gen.OneOf(
        Gen.Int[0, 60].Select(number => number.ToString(CultureInfo.InvariantCulture)),
        Gen.Int[57344, 57460].Select(number => number.ToString(CultureInfo.InvariantCulture)),
        OneOf("", "55296", "57343", "65535", "1114111", "1114112", "2147483647", "2147483648", "99999999999", "-1"));

    private static readonly Gen<string> s_parameters = s_number.Array[0, 4].SelectMany(
        numbers => OneOf(";", ":", ";;").Select(between => string.Join(between, numbers)));

    private static readonly Gen<string> s_sequence = Gen.OneOf(
        Gen.Select(OneOf("", "<", "?", ">", "=", "["), s_parameters, Gen.Char['@', '~'], (sign, parameters, final) => $"\e[{sign}{parameters}{final}"),
        Gen.Select(s_parameters, OneOf('~', 'u', 'A', 'H', 'P', 'Z'), (parameters, final) => $"\e[{parameters}{final}"),
        Gen.Select(s_number, s_number, s_number, OneOf('M', 'm'), (button, x, y, final) => $"\e[<{button};{x};{y}{final}"),
        Gen.Char['!', '~'].Select(final => $"\eO{final}"),
        Gen.Char['\0', '\u00ff'].Select(sign => $"\e{sign}"),
        Gen.Select(s_parameters, OneOf("\a", "\e\\", "\e", ""), (parameters, end) => $"\e]{parameters}{end}"),
        Gen.Char.Array[0, 8].Select(signs => new string(signs)));

    [Fact]
    public void Nothing_that_a_terminal_sends_ends_the_program() => s_sequence.Array[1, 12].Holds(sequences =>
    {
        List<Key> keys = KeysOf([.. sequences, "\e\\", "\e[6~"], out _);
        return keys.Count > 0 && keys[^1] == Key.PageDown;
    });

    // Menu, F13 to F20 (xterm); codes that are no character (kitty); a place that no int can hold (xterm, SGR mouse).
    [Theory]
    [InlineData("\e[29~")]
    [InlineData("\e[25~")]
    [InlineData("\e[34~")]
    [InlineData("\e[29;2~")]
    [InlineData("\e[1114112u")]
    [InlineData("\e[55296u")]
    [InlineData("\e[<0;99999999999;10M")]
    public void A_key_without_a_name_does_nothing(string sequence) => Assert.Equal([new Key('x')], KeysOf([sequence, "x"], out _));

    [Theory]
    [InlineData("\e[7~", "Home")]
    [InlineData("\e[8~", "End")]
    [InlineData("\e[1~", "Home")]
    [InlineData("\e[H", "Home")]
    public void Home_and_End_are_known_in_every_form(string sequence, string name) =>
        Assert.Equal([name, "x"], KeysOf([sequence, "x"], out _).Select(key => key.ToString()));

    [Fact]
    public void A_failure_of_the_program_at_a_key_is_seen()
    {
        foreach (string sequence in new[] { "x", "\e[A", "\e[7~", "\e[97u" })
        {
            _ = KeysOf([], out TerminalSequences failing);
            failing.KeyDown += (_, _) => throw new InvalidOperationException("made to fail");
            Assert.Throws<InvalidOperationException>(() => Feed(failing, sequence));
        }
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.OneOf([.. values.Select(Gen.Const)]);

    private static List<Key> KeysOf(string[] sequences, out TerminalSequences reader)
    {
        reader = new TerminalSequences(new ConcurrentQueue<char>(), null);
        var keys = new List<Key>();
        reader.KeyDown += (_, key) => keys.Add(key);
        foreach (string sequence in sequences)
        {
            Feed(reader, sequence);
        }

        return keys;
    }

    private static void Feed(TerminalSequences reader, string sequence)
    {
        foreach (char sign in sequence)
        {
            reader.InputQueue.Enqueue(sign);
        }

        reader.ProcessQueue();
    }
}
