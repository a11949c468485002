/** Buttons and the field: each carries the number of the state it was made for. */
import { node } from "./draw.js";

const GROUPS = {
  "go-on": "go-on",
  "take-back": "take-back",
  load: "load-choices",
  wrong: "wrong",
  leave: "leave",
  except: "except",
  ask: "ask",
  work: "work",
};
/** Before the cautions are understood the job can be told; it is read back like anything else. */
const JOB_PHASES = ["briefing", "job-read-back", "shift-change"];
const SETTLE_MILLIS = 400;
const note = document.getElementById("note");
let state = -1;
let drawn = "";
let drawnAt = 0;
let armed = null;

function tell(words) {
  note.textContent = words;
}

export function offer(board) {
  if (board.state !== state) disarm();
  state = board.state;
  document.getElementById("job").hidden = !JOB_PHASES.includes(board.task.phase);
  const next = JSON.stringify(board.choices);
  if (next === drawn) return;
  drawn = next;
  drawnAt = performance.now();
  const focused = document.activeElement?.dataset?.phrase;
  for (const [group, id] of Object.entries(GROUPS)) {
    const choices = board.choices.filter((choice) => choice.group === group);
    const box = document.getElementById(id);
    box.replaceChildren(...apart(choices));
    const head = box.previousElementSibling;
    if (head?.localName === "h2") head.hidden = choices.length === 0;
  }
  const ahead = board.choices.filter((choice) => choice.group === "go-on").length;
  document.getElementById("answers").dataset.many = String(ahead > 1);
  const same = [...document.querySelectorAll("[data-phrase]")].find((b) => b.dataset.phrase === focused);
  if (focused) (same ?? document.getElementById("phrase")).focus({ preventScroll: true });
}

/** What closes or confirms stands in a row of its own, away from what cancels. */
function apart(choices) {
  const closing = choices.filter((choice) => choice.effect === "closes");
  const others = choices.filter((choice) => choice.effect !== "closes");
  return [closing, others]
    .filter((some) => some.length > 0)
    .map((some) => {
      const row = node("div", "", "choices");
      row.append(...some.map(button));
      return row;
    });
}

function button(choice) {
  const made = node("button");
  made.type = "button";
  made.append(node("b", choice.action), " ", node("small", "say: " + choice.phrase));
  made.dataset.phrase = choice.phrase;
  made.dataset.effect = choice.effect;
  made.dataset.twice = String(choice.twice);
  made.addEventListener("keydown", (event) => {
    if (event.repeat) event.preventDefault();
  });
  made.addEventListener("click", () => press(choice, made));
  return made;
}

async function press(choice, made) {
  if (document.body.dataset.link !== "open") {
    tell("No connection. Nothing was done.");
    return;
  }
  if (performance.now() - drawnAt < SETTLE_MILLIS) {
    tell("The buttons have just changed. Press again if you still mean it.");
    return;
  }
  const again = armed?.phrase === choice.phrase ? armed.again : undefined;
  const answer = await send({ state, phrase: choice.phrase, pressed: true, again });
  if (answer.outcome === "again") {
    arm(choice, made, answer);
  } else {
    disarm();
  }
}

function arm(choice, made, answer) {
  if (armed?.again === answer.again) return;
  disarm();
  made.dataset.armed = "true";
  made.style.width = made.offsetWidth + "px";
  made.lastElementChild.textContent = "press again";
  const forget = setTimeout(() => {
    disarm();
    tell("Not pressed a second time. Nothing was done.");
  }, answer.latest);
  armed = { phrase: choice.phrase, again: answer.again, made, forget };
  tell("Press it a second time: " + choice.action);
}

function disarm() {
  if (!armed) return;
  clearTimeout(armed.forget);
  armed.made.lastElementChild.textContent = "say: " + armed.phrase;
  armed.made.style.width = "";
  delete armed.made.dataset.armed;
  armed = null;
}

async function send(body) {
  tell(body.again || !body.pressed ? "Handed over. It is taken when the program has spoken." : "");
  try {
    const answer = await fetch("/press", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
    });
    const type = answer.headers.get("Content-Type") ?? "";
    const said = type.startsWith("application/json")
      ? await answer.json()
      : { outcome: "fault", message: await answer.text() };
    tell(said.message ?? "");
    return said;
  } catch {
    tell("The program does not answer. Nothing was done.");
    return { outcome: "fault" };
  }
}

document.addEventListener("keydown", (event) => {
  if (event.key === "Escape" && armed) {
    disarm();
    tell("Dropped. Nothing was done.");
  }
});

const field = document.getElementById("phrase");
document.getElementById("typed").addEventListener("submit", async (event) => {
  event.preventDefault();
  const phrase = field.value.trim();
  if (!phrase) return;
  const answer = await send({ state, phrase, pressed: false });
  if (answer.outcome === "taken") field.value = "";
});

const about = document.getElementById("job-text");
document.getElementById("job").addEventListener("submit", async (event) => {
  event.preventDefault();
  const text = about.value.trim();
  if (!text) return;
  const phrase = document.getElementById("job-what").value + " " + text;
  const answer = await send({ state, phrase, pressed: false });
  if (answer.outcome === "taken") about.value = "";
});
