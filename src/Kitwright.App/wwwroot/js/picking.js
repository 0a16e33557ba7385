// Picking in a quilt by geometry. What is touched becomes part of the address ("at"), and the server answers with all
// that hangs on it; outlines are drawn here, so that the hand sees it at once.

const known = new WeakMap();

/** The places of a figure: [{at, points, patches: [{at, id, points, center}], center}], in inches, y down. */
function placesOf(figure) {
  const raw = figure.dataset.picking;
  let entry = known.get(figure);
  if (entry?.raw !== raw) {
    entry = { raw, places: read(JSON.parse(raw)) };
    known.set(figure, entry);
  }
  return entry.places;
}

function read({ height, blocks, places, frame }) {
  const laid = places.map(([at, id, xx, xy, yx, yy, dx, dy]) => {
    const lay = (x, y) => [xx * x + xy * y + dx, height - (yx * x + yy * y + dy)];
    const points = pointsOf(blocks[id].outline, lay);
    return { at, points, center: centerOf(points), patches: patchesOf(at, blocks[id].patches, lay) };
  });
  return [...laid, { at: "", patches: patchesOf("", frame, (x, y) => [x, height - y]) }];
}

function patchesOf(at, flat, lay) {
  return flat.map(([id, ...xy]) => {
    const points = pointsOf(xy, lay);
    return { id, at: at ? `${at}/${id}` : id, points, center: centerOf(points) };
  });
}

function pointsOf(xy, lay) {
  const points = [];
  for (let i = 0; i < xy.length; i += 2) points.push(lay(xy[i], xy[i + 1]));
  return points;
}

function centerOf(points) {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

function contains(points, [x, y]) {
  let inside = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const [xi, yi] = points[i];
    const [xj, yj] = points[j];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}

function touched(figure, event) {
  const svg = figure.querySelector("svg");
  const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  for (const place of placesOf(figure)) {
    for (const patch of place.patches) {
      if (contains(patch.points, [point.x, point.y])) return { place, patch };
    }
  }
  return null;
}

/** What the address says is touched: a place, perhaps a patch in it, or neither. */
function current(figure) {
  const at = new URL(location.href).searchParams.get("at");
  if (!at) return {};
  for (const place of placesOf(figure)) {
    if (place.at && place.at === at) return { place };
    const patch = place.patches.find((candidate) => candidate.at === at);
    if (patch) return { place, patch };
  }
  return {};
}

const outline = (patches) => patches.map((p) => `M${p.points.map((xy) => xy.join(" ")).join("L")}Z`).join("");

const drawn = new WeakMap();

function draw(figure) {
  // A page changes often and the outlines rarely.
  const { picking, lit: alit } = figure.dataset;
  const svg = figure.querySelector("svg");
  const last = drawn.get(figure);
  if (last?.svg === svg && last.search === location.search && last.alit === alit && last.picking === picking) return;
  drawn.set(figure, { svg, search: location.search, alit, picking });
  const { place, patch } = current(figure);
  const lit = new Set(alit?.split(" "));
  const alike = placesOf(figure).flatMap((each) => each.patches.filter((p) => lit.has(p.id)));
  overlay(figure, "lit under", outline(alike));
  overlay(figure, "lit", outline(alike));
  const picked = outline(patch ? [patch] : place?.at ? [place] : []);
  overlay(figure, "picked under", picked);
  overlay(figure, "picked", picked);
}

function overlay(figure, name, d) {
  const svg = figure.querySelector("svg");
  let path = svg.querySelector(`[class="${name}"]`);
  if (!path) {
    path = document.createElementNS(svg.namespaceURI, "path");
    path.setAttribute("class", name);
    svg.append(path);
  }
  if (path.getAttribute("d") !== d) path.setAttribute("d", d);
}

function go(figure, at) {
  const address = new URL(location.href);
  if (at) address.searchParams.set("at", at);
  else address.searchParams.delete("at");
  Blazor.navigateTo(address.pathname + address.search.replaceAll("%2F", "/"), false, true);
  draw(figure);
}

/** The nearest in a direction; what lies off the line counts double. */
function nearest(items, [x, y], [dx, dy]) {
  let best = null;
  for (const item of items) {
    const along = (item.center[0] - x) * dx + (item.center[1] - y) * dy;
    const across = Math.abs((item.center[0] - x) * dy) + Math.abs((item.center[1] - y) * dx);
    if (along > 0.01 && (!best || along + 2 * across < best.cost)) best = { item, cost: along + 2 * across };
  }
  return best?.item ?? null;
}

const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

function moved(figure, event) {
  const places = placesOf(figure);
  const blocks = places.filter((place) => place.at);
  const frame = places.at(-1).patches;
  const { place, patch } = current(figure);
  const direction = arrows[event.key];
  if (direction) {
    const from = patch ?? place;
    if (!from) return (blocks[0] ?? frame[0]).at;
    const among = patch && place.at ? place.patches : event.shiftKey || patch ? [...blocks, ...frame] : blocks;
    return nearest(among, from.center, direction)?.at ?? null;
  }
  if (event.key === "Enter" && place?.at && !patch) return place.patches[0].at;
  if (event.key === "Escape" && (place || patch)) return patch && place.at ? place.at : "";
  return null;
}

document.addEventListener("click", (event) => {
  const figure = event.target.closest?.("[data-picking]");
  if (!figure || !event.target.closest("svg")) return;
  const hit = touched(figure, event);
  if (!hit) return;
  // A finger is wider than most patches: it takes the block first, and the block is then shown enlarged.
  const byFinger = event.pointerType === "touch" && hit.place.at && current(figure).place !== hit.place;
  go(figure, byFinger ? hit.place.at : hit.patch.at);
});

document.addEventListener("keydown", (event) => {
  const figure = event.target;
  if (!figure.matches?.("[data-picking]")) return;
  const at = moved(figure, event);
  if (at === null) return;
  event.preventDefault();
  go(figure, at);
});

function drawAll() {
  document.querySelectorAll("[data-picking]").forEach(draw);
}

new MutationObserver(drawAll).observe(document.body, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ["data-lit", "data-picking"],
});
drawAll();
