namespace LayoutService.Api.Calculator;

/// <summary>A file built into the service.</summary>
internal static class Resource
{
    public static byte[] Bytes(string name)
    {
        using var stream = typeof(Resource).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The file {name} is not built into the service.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
