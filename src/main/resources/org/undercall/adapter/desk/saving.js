/** Saving: nothing is written over silently, and nothing that was typed is lost. */
import { draft, lay, wasSaved } from "./draft.js";
import { ask, post } from "./ask.js";

const BACK = ["back", "Back to the page"];
let saving = false;

const lines = (faults) => faults.map((f) => [f.code, f.place && `${f.place}:`, f.told].filter(Boolean).join(" ")).join("\n");

export async function save(say) {
  if (saving) return;
  saving = true;
  try {
    await attempt({ draft: false, comments: false }, say);
  } finally {
    saving = false;
  }
}

async function attempt(may, say) {
  const tree = draft.tree;
  const answer = await post("/save", { tree, base: draft.base, ...may });
  if (!answer.faults) {
    wasSaved(tree, answer.base);
    say(answer.draft ? "Saved as a draft: it has faults, and no work begins with it." : `Saved at ${new Date().toTimeString().slice(0, 5)}.`);
    return;
  }
  const code = answer.faults[0].code;
  if (code === "DSK-002") await changed(answer.faults, say);
  else if (code === "DSK-003") await faulty(may, answer.faults, say);
  else if (code === "DSK-004") await comments(may, answer.faults, say);
  else await refused(answer.faults, say);
}

async function changed(faults, say) {
  const chosen = await ask(
    "The file was changed meanwhile",
    `${lines(faults)}\nAnother page or program has saved it since. Nothing was written, and what you have here is still here.`,
    [["beside", "Save mine beside it, under another name"], ["read", "Drop mine and read the file again"], BACK],
  );
  if (chosen === "beside") await beside(say);
  else if (chosen === "read") {
    await reread();
    say("The file was read again.");
  } else say("Not saved.");
}

export async function reread() {
  const read = await post("/read", {});
  if (!read.faults) lay(read);
  return read;
}

async function beside(say) {
  const answer = await post("/beside", { tree: draft.tree });
  if (answer.faults) await refused(answer.faults, say);
  else say(`Saved beside it as ${answer.name}. This page still has its own file, not that one.`);
}

async function faulty(may, faults, say) {
  const chosen = await ask(
    "It has faults",
    `${lines(faults)}\nAs a draft it takes the place of the file on the disk. It can be opened and gone on with here; work and rehearse refuse it until the faults are gone.`,
    [["draft", "Save it as a draft"], BACK],
  );
  if (chosen === "draft") await attempt({ ...may, draft: true }, say);
  else say("Not saved.");
}

async function comments(may, faults, say) {
  const chosen = await ask("Comments would be lost", lines(faults), [["lose", "Save without these comments"], BACK]);
  if (chosen === "lose") await attempt({ ...may, comments: true }, say);
  else say("Not saved.");
}

async function refused(faults, say) {
  const chosen = await ask("It was not saved", `${lines(faults)}\nNothing was written. What you have here is still here.`, [["text", "Show the whole text, to copy it"], BACK]);
  if (chosen === "text") await wholeText();
  say("Not saved.");
}

/** The text as it would be saved; if the program is gone, as plain JSON. */
export async function wholeText() {
  const answer = await post("/text", { tree: draft.tree });
  await ask("The whole text", "As it would be saved.", [BACK], answer.text ?? JSON.stringify(draft.tree, null, 2));
}
