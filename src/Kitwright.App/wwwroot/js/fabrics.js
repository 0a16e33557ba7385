// Fills the few role paths of a quilt's picture. A chip does so at once; the server hears of it once that is painted,
// so that its answer never stands between the hand and the picture, and what it says agrees.

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
    for (const figure of document.querySelectorAll("[data-fills]")) fill(figure, JSON.parse(fills));
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
  for (const figure of document.querySelectorAll("[data-fills]")) fill(figure, JSON.parse(figure.dataset.fills));
}

new MutationObserver(fillAll).observe(document.body, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ["data-fills"],
});
