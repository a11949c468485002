// Looks at the board's page as an eye or a finger would. Each answer is a list of what is wrong.
window.look = (() => {
  const seen = (e) => e.checkVisibility({ checkVisibilityCSS: true }) && !e.closest("svg, noscript, option");
  const name = (e) => `${e.localName}#${e.closest("[id]")?.id}: ${e.textContent.trim().slice(0, 40)}`;
  const inside = (r, box) =>
    r.left >= box.left - 1 && r.right <= box.right + 1 && r.top >= box.top - 1 && r.bottom <= box.bottom + 1;
  const screen = () => ({ left: 0, top: 0, right: innerWidth, bottom: innerHeight });
  const whole = (e) => inside(e.getBoundingClientRect(), screen());

  function texts() {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found = [];
    for (let t = walker.nextNode(); t; t = walker.nextNode()) {
      if (t.data.trim() && seen(t.parentElement)) found.push(t);
    }
    return found;
  }

  /** An item of the list that scrolls is looked at only while it is whole in the list. */
  function beyond(e) {
    const item = e.closest("#steps li");
    return item && !inside(item.getBoundingClientRect(), document.getElementById("steps").getBoundingClientRect());
  }

  /** Where letters stand: a line's box without the room above and below, as high as the font has it. */
  function rects(t) {
    const range = document.createRange();
    range.selectNodeContents(t);
    return [...range.getClientRects()].filter((r) => r.width > 0 && r.height > 0)
      .map((r) => new DOMRect(r.x, r.y + r.height * 0.2, r.width, r.height * 0.6));
  }

  /** Whether an element hides what is at a point: of words in a line only their letters do. */
  function hides(e, x, y) {
    if (getComputedStyle(e).display !== "inline") return true;
    return [...e.childNodes].filter((n) => n.nodeType === Node.TEXT_NODE).flatMap(rects)
      .some((r) => x >= r.left && x <= r.right && y >= r.top && y <= r.bottom);
  }

  function covered(t, r) {
    const y = (r.top + r.bottom) / 2;
    const own = t.parentElement;
    return [r.left + 4, (r.left + r.right) / 2, r.right - 4].some((x) => {
      const top = document.elementsFromPoint(x, y)
        .find((e) => own.contains(e) || e.contains(own) || hides(e, x, y));
      return !top || !(own.contains(top) || top.contains(own));
    });
  }

  /** Texts that go beyond the page or a box, or that something lies on. */
  function cut() {
    const wrong = [];
    const across = document.documentElement.scrollWidth;
    if (across > innerWidth) wrong.push("the page is wider than the screen: " + across);
    for (const t of texts()) {
      const e = t.parentElement;
      if (beyond(e)) continue;
      e.scrollIntoView({ block: e.closest("#steps") ? "nearest" : "center" });
      for (const r of rects(t)) {
        if (r.left < -1 || r.right > innerWidth + 1) wrong.push("beyond the edge, " + name(e));
        for (let box = e; box !== document.body; box = box.parentElement) {
          const hides = getComputedStyle(box).overflow !== "visible";
          if (hides && !inside(r, box.getBoundingClientRect())) wrong.push("cut, " + name(e));
        }
        if (covered(t, r)) wrong.push("covered, " + name(e));
      }
      const plate = e.closest("li, button, .plates p, .heard, .mark");
      if (plate && !beyond(plate) && rects(t).some((r) => !inside(r, plate.getBoundingClientRect()))) {
        wrong.push("out of its box, " + name(e));
      }
    }
    scrollTo(0, 0);
    return [...new Set(wrong)];
  }

  /** Boxes of text that lie on each other. */
  function overlapping() {
    const all = texts().filter((t) => !beyond(t.parentElement) && !t.parentElement.closest(".always, .frame"))
      .flatMap((t) => rects(t).map((r) => [t, r]));
    const wrong = [];
    for (const [i, [t, r]] of all.entries()) {
      for (const [u, s] of all.slice(i + 1)) {
        const w = Math.min(r.right, s.right) - Math.max(r.left, s.left);
        const h = Math.min(r.bottom, s.bottom) - Math.max(r.top, s.top);
        const small = Math.min(r.height, s.height);
        if (t.parentElement !== u.parentElement && w > 2 && h > small * 0.45) {
          wrong.push(name(t.parentElement) + " | " + name(u.parentElement));
        }
      }
    }
    return wrong;
  }

  /** Cautions and origin of the values that are not to be seen, however far the page is scrolled. */
  function top() {
    const wrong = [];
    for (const far of [0, 0.3, 0.7, 1]) {
      scrollTo(0, far * document.documentElement.scrollHeight);
      for (const e of document.querySelectorAll("#values, #cautions li, #made:not([hidden])")) {
        const r = e.getBoundingClientRect();
        const hit = document.elementFromPoint(r.left + 8, (r.top + r.bottom) / 2);
        if (!whole(e) || !e.contains(hit)) wrong.push(`${far}: ${name(e)}`);
      }
    }
    scrollTo(0, 0);
    return wrong;
  }

  /** What must be in sight without a hand: all of these, whole. */
  function first(ids) {
    return ids.filter((id) => seen(document.getElementById(id)) && !whole(document.getElementById(id)));
  }

  /** The step at hand and the next one, if the list does not show them. */
  function list() {
    const box = document.getElementById("steps").getBoundingClientRect();
    return [...document.querySelectorAll("#steps [aria-current], #steps [aria-current] + [data-next]")]
      .filter((item) => !inside(item.getBoundingClientRect(), box)).map(name);
  }

  /** The sizes of letters: of the largest, and of the words above what is to be done. */
  function sizes() {
    const size = (e) => parseFloat(getComputedStyle(e).fontSize);
    const large = (e) => ["lead", "digits", "unit"].includes(e.id);
    const all = texts().map((t) => t.parentElement);
    return [Math.max(...all.filter(large).map(size)), Math.max(...all.filter((e) => !large(e)).map(size))];
  }

  function gap(a, b) {
    const [r, s] = [a.getBoundingClientRect(), b.getBoundingClientRect()];
    const x = Math.max(r.left - s.right, s.left - r.right, 0);
    const y = Math.max(r.top - s.bottom, s.top - r.bottom, 0);
    return Math.hypot(x, y);
  }

  /** Things to press that are lower than this, or nearer to each other than may be. */
  function presses(least, near, apart) {
    const all = [...document.querySelectorAll("button, summary, input, select")].filter(seen);
    const wrong = all.filter((b) => b.getBoundingClientRect().height < least).map((b) => "low, " + name(b));
    const effect = (b) => b.dataset.effect ?? (b.type === "submit" ? "closes" : "");
    for (const [i, a] of all.entries()) {
      for (const b of all.slice(i + 1)) {
        const pair = new Set([effect(a), effect(b)]);
        const needed = pair.size === 2 && pair.has("closes") && pair.has("undoes") ? apart : near;
        const form = a.form && a.form === b.form;
        if (!form && gap(a, b) < needed) wrong.push(`${gap(a, b).toFixed(0)}: ${name(a)} | ${name(b)}`);
      }
    }
    return wrong;
  }

  /** Elements in the colour of "everything is closed". */
  function done() {
    const probe = document.createElement("i");
    probe.style.color = "var(--done)";
    document.body.append(probe);
    const colour = getComputedStyle(probe).color;
    probe.remove();
    const of = (e) => ["color", "backgroundColor", "borderTopColor", "fill", "stroke", "outlineColor"]
      .map((p) => getComputedStyle(e)[p]);
    return [...document.body.querySelectorAll("*")].filter((e) => of(e).includes(colour)).map(name);
  }

  return { cut, overlapping, top, first, list, sizes, presses, done };
})();
