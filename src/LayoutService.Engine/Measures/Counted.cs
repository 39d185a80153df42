using System.Globalization;

namespace LayoutService.Engine.Measures;

/// <summary>How many of something, in words.</summary>
public static class Counted
{
    /// <summary>Such as <c>1 sheet</c>, <c>3 sheets</c>.</summary>
    public static string Of(int count, string one) => string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? string.Empty : "s")}");
}
