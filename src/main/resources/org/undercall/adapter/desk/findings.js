/** What the reader of files and the check find: at its field, in the list of steps, and as a list. */
import { choose, draft } from "./draft.js";
import { along, get, pointer } from "./tree.js";
import { make } from "./fields.js";
import { weigh } from "./steps.js";

const HEAVY = ["fault", "error", "warning", "remark"];
const at = (id) => document.getElementById(id);
let found = [];
let last = -1;

const told = (f) => (f.expected ? `${f.found}; expected ${f.expected}` : f.found);
/** What the step, phase or head is called that a finding is in. */
function whose(f) {
  const item = get(draft.tree, along(itemOf(f.pointer)));
  return item?.title ?? item?.name ?? item?.include ?? item?.id ?? "";
}

const line = (f) => `${f.code} ${f.severity}: ${f.found ? told(f) : f.meaning}`;

/** The step, phase or head that a place is in. */
function itemOf(place) {
  const names = along(place);
  const deep = names[0] === "phases" ? (names[2] === "steps" && names.length > 3 ? 4 : Math.min(2, names.length)) : 0;
  return deep === 1 ? "" : pointer(names.slice(0, deep));
}

export function show(findings) {
  found = findings;
  at("findings").replaceChildren(...found.map((f, i) => {
    const go = make("button", { type: "button" }, make("b", {}, `${whose(f)} `), line(f), f.file ? ` (in ${f.file})` : "");
    go.addEventListener("click", () => jump(i));
    return make("li", { "data-severity": f.severity }, go);
  }));
  const weights = new Map();
  for (const f of found) {
    const item = itemOf(f.pointer);
    const so = weights.get(item) ?? { count: 0, worst: f.severity };
    so.count++;
    if (HEAVY.indexOf(f.severity) < HEAVY.indexOf(so.worst)) so.worst = f.severity;
    weights.set(item, so);
  }
  weigh(weights);
  mark();
}

/** The innermost field of the form that holds a place. */
function fieldOf(place) {
  for (let names = along(place); names.length > 0; names = names.slice(0, -1)) {
    const field = document.querySelector(`#form [data-at="${CSS.escape(pointer(names))}"]`);
    if (field) return field;
  }
  return undefined;
}

/** Puts the findings of what is chosen to their fields. */
export function mark() {
  document.querySelectorAll("#form .found").forEach((list) => list.replaceChildren());
  document.querySelectorAll("#form [aria-invalid]").forEach((field) => field.removeAttribute("aria-invalid"));
  for (const f of found.filter((each) => itemOf(each.pointer) === draft.chosen)) {
    const field = fieldOf(f.pointer);
    if (!field) continue;
    const list = field.querySelector(":scope > .found");
    list.append(make("li", { "data-severity": f.severity }, line(f), f.todo ? `. ${f.todo}` : ""));
    if (f.severity === "fault" || f.severity === "error") {
      if (field.matches(".field")) field.querySelector("input, select, textarea")?.setAttribute("aria-invalid", "true");
    }
  }
}

/** Goes to the place of a finding. */
function jump(i) {
  const f = found[i];
  if (!f) return;
  last = i;
  choose(itemOf(f.pointer));
  const field = fieldOf(f.pointer) ?? at("form");
  for (let up = field.closest("details"); up; up = up.parentElement.closest("details")) up.open = true;
  (field.querySelector("input, select, textarea, button") ?? at("form-name")).focus();
}

export function next() {
  if (found.length > 0) jump((last + 1) % found.length);
}
