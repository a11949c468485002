/** The words of the board for what the program names. */
export const SIDES = {
  left: "Left",
  right: "Right",
  "front-left": "Front left",
  "front-right": "Front right",
  "rear-left": "Rear left",
  "rear-right": "Rear right",
  car: "Whole car",
};
export const LOADS = { any: "Any height", "ride-height": "Ride height", "full-droop": "Full droop" };
export const VERDICTS = {
  counted: "Counted",
  waits: "Answer it",
  answered: "Answered",
  refused: "Refused",
  "no-phrase": "Not counted",
};
export const STATUSES = { open: "open", "put-off": "put off", snug: "hand tight only", closed: "closed" };
export const GEAR = {
  socket: ["Socket", "socket"],
  wrench: ["Wrench", "wrench"],
  "no-wrench": ["Wrench", "refused"],
  turn: ["Turn", "turn-by"],
  adaptor: ["Adaptor", "wrench"],
  "counter-hold": ["Hold with", "mind"],
  "left-hand": ["Mind", "mind"],
};
export const OCCASIONS = {
  work: "",
  rehearsal: "Rehearsal: no record of work",
  demonstration: "Demonstration: no record of work",
};

/** Above the lead: where in the work this is. */
const KICKERS = {
  briefing: "Before the work",
  "job-read-back": "About the job, not yet counted",
  do: "Work to do",
  check: "Work done, now its check",
  measure: "To measure",
  hardware: "Before it is tightened",
  marking: "Before it is tightened",
  "by-hand": "Before it is tightened",
  gate: "Before it is tightened",
  "run-down": "Before it is tightened",
  begun: "Broken off",
  trouble: "Not settled",
  waiting: "To wait",
  load: "To bring about",
  "hand-over": "To pass on",
  "read-back": "Heard, not yet counted",
  "load-read-back": "Heard, not yet counted",
  witness: "Done, not yet seen",
  "witness-read-back": "Heard, not yet counted",
  noting: "Note",
  "on-hold": "Nothing counts now",
  "shift-change": "Handed over",
  "all-closed": "Nothing is open",
  "closed-step": "Closed already",
  ended: "Over",
};
/** What to do now, where that is not the step itself. */
const LEADS = {
  briefing: "Read the cautions",
  "job-read-back": "Is this right?",
  hardware: "Fit a new part",
  marking: "Read out the head marking",
  "by-hand": "Run it in by hand",
  "run-down": "Call the torque it runs down with",
  begun: "Say how far it is turned",
  trouble: "Settle what went wrong",
  "read-back": "Is this right?",
  "load-read-back": "Say it back with the side",
  witness: "Who saw it? Say the name",
  "witness-read-back": "Say it back, who saw it",
  noting: "Speak the note",
  "on-hold": "The work is paused",
  "shift-change": "Who takes over?",
  "all-closed": "All steps are closed",
};

/** How many steps are not closed. */
export function open(board) {
  return board.steps.filter((step) => step.status !== "closed").length;
}

/** Whether everything is closed, and the session says so itself. */
export function complete(board) {
  return open(board) === 0 && ["all-closed", "ended"].includes(board.task.phase);
}

export function kicker({ task }, stage) {
  const staged = { torque: "Torque", angle: "Angle" }[task.phase];
  return staged ? `${staged}, stage ${stage + 1} of ${task.stages.length}` : (KICKERS[task.phase] ?? task.phase);
}

export function lead(board) {
  const { task, place } = board;
  if (task.phase === "check") return task.check;
  if (task.phase === "gate") return "First: " + LOADS[place.load].toLowerCase();
  if (task.phase === "ended") {
    const left = open(board);
    return left === 0 ? "The work is complete" : `Ended with ${left} ${left === 1 ? "step" : "steps"} open`;
  }
  return LEADS[task.phase] ?? place.title;
}

/** A position in a row, such as "third". */
export function nth(n) {
  const words = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];
  return words[n - 1] ?? "number " + n;
}
