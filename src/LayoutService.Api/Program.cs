using LayoutService.Api.Catalogues;
using LayoutService.Api.CutPlans;
using LayoutService.Api.Describing;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;

var builder = WebApplication.CreateBuilder(args);
builder.AddLogs();
builder.AddServer();
builder.Services.AddContract();
builder.Services.AddPlans();
builder.Services.AddCutPlans();

var app = builder.Build();
app.UseRequestIds();
app.UseHead();
app.UseCallLog();
app.UseProblems();
app.UseRouting();
app.UseRateLimiter();
app.MapContract();
app.MapPlans();
app.MapCutPlans();
app.MapCatalogues();
app.MapOperation();
app.MapProblems();
app.Services.GetRequiredService<Readiness>();
app.Run();
