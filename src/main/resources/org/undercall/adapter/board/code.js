/** Sends the code that lets this browser in. */
const note = document.getElementById("note");

document.getElementById("enter").addEventListener("submit", async (event) => {
  event.preventDefault();
  try {
    const answer = await fetch("/code", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ code: document.getElementById("code").value }),
    });
    if (answer.ok) {
      location.reload();
    } else {
      note.textContent = (await answer.json()).message;
    }
  } catch {
    note.textContent = "The program does not answer.";
  }
});
