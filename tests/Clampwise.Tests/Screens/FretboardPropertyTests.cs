using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Fretboard.Tests;
using CsCheck;

namespace Clampwise.Tests.Screens;

/// <summary>Any setup of 4 to 8 strings, any two frettings in it, any cursor, any style, any size.</summary>
public class FretboardPropertyTests
{
    private const int RoomForAll = 100;
    private const int RowsForAll = 60;

    private static readonly Gen<FretboardPicture> s_pictures = Gens.Setups.SelectMany(setup =>
        Gen.Select(Gens.VoicingsIn(setup), Gens.VoicingsIn(setup), Gen.Bool, Gen.Bool, Gen.Int[1, setup.StringCount], Gen.Int[0, Fret.Last]).Select((first, second, hasOther, hasCursor, number, fret) =>
            new FretboardPicture(setup, first.Fretting)
            {
                Other = hasOther ? second.Fretting : null,
                Marked = hasOther ? VoicingComparison.Of(first, second).Moved : default,
                Cursor = hasCursor ? (StringNumber.Of(number), Fret.Of(fret)) : null,
            }));

    private static readonly Gen<FretboardStyle> s_styles = Gen.Select(Gen.Bool, Gen.Bool, Gen.Enum<FretCount>()).Select((upright, left, count) => new FretboardStyle(upright, left, count));

    [Fact]
    public void No_size_is_refused_and_no_line_is_wider_than_asked() =>
        Gen.Select(s_pictures, s_styles, Gen.Int[1, 220], Gen.Int[0, 70], Gen.Enum<DotSign>(), Gen.Int[0, 24]).Holds((picture, style, width, height, sign, frets) =>
        {
            FretboardPicture signed = DotSigns.On(picture with { Frets = frets == 0 ? null : frets }, sign, Hand.Medium);
            foreach (GlyphSet glyphs in (GlyphSet[])[GlyphSet.Unicode, GlyphSet.Ascii])
            {
                IReadOnlyList<MarkedLine> lines = FretboardDrawing.Draw(signed, glyphs, width, height, style);
                Assert.All(lines, line => Assert.True(line.Width <= width, $"{line.Width} of {width}: {line}"));
                Assert.True(lines.Count <= Math.Max(height, picture.Setup.StringCount + 2), $"{lines.Count} of {height}");
            }
        }, count: 500);

    [Fact]
    public void With_room_for_all_every_finger_and_clamp_is_seen_on_its_string() =>
        Gen.Select(s_pictures, s_styles, Gen.Int[RoomForAll, 220], Gen.Int[9, 70]).Holds((picture, style, width, height) =>
        {
            IReadOnlyList<MarkedLine> lines = FretboardDrawing.Draw(picture with { Cursor = null }, GlyphSet.Ascii, width, height, style with { IsUpright = false });
            foreach (StringNumber number in picture.Setup.Strings)
            {
                string row = lines.Single(line => line.ToString().StartsWith($"{number} ", StringComparison.Ordinal)).ToString()[LyingPlan.LabelWidth..];
                Assert.Equal(picture.StopOf(number)!.Value.IsFretted, row.Contains('@', StringComparison.Ordinal));
                Assert.Equal(picture.OtherStopOf(number) is { IsFretted: true } other && other != picture.StopOf(number), row.Contains('%', StringComparison.Ordinal));
                Assert.Equal(picture.Setup.Clamps.Any(clamp => clamp.Strings.Contains(number)), row.Contains('#', StringComparison.Ordinal));
                Assert.Equal(picture.Marked.Contains(number), row.Contains('<', StringComparison.Ordinal));
                Assert.Equal(picture.StopOf(number)!.Value.IsMuted || picture.OtherStopOf(number) is { IsMuted: true }, row.Contains('x', StringComparison.Ordinal));
            }
        }, count: 500);

    [Fact]
    public void An_upright_board_with_room_for_all_shows_every_finger_and_every_clamp() =>
        Gen.Select(s_pictures, Gen.Bool, Gen.Int[RoomForAll, 220]).Holds((picture, isLeft, width) =>
        {
            FretboardPicture still = picture with { Cursor = null, Other = null };
            string drawn = string.Concat(FretboardDrawing.Draw(still, GlyphSet.Ascii, width, RowsForAll, new FretboardStyle(true, isLeft)));
            int fingers = still.Fretting!.Value.Stops.Count(stop => stop.IsFretted);
            Assert.InRange(drawn.Count(sign => sign == '@'), fingers, 3 * fingers);
            int strings = still.Setup.Clamps.Sum(clamp => clamp.Strings.Count);
            Assert.True(drawn.Count(sign => sign == '#') >= strings * 2, drawn);
        });

    // The wire of a clamp's fret, string by string: barred exactly where the clamp holds.
    [Fact]
    public void A_clamp_lies_over_exactly_its_strings_and_between_them() =>
        Gen.Select(Gens.Setups, Gen.Int[150, 220]).Holds((setup, width) =>
        {
            var picture = new FretboardPicture(setup, null);
            string[] lines = [.. FretboardDrawing.Draw(picture, GlyphSet.Ascii, width, RowsForAll, FretboardStyle.Usual).Select(line => line.ToString().PadRight(width))];
            int spacing = Array.FindIndex(lines, line => line.StartsWith("2 ", StringComparison.Ordinal)) - Array.FindIndex(lines, line => line.StartsWith("1 ", StringComparison.Ordinal));
            int top = Array.FindIndex(lines, line => line.StartsWith("1 ", StringComparison.Ordinal));
            // Bars are told by how many columns of '#' a row has: as many for each clamp that lies there.
            int bar = setup.Clamps.Length == 0 ? 0 : lines[top + ((setup.Clamps[0].Strings.Strings.First().Number - 1) * spacing)][LyingPlan.LabelWidth..].Count(sign => sign == '#')
                / setup.Clamps.Count(clamp => clamp.Strings.Contains(setup.Clamps[0].Strings.Strings.First()));
            foreach (int number in Enumerable.Range(1, setup.StringCount))
            {
                Assert.Equal(bar * setup.Clamps.Count(clamp => clamp.Strings.Contains(StringNumber.Of(number))), Bars(lines[top + ((number - 1) * spacing)]));
                for (int row = 1; row < spacing && number < setup.StringCount; row++)
                {
                    int across = setup.Clamps.Count(clamp => clamp.Strings.Contains(StringNumber.Of(number)) && clamp.Strings.Contains(StringNumber.Of(number + 1)));
                    Assert.Equal(bar * across, Bars(lines[top + ((number - 1) * spacing) + row]));
                }
            }
        });

    [Fact]
    public void A_window_shows_the_cursor_and_from_the_nut_all_that_fits() =>
        Gen.Select(s_pictures, Gen.Int[1, 30]).Holds((picture, count) =>
        {
            var window = FretWindow.Around(picture, count);
            Assert.InRange(window.First, 1, Fret.Last);
            Assert.InRange(window.First + window.Count - 1, 1, Fret.Last);
            Fret? cursor = picture.Cursor?.Fret;
            Assert.True(cursor is null || cursor == Fret.Nut || window.Frets.Contains(cursor.Value));
            (int low, int high) = picture.Busy;
            Assert.True(high - low >= count || (window.First <= low && window.First + window.Count > high), $"{window} of {low} to {high}");
            Assert.True(picture.LastFret > count || !window.IsBroken);
        }, count: 500);

    private static int Bars(string line) => line[LyingPlan.LabelWidth..].Count(sign => sign == '#');
}
