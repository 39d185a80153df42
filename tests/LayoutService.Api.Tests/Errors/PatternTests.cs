using System.Diagnostics;
using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Tests.Errors;

public class PatternTests
{
    private const int Long = 200_000;

    /// <summary>Texts that make a pattern that looks back try every way.</summary>
    private static readonly string[] Hard = [new string('a', Long), new string('-', Long), string.Concat(Enumerable.Repeat("a-", Long / 2)), new string('a', Long) + "\n", new string('9', Long) + "!"];

    [Fact]
    public void Every_pattern_of_the_service_runs_in_linear_time_or_has_an_end()
    {
        var rules = typeof(ServiceLimits).Assembly.GetTypes()
            .Where(t => !t.IsAbstract && typeof(IValidator).IsAssignableFrom(t) && t.GetConstructor(Type.EmptyTypes) is not null)
            .SelectMany(t => ((IValidator)Activator.CreateInstance(t)!).CreateDescriptor().Rules)
            .SelectMany(rule => rule.Components)
            .Select(component => component.Validator)
            .OfType<IRegularExpressionValidator>()
            .ToList();
        Assert.True(rules.Count > 10, $"only {rules.Count} patterns were found");
        Assert.All(rules, rule => Assert.Equal("PatternRule", rule.Name));
        foreach (var pattern in rules.Select(rule => rule.Expression).Distinct())
        {
            var rule = new LayoutService.Api.Plans.Validation.PatternRule<object>(pattern);
            foreach (var text in Hard)
            {
                var clock = Stopwatch.StartNew();
                rule.IsValid(null!, text);
                Assert.True(clock.Elapsed < TimeSpan.FromSeconds(2), $"{pattern} takes {clock.Elapsed}");
            }

            Assert.False(rule.IsValid(null!, "CAD\n"));
        }
    }
}
