using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>Why a room cannot be planned, in the words of the trade, with what a person could change.</summary>
public static class Findings
{
    public static Finding RowsDoNotFit() => new(
        Sentence.Of("rows_do_not_fit", "No placing of rows keeps the straps tight to every wall and clear of each other."),
        ["room"],
        [
            Sentence.Of("wider_spacing", "Allow a wider row spacing."),
            Sentence.Of("narrower_strap", "Use a narrower strap."),
        ]);

    /// <summary>The meter of work ran out.</summary>
    public static Finding TooMuchWork() => new(
        Sentence.Of("too_much_work", "Working this out takes more than one call may; the service gave up."),
        ["room"],
        [
            Sentence.Of("quick_effort", "Ask for quick effort."),
            Sentence.Of("divide_room", "Divide it: plan parts of the room, or fewer pieces, in calls of their own."),
        ]);

    public static Finding SheetsDoNotReach() => new(
        Sentence.Of("sheets_do_not_reach", "No row stands where the sheets in stock could end: a course cannot be divided into pieces that the stock gives."),
        ["sheets"],
        [
            Sentence.Of("longer_sheets", "Offer a longer sheet."),
            Sentence.Of("closer_rows", "Allow a closer row spacing, so that a butt joint has a row behind it."),
        ]);

    public static Finding SheetsDoNotReachJoists() => new(
        Sentence.Of("sheets_do_not_reach_joists", "No joist lies where the sheets in stock could end: a course cannot be divided into pieces that the stock gives."),
        ["sheets"],
        [
            Sentence.Of("strap_it", "Strap the ceiling: rows go where the sheets end."),
            Sentence.Of("joist_past_opening", "Have framing put in beside a chimney or post that lies between two joists, and give it as a joist: a butt passes there."),
            Sentence.Of("longer_sheets", "Offer a longer sheet."),
        ]);

    public static Finding NoJoistsOverBoard(IReadOnlyList<string> fields, string from, string to) => new(
        Sentence.Of(
            "no_joists_over_board",
            $"Part of the room has no joist over it: board between {from} and {to} across the joists has nothing to be screwed to.",
            ("from", from),
            ("to", to)),
        fields,
        [
            Sentence.Of("measure_joists", "Measure the joists over that part, or give them as their own field."),
            Sentence.Of("add_framing", "Frame that part first, to a design by someone licensed to give one."),
        ]);

    public static Finding RoomTooSmall(string widest) => new(
        Sentence.Of("room_smaller_than_strap", $"The room is nowhere wide enough for a strap {widest} wide.", ("face", widest)),
        ["room"],
        [Sentence.Of("check_outline", "Check the outline's measures and units.")]);

    public static Finding NothingLeftToBoard(IReadOnlyList<string> bulkheads) => new(
        Sentence.Of("bulkheads_fill_room", "The bulkheads leave nothing of the ceiling: they cover the room from wall to wall."),
        bulkheads,
        [
            Sentence.Of("narrower_bulkhead", "Make the bulkheads narrower."),
            Sentence.Of("lower_whole_ceiling", "Lower the whole ceiling instead."),
        ]);

    public static Finding FrameTooLong(IReadOnlyList<string> bulkheads, string longest) => new(
        Sentence.Of("bulkhead_frame_too_long", $"A tie of a bulkhead is longer than the longest length in its frame's stock, {longest}.", ("longest", longest)),
        bulkheads,
        [Sentence.Of("longer_frame_stock", "Offer a longer length for the frame.")]);

    public static Finding NoJoists(IReadOnlyList<string> rows, string from, string to) => new(
        Sentence.Of(
            "no_joists_in_arm",
            $"Part of the room has no joist over it: a strap between {from} and {to} across the joists has nothing to be fastened to.",
            ("from", from),
            ("to", to)),
        rows,
        [
            Sentence.Of("measure_joists", "Measure the joists over that part, or give them as their own field."),
            Sentence.Of("add_framing", "Frame that part first, to a design by someone licensed to give one."),
        ]);

    public static Finding NothingToFastenTo(IReadOnlyList<string> walls) => new(
        Sentence.Of(
            "nothing_to_fasten_to",
            "A ledger or nailer is needed at an edge where no wall stands, or none yet: there is nothing to fasten it to."),
        walls,
        [
            Sentence.Of("frame_wall_first", "Frame that wall before the straps, and say that it is a stud wall."),
            Sentence.Of("add_framing_at_edge", "Have framing put in over that edge, to a design by someone licensed to give one, and give it as a joist."),
        ]);

    public static Finding StockTooShort(IReadOnlyList<string> rows, string bay, string longest) => new(
        Sentence.Of(
            "stock_shorter_than_bay",
            $"The longest strap that can be used is {longest}, too short to reach from one support to the next but one where the bays are up to {bay}.",
            ("bay", bay),
            ("longest", longest)),
        rows,
        [
            Sentence.Of("longer_stock", "Offer a longer strap, or let a longer one be handled."),
            Sentence.Of("shorter_pieces", "Allow shorter pieces, or joints by scab or block between joists."),
        ]);

    public static Finding RowsOfOnePiece(IReadOnlyList<string> rows, string longest) => new(
        Sentence.Of(
            "side_lap_leaves_row",
            $"These rows are longer than the longest strap that can be used, {longest}, and may be joined by side lap only. A side lap puts the strap beyond it "
            + "a face off the row's line, away from the wall or the butt that the row is there for.",
            ("longest", longest)),
        rows,
        [
            Sentence.Of("other_joints", "Allow joints on joists, by scab or by block as well."),
            Sentence.Of("longer_stock", "Offer a longer strap, or let a longer one be handled."),
        ]);

    public static Finding OutOfStock(string use) => new(
        Sentence.Of("out_of_stock", $"The quantities given are not enough to cut every piece of the {use}.", ("use", use)),
        [use],
        [Sentence.Of("more_stock", "Offer more of the stock, or another length.")]);
}
