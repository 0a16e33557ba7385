// A chip was chosen: fill the few role paths of every picture on the page at once. The server follows with the rest.
document.addEventListener("change", (event) => {
  const fills = event.target.dataset?.recolor;
  if (!fills) return;
  for (const [role, fill] of Object.entries(JSON.parse(fills))) {
    for (const path of document.querySelectorAll(`.picking [data-role="${CSS.escape(role)}"]`)) {
      path.setAttribute("fill", fill);
    }
  }
});
