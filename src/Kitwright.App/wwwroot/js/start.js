// Starts the connection over a websocket at once, without negotiation, and the modules that act before it answers.
import "./fabrics.js";
import "./picking.js";
import "./ticks.js";
import "./print.js";

Blazor.start({
  circuit: {
    configureSignalR: (builder) =>
      builder.withUrl(new URL("_blazor", document.baseURI).href, {
        skipNegotiation: true,
        transport: 1, // websockets
      }),
  },
});
