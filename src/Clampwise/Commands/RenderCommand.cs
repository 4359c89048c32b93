using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Sound;
using Clampwise.Sound.Files;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise render SETUP FRETTING FILE</c>: writes what <c>play</c> plays into a WAV file.</summary>
internal static class RenderCommand
{
    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        var fretting = new Argument<string>("fretting") { Description = SharedOptions.FrettingWords };
        var file = new Argument<string?>("file") { Description = "The file to write: .wav, or .mid for its notes.", Arity = ArgumentArity.ZeroOrOne };
        var output = new Option<string?>("--output", "-o") { Description = "The file to write, if it is not the last word.", HelpName = "file" };
        var depth = new Option<string>("--depth") { Description = "16 or 24 bits, or float.", HelpName = "depth", DefaultValueFactory = _ => "16" };
        var rate = new Option<int>("--rate") { Description = "Frames a second.", HelpName = "hertz", DefaultValueFactory = _ => SampleRate.Standard.Hertz };
        Option<bool> behind = SharedOptions.Behind();
        var stroke = new Stroke();
        var voice = new VoiceOptions();
        var command = new Verb("render", "Write a voicing's sound to a WAV file, with the same samples as play, or its notes to a MIDI file.", "render 2-4@2 x04600 chord.wav", "render 2-4@2 x04600 chord.mid") { setup, fretting, file, output, depth, rate, behind };
        command.Excludes(output, file);
        stroke.AddTo(command);
        voice.AddTo(command);
        command.SetAction(parsed =>
        {
            Result<Voicing> voicing = SharedOptions.ReadVoicing(parsed.GetRequiredValue(setup), parsed.GetRequiredValue(fretting), parsed.GetValue(behind));
            Result<(string Path, Performance Play, WaveDepth Depth, SampleRate Rate)> asked = PathOf(parsed.GetValue(output) ?? parsed.GetValue(file))
                .Then(path => voicing.Then(read => stroke.Of(read, parsed))
                    .Then(play => DepthOf(parsed.GetValue(depth)!)
                        .Then(bits => SampleRate.Of(parsed.GetValue(rate)).Select(hertz => (path, play, bits, hertz)))));
            if (!asked.TryGet(out var write, out Fault? fault))
            {
                return around.Refuse(fault);
            }

            if (IsMidi(write.Path))
            {
                if (voice.All.Prepend(rate).Prepend(depth).FirstOrDefault(option => Verb.IsGiven(parsed.CommandResult, option)) is { } useless)
                {
                    return around.Refuse(new Fault($"{useless.Name} means nothing to a MIDI file, which holds notes and no sound: leave it out, or name a .wav file"));
                }

                return Disk.WriteWhole(write.Path, stream => StandardMidiFile.Write(stream, write.Play)).TryGet(out _, out fault) ? ExitCode.Good : around.Fail(fault);
            }

            if (!SoundSystem.LoadInstrument(voice.In(SoundSettings.Standard, parsed)).TryGet(out IInstrument? instrument, out fault))
            {
                return around.Refuse("--soundfont", fault);
            }

            return Disk.WriteWhole(write.Path, stream => WaveFile.Write(stream, instrument, write.Play, write.Depth, write.Rate)).TryGet(out _, out fault) ? ExitCode.Good : around.Fail(fault);
        });
        return command;
    }

    private static Result<string> PathOf(string? path) => path switch
    {
        null or "" => new Fault("no file was named: add one, such as chord.wav"),
        _ when path.StartsWith("/dev/", StringComparison.Ordinal) || path.EndsWith(".wav", StringComparison.OrdinalIgnoreCase) || IsMidi(path) => path,
        _ => new Fault($"a WAV file ends in .wav, a MIDI file in .mid, found '{path}'"),
    };

    private static bool IsMidi(string path) => path.EndsWith(".mid", StringComparison.OrdinalIgnoreCase);

    private static Result<WaveDepth> DepthOf(string text) => text switch
    {
        "16" => WaveDepth.Bits16,
        "24" => WaveDepth.Bits24,
        "float" => WaveDepth.Float,
        _ => new Fault($"--depth: expected 16, 24 or float, found '{text}'"),
    };
}
