// In a drawing, arrow keys and the space bar move the mark and not the page; the server does the rest.
const own = ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown", " "];

document.addEventListener("keydown", (event) => {
  if (event.target.matches?.("[data-drawing]") && own.includes(event.key)) event.preventDefault();
});
