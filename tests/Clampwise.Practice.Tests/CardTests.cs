using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

public class CardTests
{
    private static readonly SessionWorld s_withGuitar = Examples.World with { Options = Examples.World.Options with { HasGuitar = true } };

    private static Player Daily(SessionWorld world, params PracticeItem[] items) => new(
        SessionState.Of(new SessionPlan(SessionKind.Daily, [.. items.Select(item => new PlannedItem(item, SessionPart.New))], [], TimeSpan.FromMinutes(15)), default, Examples.Nothing, 1), world)
    { PassesCards = false };

    private static PracticeItem[] Named(int count, Func<PracticeItem, bool>? test = null) =>
        [.. Examples.Harbour.Items.Where(item => item.Key.Direction == Direction.SeeShapeSayShapeName && (test?.Invoke(item) ?? true)).Take(count)];

    [Fact]
    public void A_new_shape_is_shown_and_asked_two_questions_later()
    {
        Player player = Daily(Examples.World, Named(4));
        player.Begin();
        List<string> seen = [];
        while (player.State.Phase != SessionPhase.Finished && seen.Count < 40)
        {
            bool isCard = player.State.Card is not null;
            seen.Add(isCard ? $"card {((Card.NewShape)player.State.Card!).Item.Key.Shape}" : $"asked {player.State.Open!.Planned.Item.Key.Shape}");
            if (!isCard)
            {
                player.Answer(Examples.Right(player.State.Open!.Question));
            }

            player.GoOn();
        }

        foreach (PracticeItem item in Named(4))
        {
            int card = seen.IndexOf($"card {item.Key.Shape}"), asked = seen.IndexOf($"asked {item.Key.Shape}");
            Assert.True(card >= 0 && asked > card, item.Key.ToString());
            Assert.Equal(1, seen.Count(line => line == $"card {item.Key.Shape}"));
        }

        Assert.Equal(["card", "card", "card", "asked"], seen.Take(4).Select(line => line.Split(' ')[0]));
    }

    [Fact]
    public void A_shape_that_was_met_needs_no_card_and_any_other_has_one_whatever_kind_of_session_it_is()
    {
        PracticeItem item = Named(1)[0];
        MemoryState memory = Examples.Remembered([Examples.Attempt(item, Grade.Steady, 3, 0)]);
        foreach (SessionKind kind in Enum.GetValues<SessionKind>())
        {
            Assert.Equal(SessionPhase.Asking, Begun(kind, memory).Phase);
            Assert.Equal(SessionPhase.Showing, Begun(kind, Examples.Nothing).Phase);
        }

        SessionState Begun(SessionKind kind, MemoryState known)
        {
            var player = new Player(SessionState.Of(new SessionPlan(kind, [new PlannedItem(item, SessionPart.Due)], [], null), default, known, 1), Examples.World) { PassesCards = false };
            player.Begin();
            return player.State;
        }
    }

    [Fact]
    public void With_the_guitar_in_hand_each_setup_has_its_card_and_is_asked_to_its_end_before_the_clamps_move()
    {
        PracticeItem[] mixed = [.. Examples.Harbour.Drills.Select(drill => drill.Setup).Distinct().Take(3)
            .SelectMany(setup => Named(3, item => item.Drill.Setup.Equals(setup)).Select((item, index) => (item, index)))
            .OrderBy(pair => pair.index).Select(pair => pair.item)];
        int setups = mixed.Select(item => item.Drill.Setup).Distinct().Count();
        Assert.True(setups > 1, "more than one setup is asked");
        var player = new Player(
            SessionState.Of(new SessionPlan(SessionKind.Quiz, [.. mixed.Select(item => new PlannedItem(item, SessionPart.Due))], [], null), default, Examples.Nothing, 1) with { CardsShown = [.. mixed.Select(item => item.Key.Shape)] }, s_withGuitar)
        { PassesCards = false };
        player.Begin();
        List<Setup> cards = [];
        while (player.State.Phase != SessionPhase.Finished)
        {
            if (player.State.Card is Card.ClampsMove { Setup: var setup, Before: var before })
            {
                Assert.Equal(cards.LastOrDefault(), before);
                cards.Add(setup);
                TimeSpan clock = player.State.Clock.At(player.Now.Now);
                player.Wait(90);
                Assert.Equal(clock, player.State.Clock.At(player.Now.Now));
            }
            else
            {
                Assert.Equal(cards[^1], player.State.Open!.Question.Setup);
                player.Answer(Examples.Right(player.State.Open!.Question));
            }

            player.GoOn();
        }

        Assert.Equal(setups, cards.Count);
        Assert.Equal(cards.Distinct(), cards);
    }

    [Fact]
    public void A_name_is_played_and_graded_by_the_player_and_help_or_a_first_sight_bounds_the_grade()
    {
        PracticeItem item = Examples.Harbour.Items.First(item => item.Key.Direction == Direction.NamePlaceShape);
        foreach ((Grade own, bool isKnown, int hints, Grade expected) in new[]
        {
            (Grade.Instant, true, 0, Grade.Instant), (Grade.Instant, false, 0, Grade.Steady), (Grade.Instant, true, 1, Grade.Strained),
            (Grade.Strained, true, 0, Grade.Strained), (Grade.Missed, true, 0, Grade.Missed),
        })
        {
            MemoryState memory = isKnown ? Examples.Remembered([Examples.Attempt(item, Grade.Steady, 3, 0)]) : Examples.Nothing;
            var player = new Player(SessionState.Of(new SessionPlan(SessionKind.Quiz, [new PlannedItem(item, SessionPart.Due)], [], null), default, memory, 1), s_withGuitar);
            player.Begin();
            Assert.Equal(AnswerForm.Play, player.State.Open!.Question.Form);
            for (int i = 0; i < hints; i++)
            {
                player.Do(stamp => new SessionEvent.HintAsked(stamp));
            }

            player.Answer(new Answer.Played(own));
            Attempt attempt = player.Log.OfType<Attempt>().Single();
            Assert.Equal((expected, own > Grade.Missed, "own judgement"), (attempt.Grade, attempt.IsCorrect, attempt.Answer));
        }
    }

    [Theory]
    [InlineData("006400", "005400", ", but string 4 one fret lower.")]
    [InlineData("006400", "000400", ", but string 4 left to ring.")]
    [InlineData("006400", "x06400", ", but string 6 muted.")]
    [InlineData("006400", "006430", ", but string 2 at fret 1 from the clamp.")]
    public void What_parts_two_hands_is_said_string_by_string(string met, string added, string words)
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        Assert.EndsWith(words, new LikeShape(Voicing.Parse(setup, met).Value, Voicing.Parse(setup, added).Value).Words, StringComparison.Ordinal);
    }
}
