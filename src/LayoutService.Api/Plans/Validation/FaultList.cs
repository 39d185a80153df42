using System.Globalization;
using FluentValidation.Results;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

/// <summary>The faults found so far. Rules between members ask whether what they compare is sound by itself.</summary>
internal sealed class FaultList
{
    private static readonly HashSet<string> NoParams = ["PropertyName", "PropertyPath", "PropertyValue", "CollectionIndex"];
    private readonly List<Fault> faults = [];

    public IReadOnlyList<Fault> All => faults;

    /// <summary>True when nothing is wrong at a place or below it.</summary>
    public bool Sound(string pointer) =>
        !faults.Exists(f => f.Pointer == pointer || f.Pointer.StartsWith(pointer + "/", StringComparison.Ordinal));

    public void Add(string pointer, string code, string detail, params (string Name, string Value)[] values) =>
        faults.Add(Fault.At(pointer, code, detail, values));

    /// <summary>
    /// What a validator found, with its C# path turned into a pointer. One fault is told for a place: an empty text is too
    /// short, and that it does not match its pattern either is no news.
    /// </summary>
    public void Add(ValidationFailure failure)
    {
        var pointer = PointerOf(failure.PropertyName);
        if (faults.Exists(f => f.Pointer == pointer))
        {
            return;
        }

        var values = (failure.FormattedMessagePlaceholderValues ?? [])
            .Where(pair => !NoParams.Contains(pair.Key) && pair.Value is not null)
            .ToDictionary(pair => Camel(pair.Key), pair => Convert.ToString(pair.Value, CultureInfo.InvariantCulture)!);
        faults.Add(new(pointer, failure.ErrorCode, failure.ErrorMessage, values.Count == 0 ? null : values));
    }

    /// <summary><c>Room.Openings[1].Id</c> is <c>#/room/openings/1/id</c>.</summary>
    internal static string PointerOf(string path)
    {
        if (path.Length == 0)
        {
            return "#";
        }

        var tokens = path.Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.');
        return "#/" + string.Join('/', tokens.Select(token => JsonPlace.Escape(Camel(token))));
    }

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
