/** The list of the steps by phase, and what is done to a step, a phase or an included block. */
import { become, choose, draft, read } from "./draft.js";
import { along, get, insert, pointer, put } from "./tree.js";
import { empty, named, resolve } from "./schema.js";
import { make } from "./fields.js";
import { blockOf } from "./blocks.js";

const at = (id) => document.getElementById(id);
let say = () => {};

const title = (item) =>
  "include" in item ? `Block: ${blockOf(item.include)?.title ?? item.include}` : item.title || item.name || item.id || "without a title";

const isPhase = (names) => names.length === 2;
const side = (phase) => ("include" in phase ? "" : `each ${phase.each ?? "–"}`);

/** How heavy what is found at an item is: told by findings.js. */
let weights = new Map();

export function weigh(found) {
  weights = found;
  draw();
}

function item(names, text, beside) {
  const here = pointer(names);
  const weight = weights.get(here);
  const made = make("button", { type: "button", className: "item", "data-item": here }, make("span", {}, text));
  if (beside) made.append(make("span", { className: "side" }, beside));
  if (weight) made.append(make("span", { className: "weight" }, `${weight.count} ${weight.worst}`));
  if (draft.chosen === here) made.setAttribute("aria-current", "true");
  made.addEventListener("click", () => choose(here));
  return made;
}

/** Draws the list anew; the focus stays where it is in it. */
export function draw() {
  const focused = document.activeElement?.dataset?.item;
  const head = item([], "The procedure itself", "");
  head.id = "head-item";
  at("head-item").replaceWith(head);
  at("phases").replaceChildren(...(draft.tree.phases ?? []).map((phase, i) => {
    const line = make("li", {}, item(["phases", String(i)], title(phase), side(phase)));
    const steps = Array.isArray(phase.steps) ? phase.steps : [];
    if (steps.length > 0) {
      line.append(make("ol", {}, ...steps.map((step, j) => make("li", {}, item(["phases", String(i), "steps", String(j)], title(step), step.kind ?? "")))));
    }
    return line;
  }));
  if (focused !== undefined) focus(draft.chosen);
  const chosen = draft.chosen !== "";
  for (const id of ["up", "down", "double", "remove"]) at(id).disabled = !chosen;
}

export const focus = (here) => document.querySelector(`[data-item="${CSS.escape(here)}"]`)?.focus();

/** Moves what is chosen up (-1) or down (1); a step goes on into the next phase. */
function move(by) {
  const names = along(draft.chosen);
  if (names.length === 0) return;
  const list = names.slice(0, -1);
  const index = Number(names.at(-1));
  const moved = read(names);
  const there = index + by;
  if (there >= 0 && there < read(list).length) {
    become(insert(put(draft.tree, names, undefined), list, there, moved), { choose: pointer([...list, String(there)]) });
    say(`Moved ${by < 0 ? "up" : "down"}.`);
    return;
  }
  const phase = Number(names[1]) + by;
  const other = ["phases", String(phase), "steps"];
  if (isPhase(names) || !Array.isArray(read(other))) {
    say("It cannot be moved further.");
    return;
  }
  const to = by < 0 ? read(other).length : 0;
  become(insert(put(draft.tree, names, undefined), other, to, moved), { choose: pointer([...other, String(to)]) });
  say(`Moved into the phase ${title(read(["phases", String(phase)]))}.`);
}

function remove() {
  const names = along(draft.chosen);
  if (names.length === 0) return;
  const gone = title(read(names));
  const list = names.slice(0, -1);
  const next = put(draft.tree, names, undefined);
  const left = get(next, list).length;
  const index = Math.min(Number(names.at(-1)), left - 1);
  const there = left > 0 ? [...list, String(index)] : names.slice(0, isPhase(names) ? 0 : 2);
  become(next, { choose: pointer(there) });
  say(`Removed: ${gone}. Undo (Ctrl+Z) brings it back.`);
}

/** A copy without its id, which the author gives. */
function double() {
  const names = along(draft.chosen);
  if (names.length === 0) return;
  const { id, ...copy } = structuredClone(read(names));
  const index = Number(names.at(-1)) + 1;
  become(insert(draft.tree, names.slice(0, -1), index, copy), { choose: pointer([...names.slice(0, -1), String(index)]) });
  say(id === undefined ? "Duplicated." : "Duplicated. The copy needs an id of its own.");
}

/** Where a new step goes: after the chosen one, else last of the chosen or of the last phase. */
function place() {
  const names = along(draft.chosen);
  if (names.length === 4) return { list: names.slice(0, 3), index: Number(names[3]) + 1 };
  const phases = draft.tree.phases ?? [];
  const phase = names.length === 2 ? Number(names[1]) : phases.length - 1;
  if (!Array.isArray(phases[phase]?.steps)) return undefined;
  return { list: ["phases", String(phase), "steps"], index: phases[phase].steps.length };
}

function add(what) {
  const to = place();
  if (!to) {
    say("There is no phase of its own to put it into. Add a phase first.");
    return false;
  }
  become(insert(draft.tree, to.list, to.index, what), { choose: pointer([...to.list, String(to.index)]) });
  return true;
}

export function addStep() {
  if (add(empty(named("step"), { kind: at("new-kind").value }))) toForm();
}

function addPhase() {
  const names = along(draft.chosen);
  const index = names.length === 0 ? (draft.tree.phases ?? []).length : Number(names[1]) + 1;
  become(insert(draft.tree, ["phases"], index, { steps: [] }), { choose: pointer(["phases", String(index)]) });
  toForm();
}

function addBlock() {
  const block = draft.blocks.find((each) => each.path === at("new-block").value);
  if (!block) return;
  const made = { include: block.path, revision: block.tree.revision, with: {} };
  if (block.tree.steps) {
    if (add(made)) toForm();
    return;
  }
  const names = along(draft.chosen);
  const index = names.length === 0 ? (draft.tree.phases ?? []).length : Number(names[1]) + 1;
  become(insert(draft.tree, ["phases"], index, made), { choose: pointer(["phases", String(index)]) });
  toForm();
}

/** To the first field of the form. */
export function toForm() {
  const first = document.querySelector("#form input, #form select, #form textarea, #form button");
  (first ?? at("form-name")).focus();
}

/** What can be added, once the file is read. */
export function offer() {
  const kinds = resolve(named("step")).properties.kind.enum;
  at("new-kind").replaceChildren(...kinds.map((kind) => make("option", { value: kind }, kind)));
  at("new-block").replaceChildren(...draft.blocks.map((b) => make("option", { value: b.path }, `${b.tree.title} (${b.tree.steps ? "steps" : "phases"})`)));
  const none = draft.blocks.length === 0;
  at("new-block").disabled = at("add-block").disabled = none;
  at("block-note").textContent = none ? "There is no block below the folder of this file. A library that lies there is offered here." : "";
}

export function listen(speak) {
  say = speak;
  at("up").addEventListener("click", () => move(-1));
  at("down").addEventListener("click", () => move(1));
  at("double").addEventListener("click", double);
  at("remove").addEventListener("click", remove);
  at("add-step").addEventListener("click", addStep);
  at("add-phase").addEventListener("click", addPhase);
  at("add-block").addEventListener("click", addBlock);
  at("steps-part").addEventListener("keydown", (event) => {
    const here = event.target.dataset.item;
    if (here === undefined || event.altKey || event.ctrlKey) return;
    const all = [...document.querySelectorAll("[data-item]")];
    const to = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (to) {
      const next = all[all.indexOf(event.target) + to];
      if (next) {
        choose(next.dataset.item);
        focus(next.dataset.item);
      }
    } else if (event.key === "Delete") remove();
    else if (event.key === "Enter") {
      choose(here);
      toForm();
    } else return;
    event.preventDefault();
  });
}

export { move };
