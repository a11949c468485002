/** A rehearsal with typed phrases, of the procedure as it stood when it was begun. */
import { draft } from "./draft.js";
import { make } from "./fields.js";
import { post } from "./ask.js";

const LOOK_MILLIS = 1000;
const at = (id) => document.getElementById(id);
let number = 0;
let known = 0;
let begun = {};
let ended = true;

function take(answer) {
  if (answer.faults) {
    at("practice-note").textContent = answer.faults.map((f) => `${f.code} ${f.told}`).join(" ");
    ended = answer.faults[0].code === "DSK-006" ? true : ended;
    return;
  }
  for (const line of answer.lines) {
    at("talk").append(make("p", { className: line.typed ? "typed" : "said" }, (line.typed ? "You: " : "Undercall: ") + line.words));
  }
  known += answer.lines.length;
  ended = answer.ended;
  if (answer.lines.length > 0) at("talk").scrollTop = at("talk").scrollHeight;
  if (ended) at("practice-note").textContent = "The rehearsal is over. Nothing of it was kept.";
}

async function begin() {
  at("talk").replaceChildren();
  known = 0;
  begun = draft.tree;
  const answer = await post("/begin", { tree: begun });
  at("practice-note").textContent = "A rehearsal, no record of work. Nothing of it is kept.";
  take(answer);
  if (answer.faults) return;
  number = answer.number;
  at("talk").hidden = at("say").hidden = false;
  at("begin").textContent = "Begin it anew";
  at("phrase").focus();
}

async function say(event) {
  event.preventDefault();
  const phrase = at("phrase").value.trim();
  if (phrase === "" || ended) return;
  at("phrase").value = "";
  take(await post("/say", { number, phrase, from: known }));
}

/** What the procedure was changed by is not in the rehearsal. */
export function changed() {
  if (!ended && begun !== draft.tree) at("practice-note").textContent = "The procedure was changed since this rehearsal began: begin it anew to hear that.";
}

export function listen() {
  at("begin").addEventListener("click", begin);
  at("say").addEventListener("submit", say);
  setInterval(async () => {
    if (!ended && !document.hidden) {
      const from = known;
      const answer = await post("/heard", { number, from });
      if (from === known) take(answer);
    }
  }, LOOK_MILLIS);
}
