/** What the page asks the program, and what it asks whoever writes. */

/** Posts to the program: its answer, or the faults that it found; none if it does not answer. */
export async function post(path, body) {
  try {
    const answer = await fetch(path, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
    });
    const text = await answer.text();
    if (answer.ok || answer.status === 409) return JSON.parse(text);
    return { faults: [{ code: "", place: "the desk", told: text.trim() }] };
  } catch {
    return { faults: [{ code: "", place: "the desk", told: "The program does not answer. Start it again and open the address that it prints; this page stays as it is." }] };
  }
}

/** Asks with buttons; gives the word of the one that was pressed, "" for Escape. */
export function ask(name, words, choices, text) {
  const dialog = document.getElementById("ask");
  document.getElementById("ask-name").textContent = name;
  document.getElementById("ask-words").textContent = words;
  const area = document.getElementById("ask-text");
  area.hidden = text === undefined;
  area.value = text ?? "";
  return new Promise((done) => {
    const buttons = choices.map(([word, label]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", () => dialog.close(word));
      return button;
    });
    document.getElementById("ask-choices").replaceChildren(...buttons);
    dialog.returnValue = "";
    dialog.addEventListener("close", () => done(dialog.returnValue), { once: true });
    dialog.showModal();
    buttons.at(-1).focus();
  });
}
