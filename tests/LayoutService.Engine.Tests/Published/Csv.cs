using System.Runtime.CompilerServices;

namespace LayoutService.Engine.Tests.Published;

/// <summary>Reads the second transcription's files: comma, quotes where a field holds a comma, one header line.</summary>
internal static class Csv
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder(), "Tables", file + ".csv"));
        var header = Split(lines[0]);
        return [.. lines.Skip(1).Where(line => line.Length > 0).Select(line => (IReadOnlyDictionary<string, string>)header.Zip(Split(line)).ToDictionary(pair => pair.First, pair => pair.Second))];
    }

    public static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;

    private static List<string> Split(string line)
    {
        var fields = new List<string>();
        var field = new System.Text.StringBuilder();
        var quoted = false;
        foreach (var mark in line)
        {
            if (mark == '"')
            {
                quoted = !quoted;
            }
            else if (mark == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(mark);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}
