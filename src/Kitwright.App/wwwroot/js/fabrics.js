// Fills the few role paths of a quilt's picture. A chip does so at once; what the server says follows and agrees.

function fill(figure, fills) {
  for (const path of figure.querySelectorAll("svg [data-role]")) {
    const value = fills[path.dataset.role];
    if (value && path.getAttribute("fill") !== value) path.setAttribute("fill", value);
  }
}

document.addEventListener("change", (event) => {
  const fills = event.target.dataset?.recolor;
  if (!fills) return;
  for (const figure of document.querySelectorAll("[data-fills]")) fill(figure, JSON.parse(fills));
});

function fillAll() {
  for (const figure of document.querySelectorAll("[data-fills]")) fill(figure, JSON.parse(figure.dataset.fills));
}

new MutationObserver(fillAll).observe(document.body, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ["data-fills"],
});
