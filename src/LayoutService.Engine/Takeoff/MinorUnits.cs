namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Decimal places of a currency's minor unit, by ISO 4217. The exceptions to two places are listed from memory of that
/// standard's table and have not been read again.
/// </summary>
public static class MinorUnits
{
    /// <summary>Places after the point: 0, 2, 3 or 4.</summary>
    public static int Places(string currency) => currency switch
    {
        "BIF" or "CLP" or "DJF" or "GNF" or "ISK" or "JPY" or "KMF" or "KRW" or "PYG" or "RWF" or "UGX" or "UYI" or "VND"
            or "VUV" or "XAF" or "XOF" or "XPF" => 0,
        "BHD" or "IQD" or "JOD" or "KWD" or "LYD" or "OMR" or "TND" => 3,
        "CLF" or "UYW" => 4,
        _ => 2,
    };

    /// <summary>An amount to the minor unit; halves go away from zero, as shops round.</summary>
    public static decimal Round(decimal amount, string currency) =>
        decimal.Round(amount, Places(currency), MidpointRounding.AwayFromZero);
}
