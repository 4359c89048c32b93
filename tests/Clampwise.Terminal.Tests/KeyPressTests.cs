using System.Text;
using CsCheck;
using Terminal.Gui.Input;

namespace Clampwise.Terminal.Tests;

public class KeyPressTests
{
    private static readonly NamedKey[] s_named = [.. Enum.GetValues<NamedKey>().Where(name => name != NamedKey.None)];

    private static readonly Gen<KeyPress> s_press = Gen.Select(
        Gen.OneOf(Gen.Int[0, s_named.Length - 1].Select(at => KeyPress.Of(s_named[at])), Gen.Char['!', '~'].Select(KeyPress.Of)),
        Gen.Bool, Gen.Bool, Gen.Bool,
        (press, shift, ctrl, alt) => Held(press, shift, ctrl, alt));

    [Fact]
    public void The_default_is_a_key_that_means_nothing()
    {
        KeyPress none = default;
        Assert.Equal(('\0', "", NamedKey.None), (none.Sign, none.Text, none.Name));
        Assert.Equal("unknown", none.ToString());
        Assert.NotEqual(KeyPress.Space, none);
    }

    [Theory]
    [InlineData('a')]
    [InlineData('A')]
    [InlineData(' ')]
    [InlineData('#')]
    [InlineData('é')]
    [InlineData('♯')]
    public void A_character_types_itself_unless_Ctrl_or_Alt_is_held(char sign)
    {
        Assert.Equal((sign, $"{sign}"), (KeyPress.Of(sign).Sign, KeyPress.Of(sign).Text));
        Assert.Equal('\0', KeyPress.Of(sign).WithCtrl.Sign);
        Assert.Equal('\0', KeyPress.Of(sign).WithAlt.Sign);
    }

    [Fact]
    public void A_character_beyond_the_first_plane_is_text_and_never_half_a_command()
    {
        // U+10071 and U+0071, q, agree in their lower half.
        KeyPress press = KeyPress.Of(new Rune(0x10071));
        Assert.Equal('\0', press.Sign);
        Assert.Equal(new Rune(0x10071).ToString(), press.Text);
        Assert.Equal(default, KeyPress.Of('\ud800'));
    }

    [Fact]
    public void Control_characters_and_named_keys_type_nothing()
    {
        Assert.Equal("", KeyPress.Of('\u001b').Text);
        Assert.Equal("", KeyPress.Of('\u0085').Text);
        Assert.All(s_named, name => Assert.Equal("", KeyPress.Of(name).Text));
    }

    [Fact]
    public void Shift_is_in_a_character_and_beside_a_named_key()
    {
        Assert.Equal(KeyPress.Of('#'), KeyPress.Of('#').WithShift);
        Assert.NotEqual(KeyPress.Tab, KeyPress.Tab.WithShift);
        Assert.Equal("Shift+Tab", KeyPress.Tab.WithShift.ToString());
        Assert.Equal("Ctrl+c", KeyPress.Of('c').WithCtrl.ToString());
    }

    [Fact]
    public void Function_keys_are_numbered_from_1_to_12()
    {
        Assert.Equal(NamedKey.F1, KeyPress.F(1).Name);
        Assert.Equal(NamedKey.F12, KeyPress.F(12).Name);
        Assert.Throws<ArgumentOutOfRangeException>(() => KeyPress.F(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => KeyPress.F(13));
    }

    // A letter with Ctrl or Alt has no case: terminals send none.
    [Fact]
    public void Every_press_survives_the_way_through_the_library() => s_press.Holds(press =>
    {
        KeyPress read = LibraryKeys.Read(LibraryKeys.Write(press));
        bool hasNoCase = press.Modifiers != KeyModifiers.None && press.Name == NamedKey.None;
        return read == press || (hasNoCase && Rune.ToLowerInvariant(read.Character) == Rune.ToLowerInvariant(press.Character) && read.Modifiers == press.Modifiers);
    });

    [Fact]
    public void A_key_of_the_library_without_a_name_here_is_unknown()
    {
        Assert.Equal(default, LibraryKeys.Read(Key.F13));
        Assert.Equal(default, LibraryKeys.Read(Key.PrintScreen));
        Assert.Equal(default, LibraryKeys.Read(Key.Empty));
    }

    private static KeyPress Held(KeyPress press, bool shift, bool ctrl, bool alt)
    {
        press = shift ? press.WithShift : press;
        press = ctrl ? press.WithCtrl : press;
        return alt ? press.WithAlt : press;
    }
}
