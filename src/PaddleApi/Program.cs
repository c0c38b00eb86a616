using PaddleApi.Hosting;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Validation;

var builder = WebApplication.CreateBuilder(args);
builder.AddListening();
builder.Services.AddStrictJson();
builder.Services.AddProblems();
builder.Services.AddValidation();

var app = builder.Build();
app.UseRequestIds();
app.UseProblems();
await app.RunAsync();
