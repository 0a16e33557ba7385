// A quilt larger than its place on the page: the picture is enlarged by steps and pans as anything that scrolls does,
// by wheel, finger and keyboard, without being drawn again.
const STEPS = [1, 2, 4];

function step(view, by) {
  const before = Number(view.dataset.near ?? 1);
  const after = STEPS[STEPS.indexOf(before) + by];
  if (!after) return;
  // The middle stays in the middle.
  const x = (view.scrollLeft + view.clientWidth / 2) / view.scrollWidth;
  const y = (view.scrollTop + view.clientHeight / 2) / view.scrollHeight;
  view.dataset.near = after;
  view.scrollTo(x * view.scrollWidth - view.clientWidth / 2, y * view.scrollHeight - view.clientHeight / 2);
}

document.addEventListener("click", (event) => {
  const button = event.target.closest?.("[data-nearer]");
  if (button) step(button.closest(".picking").querySelector(".view"), Number(button.dataset.nearer));
});

document.addEventListener("keydown", (event) => {
  if (!event.target.matches?.("[data-picking]") || event.ctrlKey || event.metaKey) return;
  const by = { "+": 1, "-": -1 }[event.key];
  if (by) step(event.target.querySelector(".view"), by);
});
