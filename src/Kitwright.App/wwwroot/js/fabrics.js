// Fills the few role paths of a quilt's picture. A chip does so at once; the server hears of it once that is painted,
// so that its answer never stands between the hand and the picture, and what it says agrees.

// A browser paints a printed patch many times slower than a plain one: while chips are being chosen the picture has
// the fabrics' colors with hard edges, and their prints a moment after the last of them.
const Rest = 400;
let chosen = -Rest;
let waiting = 0;

/** The fabrics' colors alone: {role: "url(#print) #color"} without the prints. */
function plain(fills) {
  return Object.fromEntries(Object.entries(fills).map(([role, value]) => [role, value.slice(value.lastIndexOf(" ") + 1)]));
}

function fill(figure, fills) {
  for (const path of figure.querySelectorAll("svg [data-role]")) {
    const value = fills[path.dataset.role];
    if (value && path.getAttribute("fill") !== value) path.setAttribute("fill", value);
  }
}

window.addEventListener(
  "change",
  (event) => {
    const chip = event.target;
    const fills = chip.dataset?.recolor;
    if (!fills || !event.isTrusted) return;
    event.stopImmediatePropagation();
    chosen = performance.now();
    const colors = plain(JSON.parse(fills));
    for (const figure of document.querySelectorAll("[data-fills]")) {
      figure.dataset.fills = fills;
      figure.dataset.choosing = "";
      fill(figure, colors);
    }
    afterPaint(() => {
      // Of several chips in one frame only the last is told.
      if (chip.checked) chip.dispatchEvent(new Event("change", { bubbles: true }));
    });
  },
  true,
);

/** The callback runs in the task after the next frame. */
function afterPaint(callback) {
  requestAnimationFrame(() => setTimeout(callback));
}

function fillAll() {
  clearTimeout(waiting);
  const left = chosen + Rest - performance.now();
  if (left > 0) {
    waiting = setTimeout(fillAll, left);
    return;
  }

  for (const figure of document.querySelectorAll("[data-fills]")) {
    delete figure.dataset.choosing;
    fill(figure, JSON.parse(figure.dataset.fills));
  }
}

new MutationObserver(fillAll).observe(document.body, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ["data-fills"],
});
