// The prints of the fabrics on a page. Each is fetched once and stays when the page changes; a fabric whose print has
// changed is fetched anew. Pictures name prints beside colors, so they have their colors until the prints are here.

const prints = document.getElementById("cloths");
const asked = new Map();

// So many in one address, far below what a server takes.
const AtOnce = 40;

function wanted() {
  const missing = [];
  for (const part of document.querySelectorAll("[data-cloths]")) {
    for (const cloth of part.dataset.cloths.split(" ")) {
      const [name, version] = cloth.split(".");
      if (!cloth || asked.get(name) === version) continue;
      asked.set(name, version);
      missing.push(cloth);
    }
  }
  return missing;
}

async function bring(cloths) {
  const answer = await fetch(`/cloths.svg?of=${cloths.join(",")}`);
  if (!answer.ok) return;
  const drawn = new DOMParser().parseFromString(await answer.text(), "image/svg+xml");
  for (const print of drawn.querySelectorAll("pattern")) document.getElementById(print.id)?.remove();
  prints.append(...drawn.documentElement.children);
}

async function bringAll() {
  const missing = wanted();
  for (let i = 0; i < missing.length; i += AtOnce) {
    try {
      await bring(missing.slice(i, i + AtOnce));
    } catch {
      // The server is gone, which the page says itself; the colors stay.
    }
  }
}

new MutationObserver(bringAll).observe(document.body, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ["data-cloths"],
});
bringAll();
