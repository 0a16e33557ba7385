// Strips that are cut are ticked off and stay so in this browser, for each plan by itself.

const keyOf = (page) => `kitwright cut ${page.dataset.ticks}`;

function ticked(page) {
  try {
    return new Set(JSON.parse(localStorage.getItem(keyOf(page)) ?? "[]"));
  } catch {
    return new Set(); // storage is off, or holds something else
  }
}

function show(page) {
  const done = ticked(page);
  for (const box of page.querySelectorAll("[data-tick]")) box.checked = done.has(box.dataset.tick);
  for (const strip of page.querySelectorAll("[data-ticked-by]")) {
    strip.toggleAttribute("data-done", done.has(strip.dataset.tickedBy));
  }
  const count = String(page.querySelectorAll("[data-tick]:checked").length);
  const output = page.querySelector("[data-ticked]");
  if (output.textContent !== count) {
    output.textContent = count;
    page.querySelector("progress").value = Number(count);
  }
}

document.addEventListener("change", (event) => {
  const page = event.target.closest?.("[data-ticks]");
  if (!page || !event.target.dataset.tick) return;
  const done = ticked(page);
  if (event.target.checked) done.add(event.target.dataset.tick);
  else done.delete(event.target.dataset.tick);
  try {
    localStorage.setItem(keyOf(page), JSON.stringify([...done]));
  } catch {
    return; // storage is off: the tick stays for as long as the page does
  }
  show(page);
});

new MutationObserver(() => document.querySelectorAll("[data-ticks]").forEach(show)).observe(document.body, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ["data-ticks"],
});
document.querySelectorAll("[data-ticks]").forEach(show);
