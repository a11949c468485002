/** Joins the parts of the desk: what is typed is judged a moment later, and shown everywhere. */
import { choose, draft, read, redo, undo, whenChanged, become } from "./draft.js";
import { along, places, pointer, put } from "./tree.js";
import { load, named, whole } from "./schema.js";
import { button, givenNames, make } from "./fields.js";
import { fields } from "./form.js";
import { include } from "./blocks.js";
import { post } from "./ask.js";
import * as steps from "./steps.js";
import * as findings from "./findings.js";
import * as saving from "./saving.js";
import * as practice from "./practice.js";

const QUIET_MILLIS = 150;
const PARTS = ["steps-name", "form-name", "findings-name", "walk-name", "practice-name"];
const at = (id) => document.getElementById(id);
const say = (words) => { at("status").textContent = words; };
let walk = [];
let asked = 0;
let timer = 0;

/** The form of what is chosen; the focus stays at its field. */
function form() {
  const focused = document.activeElement?.closest?.("#form [data-at], #form [data-adds]");
  const was = focused && { at: focused.dataset.adds ?? focused.dataset.at, adds: "adds" in focused.dataset };
  const names = along(draft.chosen);
  const value = read(names);
  if (value === undefined) return choose("");
  const phase = names.length === 2;
  const made =
    "include" in value && names.length > 0 ? include(names)
    : names.length === 0 ? fields(whole(), [], ["phases"])
    : phase ? fields(named("phase"), names, ["steps"])
    : fields(named("step"), names);
  at("form").replaceChildren(givenNames(), ...made);
  at("form-name").textContent = names.length === 0 ? "The procedure itself" : phase ? `Phase: ${value.name ?? value.include ?? "–"}` : `Step: ${value.title ?? value.include ?? value.id ?? "–"}`;
  at("form-note").textContent = "include" in value ? "A block is kept as a block: its steps are told beside, and changed in its own file." : "What is empty is not written.";
  if (was) back(was);
}

/** After something was added, to the last field that is new; else to where the focus was. */
function back(was) {
  const spot = document.querySelector(`#form [data-at="${CSS.escape(was.at)}"]`);
  const entries = spot?.querySelectorAll(":scope > .entry") ?? [];
  const into = was.adds && entries.length > 0 ? entries[entries.length - 1] : spot;
  (into?.querySelector("input, select, textarea, button") ?? at("form-name")).focus();
}

function top() {
  const { title, vehicle, values, cautions } = draft.tree;
  at("title").textContent = title || draft.name;
  at("vehicle").textContent = vehicle ?? "";
  at("values").hidden = !values;
  at("values").textContent = `Values: ${values}`;
  at("values").dataset.invented = String(String(values).toLowerCase().includes("invented"));
  at("cautions").replaceChildren(...(Array.isArray(cautions) ? cautions : []).map((c) => make("li", {}, String(c?.text ?? c))));
  at("state").hidden = !draft.unsaved;
  at("state").dataset.state = "unsaved";
  at("state").textContent = "Not saved";
  at("file").textContent = draft.path ?? "";
  at("undo").disabled = !draft.canUndo;
  at("redo").disabled = !draft.canRedo;
  document.title = `${draft.unsaved ? "Not saved: " : ""}${draft.name} – Undercall desk`;
}

/** What is read aloud of the chosen step, and what is expected as an answer. */
function tell() {
  const here = draft.chosen;
  const lines = here === "" ? walk.slice(0, 1) : walk.filter((each, i) => i > 0 && each.at === here);
  at("walk").replaceChildren(...lines.map((each) =>
    make("li", {}, make("p", { className: "soft" }, `${each.id}, ${each.side}`), make("p", {}, `Hear: ${each.hear}`), ...(each.say ? [make("p", { className: "say" }, `Say: ${each.say}`)] : []))));
  const old = at("walk").dataset.old === "true";
  at("walk-note").textContent = old ? "It cannot be walked while it has faults; this is how it was before them." : lines.length === 0 ? "Choose a step. What is said at the start stands at the procedure itself." : "";
}

async function judge() {
  const mine = ++asked;
  const tree = draft.tree;
  const answer = await post("/judge", { tree });
  if (mine !== asked) return;
  if (answer.faults) {
    at("judged").textContent = answer.faults.map((f) => f.told).join(" ");
    return;
  }
  if (answer.usable) walk = answer.walk;
  at("walk").dataset.old = String(!answer.usable && walk.length > 0);
  at("judged").textContent = answer.findings.length === 0 ? "Nothing is found." : `${answer.findings.length} found. ${answer.usable ? "It can be walked." : "With a fault it cannot be walked."}`;
  findings.show(answer.findings);
  tell();
  document.body.dataset.judged = String(mine);
}

/** An id that others name is changed there only if that is wanted. */
let idAt = "";
let idWas = "";
function watchId() {
  at("form").addEventListener("focusin", (event) => {
    const field = event.target.closest("[data-at$='/id']");
    if (field && field.dataset.at !== idAt) [idAt, idWas] = [field.dataset.at, read(along(field.dataset.at))];
  });
  at("form").addEventListener("change", (event) => {
    const field = event.target.closest("[data-at$='/id']");
    if (field?.dataset.at === idAt) renamed(idWas, read(along(idAt)));
  });
}

function renamed(was, now) {
  const lists = (value, names) => value === was && names.some((n) => n === "after" || n === "undoes" || n.endsWith("-after"));
  const found = was && now && was !== now ? places(draft.tree, lists) : [];
  at("rename").hidden = found.length === 0;
  if (found.length === 0) return;
  const keep = button("Leave it", () => { at("rename").hidden = true; });
  const also = button("Rename it there too", () => {
    at("rename").hidden = true;
    become(found.reduce((tree, names) => put(tree, names, now), draft.tree));
    say(`Renamed in ${found.length} places.`);
    idWas = now;
  });
  at("rename").replaceChildren(make("span", {}, `“${was}” is still named in ${found.length} ${found.length === 1 ? "place" : "places"} (${found.map(pointer).join(", ")}).`), also, keep);
}

whenChanged((anew) => {
  top();
  steps.draw();
  if (anew) form();
  findings.mark();
  tell();
  practice.changed();
  clearTimeout(timer);
  timer = setTimeout(judge, QUIET_MILLIS);
});

function part(by) {
  const now = PARTS.findIndex((id) => at(id).closest(".part").contains(document.activeElement));
  at(PARTS[(now + by + PARTS.length) % PARTS.length]).focus();
}

const KEYS = {
  "C-s": () => saving.save(say),
  "C-z": () => say(undo() ? "Undone." : "There is nothing to undo."),
  "C-Z": () => say(redo() ? "Done again." : "There is nothing to do again."),
  "C-y": () => say(redo() ? "Done again." : "There is nothing to do again."),
  "C-Enter": steps.addStep,
  "A-ArrowUp": () => steps.move(-1),
  "A-ArrowDown": () => steps.move(1),
  "F8": findings.next,
  "F6": () => part(1),
  "S-F6": () => part(-1),
};

addEventListener("keydown", (event) => {
  if (at("ask").open) return;
  const shift = event.shiftKey && event.key.length > 1 ? "S-" : "";
  const act = KEYS[(event.ctrlKey || event.metaKey ? "C-" : "") + (event.altKey ? "A-" : "") + shift + event.key];
  const own = event.target.id === "phrase" && /^C-[zZy]$/.test(`C-${event.key}`);
  if (!act || own) return;
  event.preventDefault();
  act();
});
addEventListener("beforeunload", (event) => {
  if (!draft.unsaved) return;
  event.preventDefault();
  event.returnValue = true;
});
at("form").addEventListener("submit", (event) => event.preventDefault());
at("save").addEventListener("click", KEYS["C-s"]);
at("undo").addEventListener("click", KEYS["C-z"]);
at("redo").addEventListener("click", KEYS["C-Z"]);
at("next-finding").addEventListener("click", KEYS.F8);
at("whole-text").addEventListener("click", saving.wholeText);
/** What stands beside the form stays in sight below the top, however high that is. */
const head = document.querySelector(".top");
new ResizeObserver(() => document.documentElement.style.setProperty("--top", `${head.offsetHeight}px`)).observe(head);
steps.listen(say);
practice.listen();
watchId();
await load();
const first = await saving.reread();
if (first.faults) say(first.faults.map((f) => `${f.code} ${f.place}: ${f.told}`).join("\n"));
steps.offer();
document.body.dataset.ready = "true";
