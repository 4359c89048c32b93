using System.Reflection;

namespace Clampwise.Practice.Tests;

/// <summary>Rules of the house that a compiler does not keep.</summary>
public class DesignTests
{
    private static readonly Assembly s_practice = typeof(Session).Assembly;

    [Fact]
    public void Practice_rests_on_theory_fretboard_and_mathematics_alone()
    {
        HashSet<string> allowed = ["Clampwise.Fretboard", "Clampwise.Theory", "Clampwise.Songs", "MathNet.Numerics"];
        Assert.DoesNotContain(
            s_practice.GetReferencedAssemblies().Select(name => name.Name!),
            name => !name.StartsWith("System", StringComparison.Ordinal) && !allowed.Contains(name));
    }

    [Fact]
    public void Nothing_public_can_be_changed_after_it_is_made()
    {
        IEnumerable<string> settable = s_practice.GetExportedTypes()
            .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.SetMethod is { IsPublic: true } set
                && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit)))
            .Select(property => $"{property.DeclaringType!.Name}.{property.Name}");
        Assert.Empty(settable);
    }

    [Fact]
    public void Every_direction_has_a_code_of_its_own_that_reads_back()
    {
        Assert.Equal(Enum.GetValues<Direction>(), Directions.All);
        Assert.All(Directions.All, direction => Assert.Equal(direction, Directions.Parse(direction.Code()).Value));
    }
}
