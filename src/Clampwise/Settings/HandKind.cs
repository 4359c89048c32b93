using System.Globalization;
using Clampwise.Fretboard;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>The span of a hand: a size by name, or millimetres.</summary>
internal sealed class HandKind : SettingKind<Hand>
{
    private static readonly (string Word, Hand Hand)[] s_sizes = [("small", Hand.Small), ("medium", Hand.Medium), ("large", Hand.Large)];

    public override string Expected =>
        $"\"small\", \"medium\", \"large\", or the span from index to little finger in millimetres, {Hand.NarrowestMillimetres} to {Hand.WidestMillimetres}";

    public override string ExpectedTyped =>
        $"small, medium, large, or the span from index to little finger in millimetres, {Hand.NarrowestMillimetres} to {Hand.WidestMillimetres}";

    public override Result<Hand> Read(TomlValue value) => value switch
    {
        TomlValue.Whole whole => OfSpan(whole.Value, $"{whole.Value}"),
        TomlValue.Real real => OfSpan(real.Value, real.Written),
        TomlValue.Text { Value: var text } => ReadText(text),
        _ => Wrong(value.Written),
    };

    public override Result<Hand> Type(string text) => Hand.Parse(text).TryGet(out Hand? hand, out _) ? hand : WrongTyped(text);

    public override string Write(Hand value) => NameOf(value) is { } name ? TomlText.Quote(name) : Millimetres(value);

    public override string Show(Hand value) => NameOf(value) is { } name ? $"{name}, {Millimetres(value)} mm" : $"{Millimetres(value)} mm";

    public override string Edit(Hand value) => Millimetres(value);

    public override Hand Step(Hand value, int by)
    {
        IEnumerable<Hand> beyond = s_sizes.Select(size => size.Hand).Where(hand => Math.Sign(hand.SpanMillimetres.CompareTo(value.SpanMillimetres)) == by);
        return (by > 0 ? beyond.FirstOrDefault() : beyond.LastOrDefault()) ?? value;
    }

    private Result<Hand> OfSpan(double millimetres, string found) => Hand.OfSpan(millimetres).TryGet(out Hand? hand, out _) ? hand : Wrong(found);

    private static string? NameOf(Hand hand) => s_sizes.FirstOrDefault(size => size.Hand.SpanMillimetres.Equals(hand.SpanMillimetres)).Word;

    private static string Millimetres(Hand hand) => hand.SpanMillimetres.ToString("0.#", CultureInfo.InvariantCulture);
}
