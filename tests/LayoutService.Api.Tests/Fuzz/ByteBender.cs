namespace LayoutService.Api.Tests.Fuzz;

/// <summary>One small change of a body at a place: a byte, some dropped, doubled or put in. The guided fuzzer bends by it too.</summary>
internal static class ByteBender
{
    public static void Bend(List<byte> body, int at, Random dice, byte[][] splices)
    {
        switch (dice.Next(7))
        {
            case 0:
                body[at] = (byte)dice.Next(256);
                break;
            case 1:
                body[at] ^= (byte)(1 << dice.Next(8));
                break;
            case 2:
                body.RemoveRange(at, Math.Min(dice.Next(1, 9), body.Count - at));
                break;
            case 3:
                body.InsertRange(at, body.GetRange(at, Math.Min(dice.Next(1, 60), body.Count - at)));
                break;
            case 4:
                body.InsertRange(at, splices[dice.Next(splices.Length)]);
                break;
            case 5:
                body[at] = char.IsAsciiDigit((char)body[at]) ? (byte)('0' + dice.Next(10)) : body[at];
                break;
            default:
                body.RemoveRange(dice.Next(4) == 0 ? at : body.Count - 1, dice.Next(4) == 0 ? 0 : 1);
                break;
        }
    }
}
