using LayoutService.Api.Wire;

namespace LayoutService.Api.Hosting;

/// <summary>Writes an answer in the one way that JSON is written here.</summary>
public static class JsonAnswer
{
    public static IResult Of<T>(T value) => Results.Json(value, WireJson.Options, "application/json");
}
