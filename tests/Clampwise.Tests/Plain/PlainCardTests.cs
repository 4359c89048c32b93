using Clampwise.Tests.Commands;

namespace Clampwise.Tests.Plain;

public sealed class PlainCardTests : IDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("clampwise-cards").FullName;

    public void Dispose() => Directory.Delete(_data, recursive: true);

    [Fact]
    public void The_clamp_goes_on_and_new_shapes_are_said_before_anything_is_asked()
    {
        string said = CommandRun.WithInput("\n\n\n\nend\n", "drill", "--plain", "--new", "--data", _data).Out;
        int clamp = said.IndexOf("Put the clamp on", StringComparison.Ordinal), shape = said.IndexOf("New: the shape ", StringComparison.Ordinal);
        int question = said.IndexOf("Which chord is this", StringComparison.Ordinal);
        Assert.True(clamp >= 0 && clamp < shape && shape < question, said);
        Assert.InRange(said.Split("New: the shape ").Length - 1, 2, 3);
        Assert.Contains("The clock stands meanwhile.", said);
    }

    [Fact]
    public void A_card_takes_no_answer_and_says_what_it_takes()
    {
        string said = CommandRun.WithInput("D\nsay\n\nD\nagain\nend\n", "drill", "--plain", "--new", "--data", _data).Out;
        Assert.Contains("Enter when it is on and in tune; or say, pause, later, end.", said);
        Assert.Contains("Enter when you have played it; or again, say, pause, later, end.", said);
        Assert.Contains("Nothing asked this time", said);
    }

    [Theory]
    [InlineData("steady", "by your own judgement")]
    [InlineData("missed", "Not this time: it is ")]
    public void A_name_is_played_looked_at_and_graded(string grade, string said)
    {
        PlainTalk talk = PlainTalk.WithGuitar(Practice.Direction.NamePlaceShape, "", "", grade, "end");
        Assert.Contains("Enter shows it; then say how it went.", talk.Out);
        Assert.Contains("How did it go: missed, strained, steady or instant?", talk.Out);
        Assert.Contains(said, talk.Out);
        Assert.Equal(grade, talk.Log.Attempts.Single().Grade.ToString().ToLowerInvariant());
    }

    [Fact]
    public void A_grade_before_the_look_is_none()
    {
        PlainTalk talk = PlainTalk.WithGuitar(Practice.Direction.NamePlaceShape, "", "steady", "end");
        Assert.Empty(talk.Log.Attempts);
        Assert.Contains("A grade belongs to an answer", talk.Out);
    }
}
