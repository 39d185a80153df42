using System.Globalization;
using System.Text;
using System.Xml;

namespace LayoutService.Drawing;

/// <summary>
/// Writes SVG 1.1 with presentation attributes only: no style sheet, no script, no link, so that it may stand in any page.
/// Numbers have two decimals at most.
/// </summary>
public sealed class SvgInk : IDisposable
{
    private const string Namespace = "http://www.w3.org/2000/svg";
    private readonly StringBuilder _text = new();
    private readonly XmlWriter _xml;
    private readonly List<Letters> _letters = [];

    public SvgInk(double width, double height, string title, string description)
    {
        _xml = XmlWriter.Create(_text, new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, IndentChars = " ", NewLineChars = "\n", CheckCharacters = true });
        _xml.WriteStartElement("svg", Namespace);
        Set("width", width);
        Set("height", height);
        Set("viewBox", $"0 0 {Number(width)} {Number(height)}");
        Set("font-family", "DejaVu Sans, Verdana, Arial, sans-serif");
        Set("font-size", Lettering.Size);
        Set("fill", "none");
        Set("stroke", "#1a1a1a");
        Set("role", "img");
        _xml.WriteElementString("title", Namespace, Clean(title));
        _xml.WriteElementString("desc", Namespace, Clean(description));
        Start("rect");
        Set("width", width);
        Set("height", height);
        Set("fill", "#ffffff");
        Set("stroke", "none");
        End();
    }

    /// <summary>The whole drawing; nothing can be written after it.</summary>
    public string Finish()
    {
        // letters come last, so that nothing is painted over them
        Group("letters", null);
        foreach (var letters in _letters)
        {
            Write(letters);
        }

        EndGroup();
        _xml.WriteEndElement();
        _xml.Flush();
        return _text.ToString();
    }

    public void Dispose() => _xml.Dispose();

    /// <summary>Opens a group; <paramref name="about"/> is shown by a reader when it is pointed at.</summary>
    public void Group(string? id, string? about, params (string Name, string Value)[] marks)
    {
        Start("g");
        if (id is not null)
        {
            Set("id", id);
        }

        foreach (var (name, value) in marks)
        {
            Set(name, value);
        }

        if (about is not null)
        {
            _xml.WriteElementString("title", Namespace, Clean(about));
        }
    }

    public void EndGroup() => End();

    public void Line(Spot from, Spot to, params (string Name, string Value)[] marks)
    {
        Start("line");
        Set("x1", from.X);
        Set("y1", from.Y);
        Set("x2", to.X);
        Set("y2", to.Y);
        End(marks);
    }

    public void Ring(IEnumerable<Spot> corners, params (string Name, string Value)[] marks)
    {
        Start("polygon");
        Set("points", string.Join(' ', corners.Select(c => $"{Number(c.X)},{Number(c.Y)}")));
        End(marks);
    }

    /// <summary>Several straight lines that hang together, not closed.</summary>
    public void Lines(IEnumerable<Spot> corners, params (string Name, string Value)[] marks)
    {
        Start("polyline");
        Set("points", string.Join(' ', corners.Select(c => $"{Number(c.X)},{Number(c.Y)}")));
        End(marks);
    }

    public void Circle(Spot middle, double radius, params (string Name, string Value)[] marks)
    {
        Start("circle");
        Set("cx", middle.X);
        Set("cy", middle.Y);
        Set("r", radius);
        End(marks);
    }

    /// <summary>A text whose middle stands at a spot, level or turned to read upward.</summary>
    public void Text(Spot middle, string text, double size = Lettering.Size, bool upward = false, bool bold = false) =>
        _letters.Add(new Letters(middle, text, size, upward, bold));

    private readonly record struct Letters(Spot Middle, string Text, double Size, bool Upward, bool Bold);

    private void Write(Letters letters)
    {
        var (middle, text, size, upward, bold) = letters;
        Start("text");
        Set("x", middle.X);
        Set("y", middle.Y + (upward ? 0 : size * 0.35));
        Set("text-anchor", "middle");
        if (upward)
        {
            Set("transform", $"rotate(-90 {Number(middle.X)} {Number(middle.Y)}) translate(0 {Number(size * 0.35)})");
        }

        if (size != Lettering.Size)
        {
            Set("font-size", size);
        }

        if (bold)
        {
            Set("font-weight", "bold");
        }

        // a white edge behind the letters keeps them readable over lines
        Set("fill", "#000000");
        Set("stroke", "#ffffff");
        Set("stroke-width", "2.4");
        Set("paint-order", "stroke");
        _xml.WriteString(Clean(text));
        End();
    }

    private void Start(string name) => _xml.WriteStartElement(name, Namespace);

    private void End(params (string Name, string Value)[] marks)
    {
        foreach (var (name, value) in marks)
        {
            Set(name, value);
        }

        _xml.WriteEndElement();
    }

    private void Set(string name, string value) => _xml.WriteAttributeString(name, Clean(value));

    private void Set(string name, double value) => _xml.WriteAttributeString(name, Number(value));

    /// <summary>A number of the drawing as text.</summary>
    public static string Number(double value)
    {
        var rounded = Math.Round(value, 2);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    // XML has no place for most control characters, nor for half of a pair
    private static string Clean(string text) =>
        string.Concat(text.EnumerateRunes().Select(r => r.Value is >= 0x20 and not (0xFFFE or 0xFFFF) ? r.ToString() : " "));
}
