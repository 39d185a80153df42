namespace LayoutService.Api.Hosting;

/// <summary>A kind of problem, and the page that explains it.</summary>
/// <param name="Name">Last part of its address.</param>
/// <param name="Status">HTTP status.</param>
/// <param name="Title">The kind in a few words.</param>
/// <param name="Text">What it means and what to do.</param>
public sealed record ProblemKind(string Name, int Status, string Title, string Text)
{
    public static readonly ProblemKind Unreadable = new("unreadable-request", 400, "The body cannot be read",
        "The body is not JSON, or not the JSON of this call: a member is unknown or stands twice, has another type than the contract says, or holds a word or a length that cannot be understood. Each fault is listed under errors with its place. Send the same call again once they are put right.");

    public static readonly ProblemKind BadQuery = new("invalid-query", 400, "The query cannot be read",
        "The part of the address after the question mark holds a name or a word that this call does not know.");

    public static readonly ProblemKind Unauthorized = new("unauthorized", 401, "The caller is not known",
        "This service is set to answer only callers that it knows. Send the key that its operator gave you in the header X-Api-Key; never in an address.");

    public static readonly ProblemKind NotFound = new("not-found", 404, "There is nothing here",
        "No resource has this address. The addresses are listed in /openapi/v1.json.");

    public static readonly ProblemKind MethodNotAllowed = new("method-not-allowed", 405, "The method is not allowed here",
        "The resource exists, but not for this method. The header Allow lists those that are.");

    public static readonly ProblemKind NotAcceptable = new("not-acceptable", 406, "No acceptable form of the answer",
        "The header Accept allows none of the forms that the answer has. Most calls answer application/json alone; the contract lists the forms of each.");

    public static readonly ProblemKind Timeout = new("request-timeout", 408, "The body came too slowly",
        "The body did not arrive in time. Send the call again.");

    public static readonly ProblemKind TooLarge = new("body-too-large", 413, "The body is too large",
        "The body is larger than GET /v1/limits allows. One room never needs as much.");

    public static readonly ProblemKind NotJson = new("unsupported-media-type", 415, "The body is not of a supported type",
        "Send application/json in UTF-8, without a content coding. The header Accept of the answer says so too.");

    public static readonly ProblemKind Invalid = new("invalid-request", 422, "The request breaks a rule",
        "The body was read, but something in it is missing, out of bounds, against another member, or not planned yet. Each fault is listed under errors with its place.");

    public static readonly ProblemKind NoPlan = new("no-plan", 422, "No sensible plan exists",
        "The request is valid, but what it asks for cannot be built sensibly. The findings say why, where, and what a person could change.");

    public static readonly ProblemKind TooMany = new("too-many-requests", 429, "Too many requests",
        "This caller sent more requests than it may in the current minute. The header Retry-After says when to try again.");

    public static readonly ProblemKind Internal = new("internal-error", 500, "The service failed",
        "This is a fault of the service, not of the request. Tell its operator the requestId.");

    public static readonly ProblemKind Busy = new("busy", 503, "The service is busy",
        "All places for planning are taken, or the service is about to stop. The header Retry-After says when to try again; the call is safe to repeat.");

    /// <summary>All kinds, by status.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
        [Unreadable, BadQuery, Unauthorized, NotFound, MethodNotAllowed, NotAcceptable, Timeout, TooLarge, NotJson, Invalid, NoPlan, TooMany, Internal, Busy];

    /// <summary>Its address, relative to the service.</summary>
    public string Address => $"/problems/{Name}";
}
