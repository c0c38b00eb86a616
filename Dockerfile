# The two commands of the build stage are the ones that .ci/run runs.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY . .
RUN dotnet restore src/PaddleApi
RUN dotnet publish src/PaddleApi -c Release -o artifacts/app --no-restore

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /source/artifacts/app .
ENV ASPNETCORE_HTTP_PORTS=8080
EXPOSE 8080
# The image's own unprivileged user.
USER $APP_UID
# The image has no curl: bash speaks enough HTTP to ask whether the service is alive.
HEALTHCHECK --interval=30s --timeout=3s --start-period=10s \
  CMD ["bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/8080 && printf 'GET /health/live HTTP/1.0\\r\\nHost: localhost\\r\\n\\r\\n' >&3 && head -n 1 <&3 | grep -q ' 200 '"]
ENTRYPOINT ["dotnet", "PaddleApi.dll"]
