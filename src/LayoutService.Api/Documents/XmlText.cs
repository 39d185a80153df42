using System.Xml;

namespace LayoutService.Api.Documents;

/// <summary>A caller's text as XML can hold it: the few characters that it cannot (U+FFFE, U+FFFF) are replaced.</summary>
internal static class XmlText
{
    public static string Of(string text)
    {
        var kept = text.ToCharArray();
        for (var i = 0; i < kept.Length; i++)
        {
            if (i + 1 < kept.Length && XmlConvert.IsXmlSurrogatePair(kept[i + 1], kept[i]))
            {
                i++;
            }
            else if (!XmlConvert.IsXmlChar(kept[i]))
            {
                kept[i] = '\uFFFD';
            }
        }

        return new string(kept);
    }
}
