namespace Clampwise.Terminal.Tests;

public class ColumnsTests
{
    // Widths by Unicode Standard Annex 11, East Asian Width; marks that are added to a letter take none.
    [Theory]
    [InlineData("Lantern Row", 11)]
    [InlineData("♯♭●│─", 5)]
    [InlineData("e\u0301t", 2)]
    [InlineData("\u5f26\u697d", 4)]
    [InlineData("\U0001f3b8", 2)]
    public void A_text_takes_its_columns(string text, int columns) => Assert.Equal(columns, Columns.Of(text));

    [Theory]
    [InlineData("abc", 2, "ab")]
    [InlineData("abc", 9, "abc")]
    [InlineData("abc", -1, "")]
    [InlineData("e\u0301te\u0301", 1, "e\u0301")]
    [InlineData("\u5f26\u697d", 3, "\u5f26")]
    [InlineData("a\U0001f3b8b", 2, "a")]
    public void What_is_cut_is_cut_between_whole_signs(string text, int columns, string taken) => Assert.Equal(taken, Columns.Take(text, columns));
}
