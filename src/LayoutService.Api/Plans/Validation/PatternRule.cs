using System.Text.RegularExpressions;
using FluentValidation;
using FluentValidation.Validators;

namespace LayoutService.Api.Plans.Validation;

/// <summary>
/// A text matches a pattern of the contract from its first character to its last. The pattern means what it means in the
/// contract (ECMA 262): its <c>$</c> is the end, while .NET's own would let a line end stand there. Matched in linear time.
/// </summary>
internal sealed class PatternRule<T>(string pattern) : PropertyValidator<T, string?>, IRegularExpressionValidator
{
    private readonly Regex whole = new(pattern.TrimEnd('$') + @"\z", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    public override string Name => "PatternRule";

    public string Expression => pattern;

    public override bool IsValid(ValidationContext<T> context, string? value) => value is null || whole.IsMatch(value);
}
