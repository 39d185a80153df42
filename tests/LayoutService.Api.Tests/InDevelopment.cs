using LayoutService.Api.Tests.Contract;
using LayoutService.Api.Tests.CutPlans;
using LayoutService.Api.Tests.Errors;
using LayoutService.Api.Tests.Orders;
using LayoutService.Api.Tests.Plans;

namespace LayoutService.Api.Tests;

/// <summary>The service in the Development environment, where the framework says more of a fault unless it is kept from it.</summary>
public sealed class DevelopmentService : Service
{
    protected override string RunsIn => "Development";
}

// The fast part of the suite once more: answers, committed files and refusals must be the same. Nothing here has "Contract" in its name,
// so the switch that writes files anew writes them once.
public sealed class AnswersInDevelopment(DevelopmentService service) : AnswerTests(service), IClassFixture<DevelopmentService>;

public sealed class SafeCallsInDevelopment(DevelopmentService service) : SafeCallTests(service), IClassFixture<DevelopmentService>;

public sealed class ExamplesInDevelopment(DevelopmentService service) : ExampleTests(service), IClassFixture<DevelopmentService>;

public sealed class OrderExamplesInDevelopment(DevelopmentService service) : OrderExampleTests(service), IClassFixture<DevelopmentService>;

public sealed class CutExamplesInDevelopment(DevelopmentService service) : CutExampleTests(service), IClassFixture<DevelopmentService>;

public sealed class ServedFilesInDevelopment(DevelopmentService service) : ContractFileTests(service), IClassFixture<DevelopmentService>;

public sealed class DocumentsInDevelopment(DevelopmentService service) : DocumentTests(service), IClassFixture<DevelopmentService>;

public sealed class PointersInDevelopment(DevelopmentService service) : PointerTests(service), IClassFixture<DevelopmentService>;

public sealed class RulesInDevelopment(DevelopmentService service) : RuleTests(service), IClassFixture<DevelopmentService>;

public sealed class LimitsInDevelopment(DevelopmentService service) : LimitTests(service), IClassFixture<DevelopmentService>;

public sealed class HeadersInDevelopment(DevelopmentService service) : HeaderTests(service), IClassFixture<DevelopmentService>;

public sealed class StatusesInDevelopment(DevelopmentService service) : StatusTests(service), IClassFixture<DevelopmentService>;

public sealed class CutFaultsInDevelopment(DevelopmentService service) : CutFaultTests(service), IClassFixture<DevelopmentService>;
