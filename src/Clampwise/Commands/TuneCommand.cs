using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise tune SETUP</c>: every string's target once the clamps are on, and the pairs to listen to.</summary>
internal static class TuneCommand
{
    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        var a4 = new Option<double>("--a4") { Description = "Frequency of A4 in hertz, 415 to 466.", HelpName = "hertz", DefaultValueFactory = _ => Pitch.StandardA4Hertz };
        Option<bool> json = SharedOptions.Json();
        var command = new Command("tune", "Say what each string has to sound once the clamps are on, and which pairs show whether it does.") { setup, a4, json };
        command.SetAction(parsed =>
        {
            if (!Setup.Parse(parsed.GetRequiredValue(setup)).TryGet(out Setup? read, out Fault? fault))
            {
                return around.Refuse("setup", fault);
            }

            if (!ConcertPitch.Of(parsed.GetValue(a4)).TryGet(out ConcertPitch pitch, out fault))
            {
                return around.Refuse("--a4", fault);
            }

            Print(around.Out, TuningPlan.Of(read, pitch), parsed.GetValue(json));
            return ExitCode.Good;
        });
        return command;
    }

    /// <summary>Writes a plan, one line a target or pair.</summary>
    public static void Print(TextWriter to, TuningPlan plan, bool asJson)
    {
        foreach (StringNumber number in plan.Order)
        {
            StringTarget target = plan.Targets.First(candidate => candidate.String == number);
            if (asJson)
            {
                JsonLines.Print(to, new TargetRow(number.Number, target.Pitch.ToString(), Math.Round(target.Hertz, 3), target.IsHeld));
            }
            else
            {
                to.WriteLine($"string {number}  {target.Pitch,-4} {target.Hertz,7:0.00} Hz  {(target.IsHeld ? "held: expect it sharp" : "free")}");
            }
        }

        foreach (TuningPair pair in plan.Pairs)
        {
            if (asJson)
            {
                JsonLines.Print(to, new PairRow(pair.Lower.Number, pair.Upper.Number, pair.Octaves, Math.Round(pair.CommonHertz, 3), pair.CrossesClamp, pair.Advice));
            }
            else
            {
                to.WriteLine(pair.Advice);
            }
        }
    }
}

/// <summary>A string's target as printed by <c>tune --json</c>.</summary>
internal sealed record TargetRow(int String, string Pitch, double Hertz, bool Held);

/// <summary>A pair in unison or octaves as printed by <c>tune --json</c>.</summary>
internal sealed record PairRow(int Lower, int Upper, int Octaves, double CommonHertz, bool CrossesClamp, string Advice);
