using LayoutService.Api.Bulk;
using LayoutService.Api.Calculator;
using LayoutService.Api.Catalogues;
using LayoutService.Api.Comparisons;
using LayoutService.Api.CutPlans;
using LayoutService.Api.Describing;
using LayoutService.Api.Documents;
using LayoutService.Api.Hosting;
using LayoutService.Api.Jobs;
using LayoutService.Api.Pages;
using LayoutService.Api.Plans;

if (args is [HealthProbe.Word])
{
    return await HealthProbe.AskAsync();
}

var builder = WebApplication.CreateBuilder(args);
builder.AddLogs();
builder.AddServer();
builder.AddOtherOrigins();
builder.AddTelemetry();
builder.Services.AddContract();
builder.Services.AddPlans();
builder.Services.AddBulk();
builder.Services.AddCutPlans();
builder.Services.AddJobs();
builder.Services.AddComparisons();
builder.Services.AddCalculator();

var app = builder.Build();
app.UseRequestIds();
app.UseHead();
app.UseCallLog();
app.UseProblems();
app.UseRouting();
app.UseCors();
app.UseCallers();
app.MapContract();
app.MapPlans();
app.MapBulk();
app.MapCutPlans();
app.MapCatalogues();
app.MapJobs();
app.MapComparisons();
app.MapCsvMetadata();
app.MapOperation();
app.MapMetrics();
app.MapProblems();
app.MapCalculator();
app.MapPages();
app.Services.GetRequiredService<Readiness>();
app.Run();
return 0;
