namespace LayoutService.Api.Plans.Writing;

/// <summary>A part of an answer that can be asked for by name.</summary>
[Flags]
internal enum Block
{
    None = 0,
    Checks = 1 << 0,
    Cautions = 1 << 1,
    Walls = 1 << 2,
    Joists = 1 << 3,
    Strapping = 1 << 4,
    Sheets = 1 << 5,
    CutPlan = 1 << 6,
    Takeoff = 1 << 7,
    Steps = 1 << 8,
    Alternatives = 1 << 9,
    Insulation = 1 << 10,
    Fixtures = 1 << 11,
    Floor = 1 << 12,
    Bulkheads = 1 << 13,
    All = (1 << 14) - 1,

    /// <summary>The drawing is large, and no part of all.</summary>
    Drawing = 1 << 14,

    /// <summary>Worked out when it is asked for, and no part of all.</summary>
    Methods = 1 << 15,

    /// <summary>Likewise.</summary>
    Slack = 1 << 16,
}

/// <summary>The blocks that <c>include</c> asks for. Head and summary always come.</summary>
internal readonly record struct Blocks(Block Asked)
{
    /// <summary>Words of <c>include</c>, in the order of the answer.</summary>
    public static readonly IReadOnlyList<(string Word, Block Block)> Words =
    [
        ("all", Block.All), ("summary", Block.None), ("checks", Block.Checks), ("cautions", Block.Cautions), ("floor", Block.Floor), ("walls", Block.Walls),
        ("joists", Block.Joists), ("strapping", Block.Strapping), ("sheets", Block.Sheets), ("bulkheads", Block.Bulkheads), ("fixtures", Block.Fixtures), ("insulation", Block.Insulation), ("cutPlan", Block.CutPlan),
        ("takeoff", Block.Takeoff), ("steps", Block.Steps), ("alternatives", Block.Alternatives), ("drawing", Block.Drawing), ("methods", Block.Methods), ("slack", Block.Slack),
    ];

    public static Blocks All => new(Block.All);

    public bool Has(Block block) => (Asked & block) != 0;

    /// <summary>Reads a list of words; null when one is not known, which is then <paramref name="unknown"/>.</summary>
    public static Blocks? Read(string? include, out string unknown)
    {
        unknown = "";
        if (include is null)
        {
            return All;
        }

        var asked = Block.None;
        foreach (var word in include.Split(','))
        {
            var found = Words.FirstOrDefault(w => w.Word == word.Trim());
            if (found.Word is null)
            {
                unknown = word.Trim();
                return null;
            }

            asked |= found.Block;
        }

        return new(asked);
    }
}
