/** The link to the program: takes the newest state, whole each time, and runs the clocks. */
import { draw, clocks, inSight } from "./draw.js";
import { offer } from "./press.js";

/** The program is heard of every 2 s; after this long it is taken for gone. */
const SILENCE_MILLIS = 5000;
const TICK_MILLIS = 500;
let shown = null;
let ahead = 0;
let alive = 0;
let ticked = Date.now();

const lost = document.getElementById("lost");
const words = document.getElementById("lost-words");

function link(state, text) {
  document.body.dataset.link = state;
  lost.hidden = state === "open";
  if (words.textContent !== text) words.textContent = text;
}

function heardOf() {
  alive = performance.now();
  if (shown) link("open", "");
}

/** Says at once that what stands here may not be so any more; nothing runs on. */
function old(why) {
  if (document.body.dataset.link === "lost") return;
  const since = new Date().toTimeString().slice(0, 8);
  const what = shown ? `Old: this is how it was at ${since}. Do not work by it.` : "Nothing is shown yet.";
  link("lost", `${why} ${what}`);
}

function listen() {
  const events = new EventSource("/events");
  events.addEventListener("state", (event) => {
    const { now, board } = JSON.parse(event.data);
    ahead = now - Date.now();
    shown = board;
    heardOf();
    draw(board);
    offer(board);
    clocks(board, Date.now() + ahead);
    fit();
    document.body.dataset.shown = event.lastEventId;
  });
  events.addEventListener("beat", heardOf);
  events.addEventListener("bye", () => old("The program has ended."));
  events.onerror = () => {
    old("No connection.");
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
  const slept = Date.now() - ticked > SILENCE_MILLIS;
  ticked = Date.now();
  if (shown && (slept || performance.now() - alive > SILENCE_MILLIS)) old("No connection.");
  if (shown && document.body.dataset.link === "open") clocks(shown, Date.now() + ahead);
}, TICK_MILLIS);
addEventListener("offline", () => old("No connection."));

const frame = document.getElementById("frame");

/** The list beside the work takes the height that the top leaves, so that its step is in sight. */
function fit() {
  document.documentElement.style.setProperty("--top", frame.offsetHeight + "px");
  inSight();
}
new ResizeObserver(fit).observe(frame);
new ResizeObserver(inSight).observe(document.getElementById("steps"));
listen();
