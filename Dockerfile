# The tags are the versions that the tests ran with; whoever builds for production pins their digests too (@sha256:...).
# Builds the service in the SDK image and runs it, as a user without rights, in an image without a shell.
FROM mcr.microsoft.com/dotnet/sdk:10.0.401-noble AS build
WORKDIR /source
COPY src/ src/
COPY openapi/examples/ openapi/examples/
RUN dotnet restore src/LayoutService.Api/LayoutService.Api.csproj --locked-mode
# compiled ahead for this machine: the first answer comes sooner; the packages are those of the locked restore
RUN dotnet publish src/LayoutService.Api/LayoutService.Api.csproj --configuration Release --runtime "linux-$(uname -m | sed 's/x86_64/x64/; s/aarch64/arm64/')" \
    --self-contained false -p:PublishReadyToRun=true --output /app

FROM mcr.microsoft.com/dotnet/aspnet:10.0.12-noble-chiseled AS run
WORKDIR /app
COPY --from=build /app ./
ENV ASPNETCORE_HTTP_PORTS=8080 \
    DOTNET_EnableDiagnostics=0
EXPOSE 8080
USER $APP_UID
HEALTHCHECK --interval=10s --timeout=5s --start-period=20s --retries=6 CMD ["dotnet", "LayoutService.Api.dll", "health"]
ENTRYPOINT ["dotnet", "LayoutService.Api.dll"]
