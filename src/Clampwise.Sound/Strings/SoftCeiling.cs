namespace Clampwise.Sound.Strings;

/// <summary>Leaves everything below three quarters of full scale as it is and bends what is louder so that it never reaches full scale.</summary>
internal static class SoftCeiling
{
    private const float Knee = 0.75f;
    private const float Room = 0.2499f;

    /// <summary>Bends one sample: y = knee + room * x / (x + room) above the knee, which joins with the same slope.</summary>
    public static float Bend(float sample)
    {
        float size = Math.Abs(sample);
        if (size <= Knee)
        {
            return sample;
        }

        float over = size - Knee;
        return MathF.CopySign(Knee + (Room * over / (over + Room)), sample);
    }
}
