using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Size, species and grade are a sawn joist's; a nominal size and a measured depth agree.</summary>
internal static class JoistStampRules
{
    /// <summary>Wood shrinks and swells: a depth within this of the dressed one is that size. Common practice, no source.</summary>
    private static readonly Length Shrinkage = Length.FromMillimetres(7);

    public static void Check(JoistFieldRequest field, string at, bool imperial, FaultList faults)
    {
        if (field.Kind is not (null or JoistWord.Sawn))
        {
            Refuse(field.Size is not null, $"{at}/size", faults);
            Refuse(field.Species is not null, $"{at}/species", faults);
            Refuse(field.Grade is not null, $"{at}/grade", faults);
        }

        if (field.Size is not { } size || field.Depth is not { } sent || !faults.Sound($"{at}/depth"))
        {
            return;
        }

        var assumed = new Assumptions(imperial);
        var dressed = assumed.Default(JoistWords.Depth(size, true), JoistWords.Depth(size, false));
        var depth = sent.In(imperial);
        if (Math.Abs((depth - dressed).Units) > Shrinkage.Units)
        {
            faults.Add($"{at}/depth", "size_and_depth_differ", $"A {Words.Text(size)} is {assumed.Tape(dressed)} deep; the depth given is {assumed.Tape(depth)}.",
                ("size", Words.Text(size)), ("dressed", assumed.Tape(dressed)), ("value", assumed.Tape(depth)));
        }
    }

    private static void Refuse(bool given, string pointer, FaultList faults)
    {
        if (given)
        {
            faults.Add(pointer, "sawn_only", "Size, species and grade are those of sawn joists; leave this out for other kinds.");
        }
    }
}
