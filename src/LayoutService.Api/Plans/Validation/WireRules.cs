using FluentValidation;
using FluentValidation.Validators;
using LayoutService.Api.Hosting;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

/// <summary>The rules that the members of a request share, each with its stable code and its sentence.</summary>
internal static class WireRules
{
    /// <summary>Letters, digits and a few marks, so that an id can stand in a list, a file name or a table.</summary>
    public const string IdPattern = "^[A-Za-z0-9][A-Za-z0-9._:-]*$";

    /// <summary>No control characters.</summary>
    public const string TextPattern = @"^[^\u0000-\u001F\u007F-\u009F]*$";

    public const string CurrencyPattern = "^[A-Z]{3}$";

    /// <summary>The text matches a pattern of the contract.</summary>
    public static IRuleBuilderOptions<T, string?> Pattern<T>(this IRuleBuilder<T, string?> rule, string pattern) => rule.SetValidator(new PatternRule<T>(pattern));

    public static IRuleBuilderOptions<T, TMember?> Needed<T, TMember>(this IRuleBuilder<T, TMember?> rule) =>
        rule.NotNull().WithErrorCode("required").WithMessage("This member is needed.");

    public static IRuleBuilderOptions<T, WireLength?> Within<T>(this IRuleBuilder<T, WireLength?> rule, Reach reach) =>
        rule.SetValidator(new ReachRule<T>(reach)).WithErrorCode("out_of_range");

    public static IRuleBuilderOptions<T, decimal?> Within<T>(this IRuleBuilder<T, decimal?> rule, decimal least, decimal most) =>
        rule.InclusiveBetween(least, most).WithErrorCode("out_of_range")
            .WithMessage("This must be from {From} to {To}; it is {PropertyValue}.");

    public static IRuleBuilderOptions<T, int?> Within<T>(this IRuleBuilder<T, int?> rule, int least, int most) =>
        rule.InclusiveBetween(least, most).WithErrorCode("out_of_range")
            .WithMessage("This must be from {From} to {To}; it is {PropertyValue}.");

    public static IRuleBuilderOptions<T, string?> Id<T>(this IRuleBuilder<T, string?> rule) =>
        rule.Length(1, ServiceLimits.MaxIdLength).WithErrorCode("text_length")
            .WithMessage("This text must have from {MinLength} to {MaxLength} characters; it has {TotalLength}.")
            .Pattern(IdPattern).WithErrorCode("text_pattern")
            .WithMessage("An id starts with a letter or digit, and holds letters, digits, dots, dashes, colons and underscores only.");

    public static IRuleBuilderOptions<T, string?> Text<T>(this IRuleBuilder<T, string?> rule, int most = ServiceLimits.MaxTextLength) =>
        rule.Length(0, most).WithErrorCode("text_length")
            .WithMessage("This text must have from {MinLength} to {MaxLength} characters; it has {TotalLength}.")
            .Pattern(TextPattern).WithErrorCode("text_pattern")
            .WithMessage("This text holds a control character.");

    public static IRuleBuilderOptions<T, IReadOnlyList<TItem>?> Count<T, TItem>(
        this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, int least, int most) =>
        rule.SetValidator(new CountRule<T, TItem>(least, most)).WithErrorCode("count_out_of_range");
}

/// <summary>Tells the contract generator how many items a list may hold.</summary>
internal interface ICountRule
{
    int Least { get; }

    int Most { get; }
}

/// <summary>A list holds from <paramref name="least"/> to <paramref name="most"/> items.</summary>
internal sealed class CountRule<T, TItem>(int least, int most) : PropertyValidator<T, IReadOnlyList<TItem>?>, ICountRule
{
    public int Least => least;

    public int Most => most;

    public override string Name => "count_out_of_range";

    public override bool IsValid(ValidationContext<T> context, IReadOnlyList<TItem>? value)
    {
        if (value is null || (value.Count >= least && value.Count <= most))
        {
            return true;
        }

        context.MessageFormatter.AppendArgument("least", least).AppendArgument("most", most).AppendArgument("count", value.Count);
        return false;
    }

    protected override string GetDefaultMessageTemplate(string errorCode) =>
        "This list must hold from {least} to {most} items; it holds {count}.";
}
