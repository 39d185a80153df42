using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>A fixture as planned, mm in the frame of the joists, and its hole's distance to things.</summary>
public sealed class GivenFixture
{
    public GivenFixture(JsonElement fixture, AskedFixture asked, AskedRoom room)
    {
        Asked = asked;
        Json = fixture;
        (X, Y) = fixture.GetProperty("at").Point(room.Unit);
        At = room.Frame.At(X, Y);
        Shift = LengthText.Millimetres(fixture.GetProperty("shift"), room.Unit);
        Status = fixture.Member("status").Text() ?? "";
        Host = fixture.Member("bulkheadId").Text();
    }

    public AskedFixture Asked { get; }
    public JsonElement Json { get; }
    public double X { get; }
    public double Y { get; }
    public Uv At { get; }
    public double Shift { get; }
    public string Status { get; }

    /// <summary>The bulkhead whose underside it is let into; null in the ceiling.</summary>
    public string? Host { get; }

    public Stretch Us => new(At.U - Asked.HalfU, At.U + Asked.HalfU);
    public Stretch Vs => new(At.V - Asked.HalfV, At.V + Asked.HalfV);

    /// <summary>Distance from the hole's edge to a box; 0 where they meet.</summary>
    public double To(Stretch us, Stretch vs) => Asked.Round
        ? Math.Max(0, Flat(Off(At.U, us), Off(At.V, vs)) - Asked.HalfU)
        : Flat(Between(Us, us), Between(Vs, vs));

    /// <summary>The same as if the hole filled its box, counted along and across apart: never more than <see cref="To"/>.</summary>
    public double Squarely(Stretch us, Stretch vs) => Math.Max(Between(Us, us), Between(Vs, vs));

    /// <summary>Distance from the hole's edge to a straight wall.</summary>
    public double To(Wall wall) => Asked.Round
        ? wall.Distance(At) - Asked.HalfU
        : Through(wall) ? 0 : Corners.Select(wall.Distance).Concat([To(new(wall.A.U, wall.A.U), new(wall.A.V, wall.A.V)), To(new(wall.B.U, wall.B.U), new(wall.B.V, wall.B.V))]).Min();

    public double To(GivenFixture other) => Asked.Round && other.Asked.Round
        ? Flat(At.U - other.At.U, At.V - other.At.V) - Asked.HalfU - other.Asked.HalfU
        : To(other.Us, other.Vs);

    // clips the wall to the rectangle, side by side (Liang and Barsky, 1984)
    private bool Through(Wall wall)
    {
        var (from, to) = (0.0, 1.0);
        return Clip(wall.A.U, wall.B.U - wall.A.U, Us) && Clip(wall.A.V, wall.B.V - wall.A.V, Vs);

        bool Clip(double start, double step, Stretch span)
        {
            if (Math.Abs(step) < 1e-9)
            {
                return span.From < start && start < span.To;
            }

            var (a, b) = ((span.From - start) / step, (span.To - start) / step);
            (from, to) = (Math.Max(from, Math.Min(a, b)), Math.Min(to, Math.Max(a, b)));
            return from < to;
        }
    }

    private IEnumerable<Uv> Corners => [new(Us.From, Vs.From), new(Us.To, Vs.From), new(Us.To, Vs.To), new(Us.From, Vs.To)];

    private static double Flat(double u, double v) => Math.Sqrt((u * u) + (v * v));
    private static double Off(double at, Stretch span) => Math.Max(0, Math.Max(span.From - at, at - span.To));
    private static double Between(Stretch a, Stretch b) => Math.Max(0, Math.Max(a.From - b.To, b.From - a.To));
}
