using Kitwright.Shop;

namespace Kitwright.App.Web;

/// <summary>How the web app is served. It listens on loopback only.</summary>
/// <param name="Port">TCP port; 0 takes any free one, and <c>WebApplication.Urls</c> tells which.</param>
/// <param name="Workbench">Where the pages take quilts, plans and stock from.</param>
/// <param name="Store">The shop's database, for what the pages change in it.</param>
public sealed record WebOptions(int Port, IWorkbench Workbench, ShopStore Store);
