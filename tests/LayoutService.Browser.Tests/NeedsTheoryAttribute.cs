using LayoutService.Api.Tests.Running;

namespace LayoutService.Browser.Tests;

/// <summary>The same as <see cref="NeedsFactAttribute"/> for a test with several rows of data.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NeedsTheoryAttribute : TheoryAttribute
{
    public NeedsTheoryAttribute(string tool) => Skip = new NeedsFactAttribute(tool, tool).Skip;
}
