/** The link to the program: takes the newest state, whole each time, and runs the clocks. */
import { draw, clocks } from "./draw.js";
import { offer } from "./press.js";

const SILENCE_MILLIS = 25000;
let shown = null;
let ahead = 0;
let alive = 0;

const lost = document.getElementById("lost");
const words = document.getElementById("lost-words");

function link(state, text) {
  document.body.dataset.link = state;
  lost.hidden = state === "open";
  words.textContent = text;
}

function open() {
  const events = new EventSource("/events");
  events.addEventListener("state", (event) => {
    const { now, board } = JSON.parse(event.data);
    ahead = now - Date.now();
    alive = performance.now();
    shown = board;
    link("open", "");
    draw(board);
    offer(board);
    clocks(board, Date.now() + ahead);
    document.body.dataset.shown = event.lastEventId;
  });
  events.addEventListener("beat", () => {
    alive = performance.now();
    if (shown) link("open", "");
  });
  events.addEventListener("bye", () => link("lost", "The program has ended. This is how it was left."));
  events.onerror = () => {
    if (document.body.dataset.link === "open") {
      link("lost", "No connection. What is shown may be old.");
    }
    if (events.readyState === EventSource.CLOSED) {
      setTimeout(letIn, 3000);
    }
  };
}

/** The program answers but does not know this browser: its page asks for the code. */
async function letIn() {
  try {
    await fetch("/", { cache: "no-store" });
    location.reload();
  } catch {
    setTimeout(letIn, 3000);
  }
}

setInterval(() => {
  if (shown) clocks(shown, Date.now() + ahead);
  if (shown && performance.now() - alive > SILENCE_MILLIS) {
    link("lost", "No connection. What is shown may be old.");
  }
}, 500);

const dark = matchMedia("(prefers-color-scheme: dark)");
const theme = document.getElementById("theme");

function kept() {
  try {
    return localStorage.getItem("theme");
  } catch {
    return null;
  }
}

function paint() {
  const name = kept() ?? (dark.matches ? "dark" : "light");
  document.documentElement.dataset.theme = name;
  theme.textContent = name === "dark" ? "Light page" : "Dark page";
}

theme.addEventListener("click", () => {
  const next = document.documentElement.dataset.theme === "dark" ? "light" : "dark";
  try {
    localStorage.setItem("theme", next);
  } catch {
    document.documentElement.dataset.theme = next;
    return;
  }
  paint();
});
dark.addEventListener("change", paint);
paint();
open();
