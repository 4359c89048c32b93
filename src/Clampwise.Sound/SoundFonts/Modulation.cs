using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>
/// What the modulators of a region add to its settings for one key and velocity (SoundFont Technical Specification 2.04, section 8 and
/// 9.5). No controller moves while a performance plays, so all others stand where General MIDI puts them.
/// </summary>
internal static class Modulation
{
    private const int Volume = 7;
    private const int Pan = 10;
    private const int Expression = 11;
    private const int Middle = 64;

    // Velocity to attenuation, 960 cB, concave and downward: the only default modulator (section 8.4) that acts here. Velocity to filter
    // cutoff, which the specification revised twice, is left to fonts that ask for it, as is usual among players.
    private static readonly Modulator[] s_defaults =
    [
        new()
        {
            SourceModulationData = new ModulatorType(0x0502),
            DestinationGenerator = GeneratorEnum.InitialAttenuation,
            Amount = 960,
            SourceModulationAmount = new ModulatorType(0),
        },
    ];

    /// <summary>Adds the modulators' amounts to settings, which are indexed by generator.</summary>
    public static void AddTo(double[] settings, SoundFontRegion region, int key, int velocity)
    {
        var own = new List<Modulator>(s_defaults);
        foreach (Modulator modulator in region.InstrumentModulators)
        {
            own.RemoveAll(earlier => earlier.HasIdenticalRouting(modulator));
            own.Add(modulator);
        }

        foreach (Modulator modulator in own.Concat(region.PresetModulators))
        {
            int destination = (int)modulator.DestinationGenerator;
            if ((uint)destination < (uint)settings.Length)
            {
                settings[destination] += AmountOf(modulator, key, velocity);
            }
        }
    }

    private static double AmountOf(Modulator modulator, int key, int velocity)
    {
        if (modulator is not { SourceModulationData: { } from, SourceModulationAmount: { } by })
        {
            return 0.0;
        }

        double source = Shaped(from, key, velocity);
        bool isPlain = !by.IsMidiContinuousController && by.ControllerSource == ControllerSourceEnum.NoController;
        double amount = modulator.Amount * source * (isPlain ? 1.0 : Shaped(by, key, velocity));
        return modulator.SourceTransform == TransformEnum.Linear ? amount : Math.Abs(amount);
    }

    private static double Shaped(ModulatorType type, int key, int velocity)
    {
        double value = ValueOf(type, key, velocity);
        double x = type.Direction ? 127.0 - value : value;
        double shaped = type.SourceType switch
        {
            SourceTypeEnum.Concave => Concave(x),
            SourceTypeEnum.Convex => 1.0 - Concave(127.0 - x),
            SourceTypeEnum.Switch => x >= Middle ? 1.0 : 0.0,
            _ => x / 128.0,
        };
        return type.Polarity ? (2.0 * shaped) - 1.0 : shaped;
    }

    private static double ValueOf(ModulatorType type, int key, int velocity) => type.IsMidiContinuousController
        ? type.MidiContinuousControllerNumber switch
        {
            Volume => 100,
            Pan => Middle,
            Expression => 127,
            _ => 0,
        }
        : type.ControllerSource switch
        {
            ControllerSourceEnum.NoteOnVelocity => velocity,
            ControllerSourceEnum.NoteOnKeyNumber => key,
            ControllerSourceEnum.PitchWheel => Middle,
            ControllerSourceEnum.PitchWheelSensitivity => 2,
            ControllerSourceEnum.NoController => 127,
            _ => 0,
        };

    // 40/96 log10 of what is left to the top, so that 960 cB follow the square of the value (section 9.5.1).
    private static double Concave(double x) => x >= 127.0 ? 1.0 : Math.Min(1.0, -40.0 / 96.0 * Math.Log10((127.0 - x) / 127.0));
}
