/** Drawings: how far to turn, and where a set stands. */
const at = (id) => document.getElementById(id);

export function svg(name, attributes) {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

/** One of the shapes of the page, for the eye only. */
export function shape(id) {
  const made = svg("svg", { "aria-hidden": "true" });
  made.append(svg("use", { href: "#" + id }));
  return made;
}

/** Shows how far to turn, clockwise from the top. */
export function dial(task) {
  const degrees = Number(task.digits);
  const shown = task.phase === "angle" && degrees > 0;
  at("dial").toggleAttribute("hidden", !shown);
  if (!shown) return;
  const turn = Math.min(degrees, 359.9);
  const end = [52 * Math.sin((turn * Math.PI) / 180), -52 * Math.cos((turn * Math.PI) / 180)];
  const far = turn > 180 ? 1 : 0;
  at("turn").setAttribute("d", `M0 0V-52A52 52 0 ${far} 1 ${end[0].toFixed(2)} ${end[1].toFixed(2)}Z`);
  at("needle").setAttribute("d", `M0 0L${end[0].toFixed(2)} ${end[1].toFixed(2)}`);
  at("dial").setAttribute("aria-label", `A turn of ${task.digits} degrees, clockwise`);
}

/**
 * The fasteners of a set in a ring, joined in the order in which they are tightened: what is done
 * with a thick line, the way to the next with one of dashes, what follows with a thin one.
 */
export function set(spots, order) {
  at("set").toggleAttribute("hidden", spots.length === 0);
  const radius = Math.min(14, ((2 * Math.PI * 44) / Math.max(spots.length, 1)) * 0.36);
  const turn = (number) => (2 * Math.PI * (number - 1)) / spots.length;
  const point = (number) => [44 * Math.sin(turn(number)), -44 * Math.cos(turn(number))];
  at("set").replaceChildren(
    ...order.slice(1).map((number, i) => {
      const from = spots[order[i] - 1].state;
      const to = spots[number - 1].state;
      const way = to === "closed" && from === "closed" ? "done" : to === "next" ? "way" : "ahead";
      const [[x1, y1], [x2, y2]] = [point(order[i]), point(number)];
      return svg("line", { class: way, x1: x1.toFixed(1), y1: y1.toFixed(1), x2: x2.toFixed(1), y2: y2.toFixed(1) });
    }),
    ...spots.map((spot) => {
      const [x, y] = point(spot.number);
      const size = spot.state === "next" ? radius * 1.25 : radius;
      const group = svg("g", { class: spot.state, transform: `translate(${x.toFixed(1)} ${y.toFixed(1)})` });
      const number = svg("text", { y: (size * 0.36).toFixed(1), "font-size": size.toFixed(1) });
      number.textContent = spot.state === "closed" ? "\u2713" : String(spot.number);
      group.append(svg("circle", { r: size.toFixed(1) }), number);
      return group;
    }),
  );
  const numbers = (state) => spots.filter((spot) => spot.state === state).map((spot) => spot.number);
  const done = numbers("closed").join(", ") || "none";
  const next = numbers("next")[0] ?? "none";
  const way = order.length ? `; in the order ${order.join(", ")}` : "";
  at("set").setAttribute("aria-label", `Of ${spots.length}, done: ${done}; next: ${next}${way}`);
}
