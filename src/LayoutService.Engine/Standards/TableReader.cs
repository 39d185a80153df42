using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace LayoutService.Engine.Standards;

/// <summary>
/// Reads the tables that are built into the engine, strictly: an unknown or missing member, an unknown word or unit,
/// or a file that nobody asked for stops the load. A table that is wrong never plans a ceiling.
/// </summary>
public static class TableReader
{
    private const string Folder = "LayoutService.Engine.Standards.Tables.";

    /// <summary>Reads one table by its id. Throws <see cref="JsonException"/> when it is not what its record says.</summary>
    public static TableFile<TRow> Read<TRow>(string id, JsonTypeInfo<TableFile<TRow>> shape)
    {
        var table = Parse(Text(Folder + id + ".json"), shape);
        return table.Id == id ? table : throw new JsonException($"Table '{id}' calls itself '{table.Id}'.");
    }

    /// <summary>Reads a furring table from text, as strictly as a built-in one.</summary>
    public static TableFile<FurringRow> ParseFurring(string text) => Parse(text, TableShapes.Default.Furring);

    private static TableFile<TRow> Parse<TRow>(string text, JsonTypeInfo<TableFile<TRow>> shape)
    {
        var table = JsonSerializer.Deserialize(text, shape) ?? throw new JsonException("A table may not be null.");
        return table.Rows.Count > 0 ? table : throw new JsonException($"Table '{table.Id}' has no rows.");
    }

    /// <summary>Ids of all tables built in, in ordinal order.</summary>
    public static IReadOnlyList<string> Ids() =>
        [.. Names().Select(name => name[Folder.Length..^".json".Length])];

    /// <summary>First twelve hexadecimal digits of the SHA-256 of every table's name and bytes.</summary>
    public static string Fingerprint()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var name in Names())
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            hash.AppendData(Encoding.UTF8.GetBytes(Text(name)));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..12];
    }

    private static IEnumerable<string> Names() =>
        Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new JsonException($"No table is built in under '{name}'.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}

/// <summary>The shapes that tables may have, closed: nothing unknown, nothing twice, nothing missing.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    UseStringEnumConverter = true)]
[JsonSerializable(typeof(TableFile<FurringRow>), TypeInfoPropertyName = "Furring")]
[JsonSerializable(typeof(TableFile<BoardSpanRow>), TypeInfoPropertyName = "BoardSpans")]
[JsonSerializable(typeof(TableFile<PenetrationRow>), TypeInfoPropertyName = "Penetrations")]
[JsonSerializable(typeof(TableFile<LumberRow>), TypeInfoPropertyName = "Lumber")]
[JsonSerializable(typeof(TableFile<LumberWeightRow>), TypeInfoPropertyName = "LumberWeights")]
[JsonSerializable(typeof(TableFile<BoardRow>), TypeInfoPropertyName = "Boards")]
[JsonSerializable(typeof(TableFile<SheetSizeRow>), TypeInfoPropertyName = "SheetSizes")]
[JsonSerializable(typeof(TableFile<StickLengthRow>), TypeInfoPropertyName = "StickLengths")]
[JsonSerializable(typeof(TableFile<BoardInsulationRow>), TypeInfoPropertyName = "BoardInsulation")]
[JsonSerializable(typeof(TableFile<HeightRow>), TypeInfoPropertyName = "Heights")]
[JsonSerializable(typeof(TableFile<LoadRow>), TypeInfoPropertyName = "Loads")]
[JsonSerializable(typeof(TableFile<BattRow>), TypeInfoPropertyName = "Batts")]
[JsonSerializable(typeof(TableFile<CompressedBattRow>), TypeInfoPropertyName = "CompressedBatts")]
[JsonSerializable(typeof(TableFile<JoistSpanRow>), TypeInfoPropertyName = "JoistSpans")]
[JsonSerializable(typeof(TableFile<WoodValueRow>), TypeInfoPropertyName = "WoodValues")]
[JsonSerializable(typeof(TableFile<WoodGravityRow>), TypeInfoPropertyName = "WoodGravities")]
[JsonSerializable(typeof(TableFile<FinishLevelRow>), TypeInfoPropertyName = "FinishLevels")]
[JsonSerializable(typeof(TableFile<LightLevelRow>), TypeInfoPropertyName = "LightLevels")]
[JsonSerializable(typeof(TableFile<RuleRow>), TypeInfoPropertyName = "Rules")]
[JsonSerializable(typeof(TableFile<RulesetRow>), TypeInfoPropertyName = "Rulesets")]
internal sealed partial class TableShapes : JsonSerializerContext;
