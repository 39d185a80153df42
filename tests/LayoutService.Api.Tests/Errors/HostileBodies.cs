using System.Text;

namespace LayoutService.Api.Tests.Errors;

/// <summary>Bodies that no honest client sends, each with the status and the first code that it must get.</summary>
public static class HostileBodies
{
    /// <summary>Names of all bodies.</summary>
    public static IEnumerable<string> Names => All.Keys;

    public static (byte[] Body, int Status, string Code) Of(string name) => All[name];

    private static readonly Dictionary<string, (byte[] Body, int Status, string Code)> All = new()
    {
        ["nothing"] = Text("", 400, "body_empty"),
        ["white space"] = Text(" \n\t ", 400, "body_empty"),
        ["null"] = Text("null", 400, "wrong_type"),
        ["true"] = Text("true", 400, "wrong_type"),
        ["a number"] = Text("12", 400, "wrong_type"),
        ["a string"] = Text("\"room\"", 400, "wrong_type"),
        ["an array"] = Text("[]", 400, "wrong_type"),
        ["an empty object"] = Text("{}", 422, "required"),
        ["an array of rooms"] = Text($"[{SmallRoom.Text}]", 400, "wrong_type"),
        ["two documents"] = Text(SmallRoom.Text + SmallRoom.Text, 400, "json_malformed"),
        ["cut short"] = Text(SmallRoom.Text[..60], 400, "json_cut_short"),
        ["cut in a string"] = Text("{\"units\":\"met", 400, "json_cut_short"),
        ["a comment"] = Text("{/* room */\"units\":\"metric\"}", 400, "json_comment"),
        ["a line comment"] = Text("{\"units\":\"metric\" // units\n}", 400, "json_comment"),
        ["a trailing comma"] = Text("{\"units\":\"metric\",}", 400, "json_trailing_comma"),
        ["a trailing comma in a list"] = Text("{\"joistFields\":[1,]}", 400, "json_trailing_comma"),
        ["single quotes"] = Text("{'units':'metric'}", 400, "json_malformed"),
        ["bare names"] = Text("{units:\"metric\"}", 400, "json_malformed"),
        ["NaN"] = Text("{\"units\":\"metric\",\"room\":{\"floorBuildUp\":NaN}}", 400, "json_malformed"),
        ["Infinity"] = Text("{\"units\":\"metric\",\"room\":{\"floorBuildUp\":Infinity}}", 400, "json_malformed"),
        ["a leading zero"] = Text("{\"room\":{\"floorBuildUp\":012}}", 400, "json_malformed"),
        ["a leading plus"] = Text("{\"room\":{\"floorBuildUp\":+12}}", 400, "json_malformed"),
        ["a hexadecimal number"] = Text("{\"room\":{\"floorBuildUp\":0x12}}", 400, "json_malformed"),
        ["1e400"] = Text(SmallRoom.Text.Replace("3600", "1e400", StringComparison.Ordinal), 400, "number_too_large"),
        ["-1e400"] = Text(SmallRoom.Text.Replace("3600", "-1e400", StringComparison.Ordinal), 400, "number_too_large"),
        ["1e20"] = Text(SmallRoom.Text.Replace("3600", "1e20", StringComparison.Ordinal), 422, "out_of_range"),
        ["1e-400"] = Text(SmallRoom.Text.Replace("3600", "1e-400", StringComparison.Ordinal), 422, "outline_corner_repeated"),
        ["depth 17"] = Text(new string('[', 17) + new string(']', 17), 400, "json_too_deep"),
        ["depth 200"] = Text(new string('[', 200) + new string(']', 200), 400, "json_too_deep"),
        ["depth 100000"] = Text(new string('[', 100_000), 400, "json_too_deep"),
        ["bad UTF-8"] = ([.. "{\"reference\":\""u8, 0xC3, 0x28, .. "\"}"u8], 400, "not_utf8"),
        ["UTF-16"] = ([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(SmallRoom.Text)], 400, "not_utf8"),
        ["a NUL"] = Text("\0", 400, "json_malformed"),
        ["half a surrogate pair"] = Text(SmallRoom.With("reference", "\"x\"").Replace("\"x\"", "\"\\ud800\"", StringComparison.Ordinal), 400, "text_not_unicode"),
        ["half a surrogate pair as a name"] = Text("{\"\\udc00\":1}", 400, "text_not_unicode"),
        ["a raw control character in a string"] = Text("{\"reference\":\"a\u0001b\"}", 400, "json_malformed"),
        ["an escaped control character"] = Text(SmallRoom.With("reference", "\"a\\u0001b\""), 422, "text_pattern"),
        ["a line end after a reference"] = Text(SmallRoom.With("reference", "\"a\\n\""), 422, "text_pattern"),
        ["a line end after an id"] = Text(SmallRoom.With("joistFields.0.id", "\"a\\n\""), 422, "text_pattern"),
        ["an unknown member"] = Text(SmallRoom.With("colour", "\"red\""), 400, "unknown_member"),
        ["a member in capitals"] = Text(SmallRoom.With("Units", "\"metric\""), 400, "unknown_member"),
        ["a member of a prototype"] = Text(SmallRoom.With("__proto__", "{}"), 400, "unknown_member"),
        ["a type tag"] = Text(SmallRoom.With("$type", "\"System.Object\""), 400, "unknown_member"),
        ["a member twice"] = Text(SmallRoom.Text.Replace("{\"units\":\"metric\"", "{\"units\":\"imperial\",\"units\":\"metric\"", StringComparison.Ordinal), 400, "duplicate_member"),
        ["a member twice by an escape"] = Text(SmallRoom.Text.Replace("{\"units\":\"metric\"", "{\"un\\u0069ts\":\"imperial\",\"units\":\"metric\"", StringComparison.Ordinal), 400, "duplicate_member"),
        ["an unknown word"] = Text(SmallRoom.With("units", "\"furlongs\""), 400, "unknown_word"),
        ["a word in capitals"] = Text(SmallRoom.With("units", "\"METRIC\""), 400, "unknown_word"),
        ["two words in one"] = Text(SmallRoom.With("units", "\"imperial, metric\""), 400, "unknown_word"),
        ["a number for a word"] = Text(SmallRoom.With("units", "1"), 400, "wrong_type"),
        ["a text for a number"] = Text(SmallRoom.With("joistFields.0.runDegrees", "\"90\""), 400, "wrong_type"),
        ["true for a length"] = Text(SmallRoom.With("joistFields.0.face", "true"), 400, "wrong_type"),
        ["a text without a unit"] = Text(SmallRoom.With("joistFields.0.face", "\"38\""), 400, "length_without_unit"),
        ["an empty length"] = Text(SmallRoom.With("joistFields.0.face", "\"\""), 400, "length_text_empty"),
        ["a very long length"] = Text(SmallRoom.With("joistFields.0.face", $"\"{new string('9', 5000)} mm\""), 400, "length_text_too_long"),
        ["null in a list"] = Text(SmallRoom.With("joistFields.1", "null"), 400, "wrong_type"),
        ["null for a corner"] = Text(SmallRoom.With("room.outline.1", "null"), 400, "wrong_type"),
        ["a corner of three"] = Text(SmallRoom.With("room.outline.1", "[1,2,3]"), 400, "point_not_two"),
        ["a corner as an object"] = Text(SmallRoom.With("room.outline.1", "{\"x\":1,\"y\":2}"), 400, "wrong_type"),
        ["null for a needed member"] = Text(SmallRoom.With("units", "null"), 422, "required"),
        ["half a piece in a pack"] = Text(SmallRoom.With("strapping.stock", "[{\"length\":2400,\"packSize\":1.5}]"), 400, "not_whole"),
        ["a pack beyond any integer"] = Text(SmallRoom.With("strapping.stock", "[{\"length\":2400,\"packSize\":1e20}]"), 422, "out_of_range"),
        ["a date that is none"] = Text(SmallRoom.With("document", "{\"issueDate\":\"2025-02-30\"}"), 400, "date_malformed"),
    };

    private static (byte[] Body, int Status, string Code) Text(string body, int status, string code) => (Encoding.UTF8.GetBytes(body), status, code);
}
