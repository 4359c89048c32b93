using System.Globalization;
using CsCheck;

namespace Clampwise.Theory.Tests;

public class VisibleTextTests
{
    [Theory]
    [InlineData("plain text, ♯ ♭ ● │", "plain text, ♯ ♭ ● │")]
    [InlineData("\u001b[31mred\u0007", @"\u001b[31mred\u0007")]
    [InlineData("\u009b2J", @"\u009b2J")]
    [InlineData("a\u202eb\u2066c\u2069", @"a\u202eb\u2066c\u2069")]
    [InlineData("a\u2028b\u2029c\u0085d\te", @"a\u2028b\u2029c\u0085d\u0009e")]
    [InlineData("\ufeffmark", @"\ufeffmark")]
    [InlineData("e\u0301 \u5f26 \U0001f3b8", "e\u0301 \u5f26 \U0001f3b8")]
    [InlineData("\U0001f469\u200d\U0001f3a4", "\U0001f469\u200d\U0001f3a4")]
    [InlineData("a\u200d\u200db\u200d", @"a\u200d\u200db\u200d")]
    [InlineData("\U000e0041", @"\udb40\udc41")]
    [InlineData("two\nlines\r\n", @"two\u000alines\u000d\u000a")]
    public void What_would_command_a_terminal_is_an_escape_and_all_else_stays(string text, string shown) => Assert.Equal(shown, VisibleText.Of(text));

    [Fact]
    public void A_lone_half_of_a_pair_is_an_escape() => Assert.Equal(@"a\ud800b\udc00", VisibleText.Of("a\ud800b\udc00"));

    [Fact]
    public void The_callers_own_line_ends_stay_and_a_carriage_return_alone_does_not() =>
        Assert.Equal("a\nb\r\nc" + @"\u000dd", VisibleText.Of("a\nb\r\nc\rd", keepsLineEnds: true));

    [Fact]
    public void Nothing_raw_is_left_and_what_is_clean_stays_the_same()
    {
        Gen.Char.Array[0, 12].Select(signs => new string(signs)).Holds(
            text =>
            {
                string shown = VisibleText.Of(text);
                Assert.Equal(shown, VisibleText.Of(shown));
                foreach (System.Text.Rune rune in shown.EnumerateRunes())
                {
                    Assert.True(rune.Value is 0x200c or 0x200d || System.Text.Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format
                        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate));
                }
            },
            5000);
    }
}
