/** Puts a state on the page. Texts go in as text, never as markup. */
const SVG = "http://www.w3.org/2000/svg";
const at = (id) => document.getElementById(id);

const SIDES = {
  left: "Left",
  right: "Right",
  "front-left": "Front left",
  "front-right": "Front right",
  "rear-left": "Rear left",
  "rear-right": "Rear right",
  car: "Whole car",
};
const LOADS = { any: "Any height", "ride-height": "Ride height", "full-droop": "Full droop" };
const VERDICTS = {
  counted: "Counted",
  waits: "Answer it",
  answered: "Answered",
  refused: "Refused",
  "no-phrase": "Not counted",
};
const HEADLINES = {
  briefing: "Cautions",
  do: "Do",
  check: "Check",
  measure: "Measure",
  hardware: "New part",
  marking: "Head marking",
  gate: "Load first",
  begun: "How far?",
  trouble: "Went wrong",
  torque: "Torque",
  angle: "Angle",
  waiting: "Wait",
  load: "Load",
  "hand-over": "Hand over",
  witness: "Witness?",
  "read-back": "Right?",
  "load-read-back": "Read back",
  "witness-read-back": "Seen?",
  noting: "Note",
  "on-hold": "On hold",
  "shift-change": "Next technician",
  "all-closed": "All closed",
  "closed-step": "Closed",
  ended: "Ended",
};
const OCCASIONS = {
  rehearsal: "Rehearsal: no record of work",
  demonstration: "Demonstration: no record of work",
};
const STATUSES = { open: "open", "put-off": "put off", snug: "hand tight only", closed: "closed" };

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

function shape(id) {
  const svg = document.createElementNS(SVG, "svg");
  const use = document.createElementNS(SVG, "use");
  use.setAttribute("href", "#" + id);
  svg.setAttribute("aria-hidden", "true");
  svg.append(use);
  return svg;
}

export function draw(board) {
  const { place, task, talk, steps } = board;
  text("number", place.number);
  text("of", steps.length);
  text("title", task.phase === "briefing" ? board.procedure : place.title);
  text("procedure", board.procedure);
  text("no-record", OCCASIONS[board.occasion] ?? "");
  at("no-record").hidden = !OCCASIONS[board.occasion];
  side(place, task);
  figure(task, board);
  devices(talk.devices);
  heard(talk);
  text("said", talk.said);
  text("prompt", talk.prompt);
  walk(board);
}

function side(place) {
  text("side", SIDES[place.side]);
  at("side-shape").setAttribute("href", "#car-" + place.side);
  text("load", LOADS[place.load]);
  at("load-shape").setAttribute("href", "#load-" + place.load);
  const needed = place.load !== "any";
  text("load-holds", needed ? (place.holds ? "confirmed" : "not confirmed") : "no condition");
  at("load-plate").dataset.holds = needed ? String(place.holds) : "free";
}

function figure(task, board) {
  const stage = task.stages.findIndex((s) => !s.closed);
  const staged = task.phase === "torque" || task.phase === "angle";
  const unknown = task.phase === "measure" ? "?" : "";
  text("digits", task.digits || unknown);
  text("unit", task.unit === "°" ? "°" : task.unit);
  at("unit").classList.toggle("tight", task.unit === "°");
  const headline = HEADLINES[task.phase] ?? task.phase;
  text("headline", staged ? `${headline}, stage ${stage + 1} of ${task.stages.length}` : headline);
  at("headline").classList.toggle("alone", !task.digits && !unknown);
  at("figure").hidden = !task.digits && !unknown;
  text("beside", task.beside);
  text("details", task.details.join(" · "));
  at("prompt").hidden = staged;
  dial(task);
  set(task.set);
  at("stages").replaceChildren(
    ...task.stages.map((s, i) => {
      const item = node("li");
      item.dataset.state = s.closed ? "closed" : i === stage && staged ? "now" : "ahead";
      const word = { closed: "closed", now: "now", ahead: "later" }[item.dataset.state];
      item.append(shape(s.closed ? "closed" : s.torque ? "torque" : "angle"));
      item.append(node("b", s.text), node("i", word));
      return item;
    }),
  );
  at("figure").dataset.timer = task.phase === "waiting" ? board.place.number : "";
}

/** Shows how far to turn, clockwise from the top. */
function dial(task) {
  const degrees = Number(task.digits);
  const shown = task.phase === "angle" && degrees > 0;
  at("dial").toggleAttribute("hidden", !shown);
  if (!shown) return;
  const turn = Math.min(degrees, 359.9);
  const end = [52 * Math.sin((turn * Math.PI) / 180), -52 * Math.cos((turn * Math.PI) / 180)];
  const far = turn > 180 ? 1 : 0;
  at("turn").setAttribute("d", `M0 0V-52A52 52 0 ${far} 1 ${end[0].toFixed(2)} ${end[1].toFixed(2)}Z`);
  at("needle").setAttribute("d", `M0 0L${end[0].toFixed(2)} ${end[1].toFixed(2)}`);
  at("dial").setAttribute("aria-label", `A turn of ${task.digits} degrees, clockwise`);
}

/** The fasteners of a set around the number of the next: called ones filled, open ones hollow. */
function set(spots) {
  const next = spots.find((spot) => spot.state === "next");
  at("set").toggleAttribute("hidden", spots.length === 0);
  const around = 2 * Math.PI * 42;
  const radius = Math.min(15, (around / Math.max(spots.length, 1)) * 0.42);
  at("set").replaceChildren(
    ...spots.map((spot, i) => {
      const turn = (2 * Math.PI * i) / spots.length;
      const group = svg("g", { class: spot.state });
      const place = `translate(${(42 * Math.sin(turn)).toFixed(1)} ${(-42 * Math.cos(turn)).toFixed(1)})`;
      group.setAttribute("transform", place);
      const number = svg("text", { y: (radius * 0.36).toFixed(1), "font-size": radius.toFixed(1) });
      number.textContent = spot.state === "closed" ? "\u2713" : String(spot.number);
      group.append(svg("circle", { r: radius.toFixed(1) }), number);
      return group;
    }),
  );
  if (next) {
    const number = svg("text", { class: "middle", y: 12 });
    number.textContent = String(next.number);
    at("set").append(number);
  }
  const numbers = (state) => spots.filter((spot) => spot.state === state).map((spot) => spot.number);
  const done = numbers("closed").join(", ") || "none";
  at("set").setAttribute("aria-label", `Of ${spots.length}, done: ${done}; next: ${next ? next.number : "none"}`);
}

function svg(name, attributes) {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

/** A device that is gone, in words and with a sign; its return, until something is heard. */
function devices(news) {
  const list = at("devices");
  const shown = news.map((one) => one.text).join(" ");
  if (list.dataset.shown === shown) return;
  list.dataset.shown = shown;
  list.hidden = news.length === 0;
  list.replaceChildren(
    ...news.map((one) => {
      const item = node("li");
      item.dataset.news = one.news;
      item.append(shape(one.news.endsWith("back") ? "counted" : "waits"), node("span", one.text));
      return item;
    }),
  );
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
  const open = board.steps.filter((s) => s.status !== "closed").length;
  text("left", `${open} of ${board.steps.length}`);
  const items = board.steps.map((step, i) => {
    const item = node("li");
    item.dataset.status = step.status;
    if (i + 1 === board.place.number) item.setAttribute("aria-current", "step");
    const side = step.side === "car" ? "" : SIDES[step.side] + " · ";
    const state = STATUSES[step.status] + (step.why ? ", " + step.why : "");
    item.append(shape(step.status), node("b", String(i + 1)));
    item.append(node("span", side + step.title), node("i", state));
    return item;
  });
  const list = at("steps");
  list.replaceChildren(...items);
  const now = items[board.place.number - 1];
  list.scrollTop = now.offsetTop - list.offsetTop - list.clientHeight / 3;
  at("ticks").replaceChildren(
    ...board.steps.map((step, i) => {
      const tick = node("li");
      tick.dataset.status = step.status;
      if (i + 1 === board.place.number) tick.className = "here";
      return tick;
    }),
  );
}

/** Times that run on the page, by the clock of the program. */
export function clocks(board, now) {
  const { made, work, step, runs } = board.times;
  const since = runs ? Math.max(0, now - made) : 0;
  text("work-time", clock(work + since));
  text("step-time", clock(step + since));
  const own = at("figure").dataset.timer;
  at("timers").replaceChildren(
    ...board.timers
      .filter((timer) => String(timer.step) !== own)
      .map((timer) => {
        const item = node("li");
        item.append(node("b", clock(timer.due - now)), node("span", "left, " + timer.what));
        return item;
      }),
  );
  const timer = own && board.timers.find((t) => String(t.step) === own);
  if (own) {
    text("digits", timer ? clock(timer.due - now) : "");
    text("unit", timer ? "left" : "");
    at("figure").hidden = !timer;
    at("headline").classList.toggle("alone", !timer);
  }
}

function clock(millis) {
  const seconds = Math.max(0, Math.floor((millis + 500) / 1000));
  const two = (n) => String(n).padStart(2, "0");
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  return (hours ? hours + ":" + two(minutes) : minutes) + ":" + two(seconds % 60);
}
