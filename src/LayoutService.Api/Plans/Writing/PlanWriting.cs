using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Drawing;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Turns a plan into the answer of the contract, with the blocks that were asked for.</summary>
internal static class PlanWriting
{
    public static PlanAnswer Of(CeilingPlan plan, MappedPlan asked, string requestDigest, Blocks blocks)
    {
        var survey = asked.Survey;
        var ink = new AnswerInk(survey.Units == UnitSystem.Imperial);
        return new PlanAnswer
        {
            Reference = asked.Reference,
            Units = ink.Imperial ? UnitsWord.Imperial : UnitsWord.Metric,
            Ruleset = survey.Ruleset,
            EngineVersion = LayoutEngine.EngineVersion,
            RulesVersion = PublishedTables.Current.RulesVersion,
            RequestDigest = requestDigest,
            Digest = SurveyDigest.Of(survey),
            Assumed = asked.Assumed,
            Summary = Summary(plan, ink),
            Checks = blocks.Has(Block.Checks) ? CheckWriting.Checks(plan.Checks) : null,
            Cautions = blocks.Has(Block.Cautions) ? CheckWriting.Cautions(plan.Cautions) : null,
            Floor = blocks.Has(Block.Floor) ? FloorWriting.Of(plan.Floor, ink) : null,
            Walls = blocks.Has(Block.Walls) ? RoomWriting.Walls(plan.Walls, ink) : null,
            Partitions = blocks.Has(Block.Walls) ? RoomWriting.Partitions(plan.Partitions, ink) : null,
            Joists = blocks.Has(Block.Joists) ? RoomWriting.Joists(plan.Joists, ink) : null,
            Strapping = blocks.Has(Block.Strapping) ? StrappingWriting.Of(plan.Strapping, ink) : null,
            Sheets = blocks.Has(Block.Sheets) ? SheetsWriting.Of(plan.Sheets, ink) : null,
            Bulkheads = blocks.Has(Block.Bulkheads) ? BulkheadsWriting.Of(plan.Bulkheads, ink) : null,
            AccessPanels = blocks.Has(Block.Bulkheads) ? BulkheadsWriting.Panels(plan.Bulkheads, ink) : null,
            Fixtures = blocks.Has(Block.Fixtures) ? FixtureWriting.Fixtures(plan.Fixtures, ink) : null,
            LightGrid = blocks.Has(Block.Fixtures) ? FixtureWriting.Grid(plan.Fixtures.Grid, ink) : null,
            Mounts = blocks.Has(Block.Fixtures) ? FixtureWriting.Mounts(plan.Fixtures, ink) : null,
            Insulation = blocks.Has(Block.Insulation) && plan.Insulation is { } batts ? InsulationWriting.Of(batts, ink) : null,
            CutPlan = blocks.Has(Block.CutPlan) ? CutPlanWriting.Of(plan.CutPlan, ink) : null,
            Takeoff = blocks.Has(Block.Takeoff) ? TakeoffWriting.Of(plan.Takeoff, ink) : null,
            Steps = blocks.Has(Block.Steps) ? RoomWriting.Steps(plan.Steps) : null,
            Alternatives = blocks.Has(Block.Alternatives) ? RoomWriting.Alternatives(plan.Alternatives) : null,
            Methods = blocks.Has(Block.Methods) ? MethodWriting.Of(MethodComparison.Of(plan, survey), ink) : null,
            Slack = blocks.Has(Block.Slack) ? StrappingWriting.Slack(RowSlacks.Of(plan, survey), ink) : null,
            Drawing = blocks.Has(Block.Drawing) ? CeilingDrawing.Svg(plan, survey) : null,
        };
    }

    private static SummaryAnswer Summary(CeilingPlan plan, AnswerInk ink)
    {
        var summary = plan.Summary;
        return new SummaryAnswer
        {
            Rows = summary.Rows,
            StrapPieces = summary.StrapPieces,
            LengthsToBuy = summary.LengthsToBuy,
            SheetsToBuy = summary.SheetsToBuy,
            ButtJointLength = ink.Number(summary.ButtJointLength),
            ButtJointLengthText = ink.Mark(summary.ButtJointLength),
            FinishedHeight = ink.Number(summary.FinishedHeight),
            FinishedHeightText = ink.Mark(summary.FinishedHeight),
            LowestUnderside = ink.Number(summary.LowestUnderside),
            LowestUndersideText = ink.Mark(summary.LowestUnderside),
            FixturesMoved = summary.FixturesMoved,
            FixturesInConflict = summary.FixturesInConflict,
            Mass = ink.Mass(summary.MassKilograms),
            HeaviestLift = ink.Mass(summary.HeaviestLiftKilograms),
            Cost = summary.Cost is { } cost ? Figures.Plain(cost, 6) : null,
            Currency = summary.Cost is null ? null : plan.Takeoff.Totals.Currency,
            ChecksFailed = summary.ChecksFailed,
        };
    }
}
