using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Screens;
using Clampwise.Screens.Harness;
using Clampwise.Storage;
using Clampwise.Terminal;

// The frame of the program in the real terminal, around a page that fails when it is told to, so that a script can see what a failure
// leaves behind.
if (args is not ["--data", var folder, .. var more])
{
    Console.Error.WriteLine("expected: --data FOLDER [library]");
    return 2;
}

var frame = new Frame(Theme.Plain, GlyphSet.Unicode);
frame.Open(new FailingPage(frame));
int code = TerminalHost.Run(frame, new FailureReport(new DataFolder(folder), TimeProvider.System).Write, readsItself: more is not ["library"]);
TerminalHost.TakeBackKeypad();
return code;
