/** The page is light or dark as the machine is set, or as its button said last. */
const dark = matchMedia("(prefers-color-scheme: dark)");
const button = document.getElementById("theme");

function kept() {
  try {
    return localStorage.getItem("theme");
  } catch {
    return null;
  }
}

function paint(name) {
  document.documentElement.dataset.theme = name;
  if (button) button.textContent = name === "dark" ? "Light page" : "Dark page";
}

function wanted() {
  paint(kept() ?? (dark.matches ? "dark" : "light"));
}

button?.addEventListener("click", () => {
  const next = document.documentElement.dataset.theme === "dark" ? "light" : "dark";
  try {
    localStorage.setItem("theme", next);
  } finally {
    paint(next);
  }
});
dark.addEventListener("change", wanted);
wanted();
