using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.OpenApi;
using PaddleApi.Hosting.Caching;
using Swashbuckle.AspNetCore.Swagger;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>The description as it is sent. It is written at the first request for it, since its examples take some computing, and kept.</summary>
/// <param name="services">Where the writer of the description is registered.</param>
internal sealed class DescriptionText(IServiceProvider services)
{
    private readonly Lazy<Task<(byte[] Bytes, string Tag)>> written = new(() => WriteAsync(services));

    /// <summary>The bytes and their strong tag.</summary>
    public Task<(byte[] Bytes, string Tag)> GetAsync() => written.Value;

    private static async Task<(byte[] Bytes, string Tag)> WriteAsync(IServiceProvider services)
    {
        await using var scope = services.CreateAsyncScope();
        var document = await scope.ServiceProvider.GetRequiredService<IAsyncSwaggerProvider>().GetSwaggerAsync(OpenApiSetup.DocumentName);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        document.SerializeAsV31(new OpenApiJsonWriter(text));
        var bytes = Encoding.UTF8.GetBytes(text.ToString());
        return (bytes, EntityTags.Of(Convert.ToHexString(SHA256.HashData(bytes))));
    }
}
