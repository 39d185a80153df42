namespace LayoutService.Api.Tests.Running;

/// <summary>Tests that start processes run one after the other, so that they do not take each other's time.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class OwnProcess
{
    public const string Name = "own process";
}
