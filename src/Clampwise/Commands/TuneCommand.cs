using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Plain;
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
        Option<string?> key = SharedOptions.Key();
        var command = new Verb("tune", "Say what each string has to sound once the clamps are on, and which pairs show whether it does.", "tune 'standard + 2-4@2'", "tune 2-4@2 --a4 442") { setup, a4, key, json };
        command.SetAction(parsed =>
        {
            if (!SharedOptions.ReadSetup(parsed.GetRequiredValue(setup), parsed.GetValue(key)).TryGet(out Setup? read, out Fault? fault))
            {
                return around.Refuse(fault);
            }

            if (!ConcertPitch.Of(parsed.GetValue(a4)).TryGet(out ConcertPitch pitch, out fault))
            {
                return around.Refuse("--a4", fault);
            }

            var plan = TuningPlan.Of(read, pitch);
            if (parsed.GetValue(json))
            {
                Print(around.Out, plan);
            }
            else
            {
                around.PrintLines(TuningLines.Of(plan));
            }

            return ExitCode.Good;
        });
        return command;
    }

    private static void Print(TextWriter to, TuningPlan plan)
    {
        foreach (StringNumber number in plan.Order)
        {
            StringTarget target = plan.Targets.First(candidate => candidate.String == number);
            JsonLines.Print(to, new TargetRow(number.Number, target.Spelled.ToString(), Math.Round(target.Hertz, 3), target.IsHeld));
        }

        foreach (TuningPair pair in plan.Pairs)
        {
            JsonLines.Print(to, new PairRow(pair.Lower.Number, pair.Upper.Number, pair.Octaves, Math.Round(pair.CommonHertz, 3), pair.CrossesClamp, pair.Advice));
        }
    }
}

/// <summary>A string's target as printed by <c>tune --json</c>.</summary>
internal sealed record TargetRow(int String, string Pitch, double Hertz, bool Held);

/// <summary>A pair in unison or octaves as printed by <c>tune --json</c>.</summary>
internal sealed record PairRow(int Lower, int Upper, int Octaves, double CommonHertz, bool CrossesClamp, string Advice);
