namespace LayoutService.Engine.Tests.Published;

/// <summary>Each table that was transcribed once only is compared as soon as its second transcription is there, and listed until then.</summary>
public class AwaitedTranscriptionTests
{
    public static TheoryData<string> Files => [.. AwaitedTranscriptions.ByFile.Keys];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_table_transcribed_once_is_listed_as_such_and_compared_once_its_second_transcription_is_there(string file)
    {
        var first = AwaitedTranscriptions.ByFile[file]().ToList();
        Assert.Equal(first.Count, first.Distinct(StringComparer.Ordinal).Count());
        var readme = File.ReadAllText(Path.Combine(Csv.Folder(), "Tables", "README.md"));
        Assert.Contains($"`{file}.csv`", readme);
        if (!File.Exists(Path.Combine(Csv.Folder(), "Tables", file + ".csv")))
        {
            Assert.Contains($"`{file}.csv` (awaited)", readme);
            return;
        }

        var second = Csv.Read(file).Select(row => $"{row["row"]} | {row["item"]} | {row["value"]}").ToList();
        Assert.Equal(first.Order(StringComparer.Ordinal), second.Order(StringComparer.Ordinal));
    }
}
