// Starts the connection over a websocket at once, without negotiation, and the modules that act before it answers.
import "./cloths.js";
import "./fabrics.js";
import "./picking.js";
import "./nearer.js";
import "./ticks.js";
import "./print.js";
import "./drawing.js";

// A page is its address, so a connection that the server no longer knows is replaced by loading the page again.
document.getElementById("components-reconnect-modal").addEventListener("components-reconnect-state-changed", (event) => {
  if (event.detail.state === "rejected") location.reload();
});

Blazor.start({
  circuit: {
    configureSignalR: (builder) =>
      builder.withUrl(new URL("_blazor", document.baseURI).href, {
        skipNegotiation: true,
        transport: 1, // websockets
      }),
  },
});
