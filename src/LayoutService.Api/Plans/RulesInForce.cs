namespace LayoutService.Api.Plans;

/// <summary>The published figures that plans rest on.</summary>
internal static class RulesInForce
{
    /// <summary>Version of the set; a change of any figure changes it.</summary>
    public const string Version = "none";
}
