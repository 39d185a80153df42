namespace LayoutService.Engine.Measures;

/// <summary>Why a text is no length: a stable code and a sentence that says what is wrong with it.</summary>
public sealed record NotationFault(string Code, string Detail);
