# The commands of the build stage are the ones that .ci/run runs.
FROM mcr.microsoft.com/dotnet/sdk:10.0.401 AS build
WORKDIR /source
# What decides the packages comes first: a change of the sources alone finds them restored.
COPY global.json Directory.Build.props Directory.Packages.props ./
COPY src/Paddle.Design/Paddle.Design.csproj src/Paddle.Design/packages.lock.json src/Paddle.Design/
COPY src/Paddle.Drawings/Paddle.Drawings.csproj src/Paddle.Drawings/packages.lock.json src/Paddle.Drawings/
COPY src/PaddleApi/PaddleApi.csproj src/PaddleApi/packages.lock.json src/PaddleApi/
RUN dotnet restore src/PaddleApi --locked-mode --use-current-runtime -p:PublishReadyToRun=true
COPY . .
RUN dotnet publish src/PaddleApi -c Release -o artifacts/app --no-restore --use-current-runtime --no-self-contained -p:PublishReadyToRun=true

FROM mcr.microsoft.com/dotnet/aspnet:10.0.12
LABEL org.opencontainers.image.title="PaddleApi" \
  org.opencontainers.image.description="Design service for hand-made wooden single-blade canoe paddles" \
  org.opencontainers.image.licenses="MIT"
WORKDIR /app
COPY --from=build /source/artifacts/app .
# The heap may take seven tenths (hexadecimal) of the container's memory; stacks, code and bodies on the line have the rest.
ENV ASPNETCORE_HTTP_PORTS=8080 DOTNET_GCHeapHardLimitPercent=46
EXPOSE 8080
# The image's own unprivileged user.
USER $APP_UID
# The image has no curl: bash speaks enough HTTP to ask whether the service is alive.
HEALTHCHECK --interval=30s --timeout=3s --start-period=10s \
  CMD ["bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/8080 && printf 'GET /health/live HTTP/1.0\\r\\nHost: localhost\\r\\n\\r\\n' >&3 && head -n 1 <&3 | grep -q ' 200 '"]
ENTRYPOINT ["dotnet", "PaddleApi.dll"]
