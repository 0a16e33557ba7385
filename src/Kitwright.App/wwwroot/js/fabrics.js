// Fills the few role paths of a quilt's picture. A chip does so at once; the server hears of it once that is on the
// screen, so that its work never stands between the hand and the picture, and what it says agrees.

// A browser paints a printed patch many times slower than a plain one: while chips are being chosen the picture has
// the fabrics' colors with hard edges, and their prints a moment after the last of them.
const Rest = 700;
let chosen = -Rest;
let waiting = 0;

// On a machine that serves and shows, planning would take the processor from the painting. While chips are gone
// through, the one that the hand stays at is told.
const Painted = 120;
const Stayed = 450;
const GoneThrough = 1000;
let telling = 0;
let untold = null;

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
    const wait = performance.now() - chosen < GoneThrough ? Stayed : Painted;
    chosen = performance.now();
    const colors = plain(JSON.parse(fills));
    for (const figure of document.querySelectorAll("[data-fills]")) {
      figure.dataset.fills = fills;
      figure.dataset.choosing = "";
      fill(figure, colors);
    }
    clearTimeout(telling);
    untold = chip;
    telling = setTimeout(tell, wait);
  },
  true,
);

function tell() {
  clearTimeout(telling);
  const chip = untold;
  untold = null;
  if (chip?.checked) chip.dispatchEvent(new Event("change", { bubbles: true }));
}

// Whatever else the hand does next must find the server told.
for (const kind of ["pointerdown", "keydown", "pagehide"]) {
  window.addEventListener(kind, (event) => event.target.closest?.(".chip") || tell(), true);
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
