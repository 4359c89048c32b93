using Clampwise.Practice;
using Clampwise.Storage;
using Clampwise.Storage.Harness;
using Clampwise.Theory;

// Practises in a process of its own, so that a test can kill it or take its disk away. Prints a line for each thing that has happened:
// 'open', then 'kept N' for each answer that the store says is safe, or 'fault ...'.
// With 'year' it makes a folder with a year of practice instead, to measure with.
if (args is ["year", var into])
{
    Directory.CreateDirectory(into);
    using FileStream journal = File.Create(new DataFolder(into).Journal);
    LogExport.WriteJsonLines(Year.Answers(DateOnly.FromDateTime(DateTime.Today)), journal);
    return 0;
}

if (args is not [var folder, var first, var count])
{
    Console.Error.WriteLine("expected: FOLDER FIRST COUNT, or: year FOLDER");
    return 2;
}

using ProgressStore store = ProgressStore.Open(new DataFolder(folder), TimeProvider.System).Value;
store.LoadMemory(FsrsSettings.Usual);
Console.WriteLine("open");
int start = int.Parse(first);
for (int number = start; number < start + int.Parse(count); number++)
{
    Fault? fault = store.Append(Answers.Of(number));
    Console.WriteLine(fault is null ? $"kept {number}" : $"fault {fault.Message}");
}

return 0;
