/** Puts a state on the page. Texts go in as text, never as markup. */
import { GEAR, LOADS, OCCASIONS, SIDES, STATUSES, VERDICTS, complete, kicker, lead, nth, open } from "./words.js";
import { dial, set, shape } from "./shapes.js";

const at = (id) => document.getElementById(id);

function text(id, words) {
  const node = at(id);
  if (node.textContent !== String(words)) node.textContent = words;
}

export function node(name, words, className) {
  const made = document.createElement(name);
  if (words) made.textContent = words;
  if (className) made.className = className;
  return made;
}

/** Draws a list anew if what it shows has changed, so that nothing is read out twice. */
function list(id, things, item) {
  const shown = JSON.stringify(things);
  if (at(id).dataset.shown === shown) return;
  at(id).dataset.shown = shown;
  at(id).replaceChildren(...things.map(item));
}

export function draw(board) {
  const { place, task, talk, steps } = board;
  document.body.dataset.phase = task.phase;
  document.body.dataset.complete = String(complete(board));
  frame(board.frame, task.phase);
  text("number", place.number);
  text("of", steps.length);
  plates(place);
  now(board);
  devices(talk.devices);
  heard(talk);
  text("said", talk.said);
  text("prompt", talk.prompt);
  at("asked").hidden = !talk.prompt || talk.said.endsWith(talk.prompt);
  walk(board);
}

/** What stands on top at every moment. */
function frame(top, phase) {
  text("vehicle", top.vehicle);
  text("procedure", top.title);
  text("values", "Values: " + top.values);
  at("values").dataset.invented = String(top.invented);
  text("no-record", OCCASIONS[top.occasion] ?? top.occasion);
  at("no-record").hidden = !at("no-record").textContent;
  list("cautions", top.cautions, (caution) => {
    const item = node("li");
    item.append(node("span", caution.text, "whole"), node("span", caution.brief, "brief"));
    return item;
  });
  const whole = phase === "briefing" ? top.cautions : [];
  list("briefing", whole, (caution) => node("li", caution.text));
  list("here", phase === "briefing" ? [] : top.here, (caution) => node("li", caution));
}

function plates(place) {
  text("side", SIDES[place.side]);
  at("side-shape").setAttribute("href", "#car-" + place.side);
  text("load", LOADS[place.load]);
  at("load-shape").setAttribute("href", "#load-" + place.load);
  const needed = place.load !== "any";
  text("load-holds", needed ? (place.holds ? "confirmed" : "not confirmed") : "no condition");
  at("load-plate").dataset.holds = needed ? String(place.holds) : "free";
}

/** What to do now, and with what. */
function now(board) {
  const { task, place } = board;
  const stage = task.stages.findIndex((s) => !s.closed);
  const staged = task.phase === "torque" || task.phase === "angle";
  const unknown = task.phase === "measure" ? "?" : "";
  text("headline", kicker(board, stage));
  text("lead", lead(board));
  text("title", place.title);
  const hidden = ["briefing", "job-read-back", "shift-change", "all-closed", "ended"];
  at("title").hidden = lead(board) === place.title || hidden.includes(task.phase);
  number(task.digits || unknown, task.unit);
  at("figure").dataset.timer = task.phase === "waiting" ? place.number : "";
  text("beside", task.beside);
  const over = ["all-closed", "ended"].includes(task.phase);
  const order = task.order.length ? ["order " + task.order.join(" ")] : [];
  text("details", over ? "" : [...order, ...task.details].join(" · "));
  which(task);
  dial(task);
  set(task.set, task.order);
  at("figure-box").classList.toggle("of-set", task.set.length > 0);
  list("gear", over ? [] : task.gear, gear);
  stages(task, stage, staged);
  then(board);
}

function number(digits, unit) {
  text("digits", digits);
  text("unit", unit);
  at("unit").classList.toggle("tight", unit === "°");
  at("figure").dataset.length = digits.length > 9 ? "longest" : digits.length > 5 ? "long" : "short";
  at("figure").hidden = !digits;
  alone(!digits);
}

function alone(only) {
  const words = at("lead").textContent.length;
  at("lead").classList.toggle("alone", only);
  at("lead").dataset.length = words > 80 ? "longest" : words > 36 ? "long" : "short";
}

function which(task) {
  const asked = task.phase.endsWith("read-back");
  const next = !asked && task.set.find((spot) => spot.state === "next");
  const done = task.set.filter((spot) => spot.state === "closed").length;
  text("which", next ? "Number " + next.number : "");
  text("order", next ? `${nth(done + 1)} of ${task.set.length}` : "");
}

function gear(one) {
  const [label, sign] = GEAR[one.what];
  const item = node("li");
  item.dataset.what = one.what;
  const words = node("span");
  words.append(node("i", label), " ", node("b", one.name));
  if (one.note) words.append(" ", node("em", one.note));
  item.append(shape(sign), words);
  return item;
}

function stages(task, stage, staged) {
  const marks = task.stages.map((s, i) => ({ ...s, state: s.closed ? "closed" : i === stage && staged ? "now" : "ahead" }));
  list("stages", marks, (s) => {
    const item = node("li");
    item.dataset.state = s.state;
    item.append(shape(s.closed ? "closed" : s.torque ? "torque" : "angle"));
    item.append(node("b", s.text), node("i", { closed: "closed", now: "now", ahead: "later" }[s.state]));
    return item;
  });
}

function then(board) {
  const step = board.steps[board.next - 1];
  const over = ["all-closed", "ended"].includes(board.task.phase);
  const side = step && step.side !== "car" ? SIDES[step.side] + ", " : "";
  text("then", over || !step ? "" : `Then step ${board.next}: ${side}${step.title}`);
}

/** A device that is gone, in words and with a sign; its return, until something is heard. */
function devices(news) {
  at("devices").hidden = news.length === 0;
  list("devices", news, (one) => {
    const item = node("li");
    item.dataset.news = one.news;
    item.append(shape(one.news.endsWith("back") ? "answered" : "waits"), node("span", one.text));
    return item;
  });
}

function heard(talk) {
  const last = talk.heard;
  at("heard").dataset.verdict = last ? last.verdict : "none";
  text("how", last ? last.how : "");
  text("verdict", last ? VERDICTS[last.verdict] : "Nothing");
  at("verdict-shape").setAttribute("href", "#" + (last ? last.verdict : "open"));
  text("heard-words", last ? last.text.replaceAll("[unk]", "…") : "");
}

function walk(board) {
  text("left", `${open(board)} of ${board.steps.length}`);
  const items = board.steps.map((step, i) => {
    const item = node("li");
    item.dataset.status = step.status;
    if (i + 1 === board.place.number) item.setAttribute("aria-current", "step");
    if (i + 1 === board.next) item.dataset.next = "true";
    const side = step.side === "car" ? "" : SIDES[step.side] + " · ";
    const state = STATUSES[step.status] + (step.why ? ", " + step.why : "");
    const near = i + 1 === board.place.number ? "now, " : i + 1 === board.next ? "next, " : "";
    item.append(shape(step.status), node("b", String(i + 1)));
    item.append(node("span", side + step.title), node("i", near + state));
    return item;
  });
  at("steps").replaceChildren(...items);
  inSight();
}

/** Scrolls the list so that the step at hand is in sight, and the one before if there is room. */
export function inSight() {
  const steps = at("steps");
  const here = steps.querySelector("[aria-current]");
  if (!here) return;
  const top = here.offsetTop;
  const before = here.previousElementSibling?.offsetHeight ?? 0;
  const room = steps.clientHeight - here.offsetHeight - (here.nextElementSibling?.offsetHeight ?? 0);
  steps.scrollTop = top - (room >= before ? before : 0);
}

/** Times that run on the page, by the clock of the program. */
export function clocks(board, time) {
  const { made, work, step, runs } = board.times;
  const since = runs ? Math.max(0, time - made) : 0;
  text("work-time", clock(work + since));
  text("step-time", clock(step + since));
  const own = at("figure").dataset.timer;
  at("timers").replaceChildren(
    ...board.timers
      .filter((timer) => String(timer.step) !== own)
      .map((timer) => {
        const item = node("li");
        item.append(node("b", clock(timer.due - time)), node("span", "left, " + timer.what));
        return item;
      }),
  );
  const timer = own && board.timers.find((t) => String(t.step) === own);
  if (own) number(timer ? clock(timer.due - time) : "", timer ? "left" : "");
}

function clock(millis) {
  const seconds = Math.max(0, Math.floor((millis + 500) / 1000));
  const two = (n) => String(n).padStart(2, "0");
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  return (hours ? hours + ":" + two(minutes) : minutes) + ":" + two(seconds % 60);
}
