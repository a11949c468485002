/** The single fields of a form: a number, a text, a choice, a value that is written as JSON. */
import { draft, read, write } from "./draft.js";
import { pointer } from "./tree.js";
import { resolve, words } from "./schema.js";

/** A number as the format has it; whatever else is typed stays a text, which the reader refuses. */
const PLAIN_NUMBER = /^-?(0|[1-9][0-9]{0,6})(\.[0-9]{1,4})?$/;
let count = 0;

/** An element with properties, attributes (with a hyphen or in full) and what is in it. */
export function make(tag, has = {}, ...inner) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(has)) {
    if (name in element && name !== "list") element[name] = value;
    else element.setAttribute(name, value);
  }
  element.append(...inner);
  return element;
}

export const button = (text, act, has = {}) => {
  const made = make("button", { type: "button", ...has }, text);
  made.addEventListener("click", act);
  return made;
};

/** What is typed, as a value; an empty text is a field that is not written. */
function typed(text, schema, keep) {
  if (text === "") return keep ? "" : undefined;
  const number = schema.type === "number" || schema.type === "integer";
  return number && PLAIN_NUMBER.test(text.trim()) ? Number(text) : text;
}

const shown = (value) => (value === undefined ? "" : typeof value === "string" ? value : JSON.stringify(value));

/**
 * A row with a label, the control, what the field is, and room for what is found at it.
 *
 * @param names where the value is in the tree
 */
export function row(names, label, hint, control, extra = []) {
  const id = `f${++count}`;
  const target = control.matches("input, select, textarea") ? control : control.querySelector("input, select, textarea, button");
  target.id = id;
  target.setAttribute("aria-describedby", `${id}-hint ${id}-found`);
  return make(
    "div",
    { className: "field", "data-at": pointer(names) },
    make("label", { htmlFor: id }, label),
    extra.length > 0 ? make("div", { className: "row" }, control, ...extra) : control,
    make("p", { id: `${id}-hint`, className: "hint" }, hint),
    make("ul", { id: `${id}-found`, className: "found" }),
  );
}

/** What a field is, what is expected, and an example: the words of the schema. */
export function hintOf(schema, must) {
  const example = schema.examples?.[0];
  return [
    schema.description,
    schema["x-expected"] && schema.type !== "string" ? `Expected: ${schema["x-expected"]}.` : "",
    example !== undefined && typeof example !== "object" ? `Such as ${example}.` : "",
    schema.default !== undefined ? `If it is left out: ${schema.default}.` : "",
    must ? "" : "May be left out.",
  ].filter(Boolean).join(" ");
}

/** The field of a single value. */
export function single(raw, names, { must, order, label = words(String(names.at(-1))), keep = false, extra = [] }) {
  const schema = resolve(raw);
  const value = read(names);
  const choices = schema.type === "boolean" ? ["true", "false"] : schema.enum;
  const control = choices ? select(choices, value) : make("input", { value: shown(value), spellcheck: schema.type === "string" });
  if (schema.type === "number" || schema.type === "integer") control.inputMode = "decimal";
  if (must) control.setAttribute("aria-required", "true");
  control.addEventListener(choices ? "change" : "input", () => {
    const next = choices ? chosen(control.value, schema) : typed(control.value, schema, keep);
    const anew = schema.enum !== undefined && names.at(-1) === "kind";
    write(names, next, order, { key: choices ? "" : pointer(names), anew });
  });
  return row(names, label, hintOf(schema, must), control, extra);
}

function select(choices, value) {
  const text = shown(value);
  const all = text === "" || choices.includes(text) ? choices : [...choices, text];
  return make(
    "select",
    {},
    make("option", { value: "" }, "not written"),
    ...all.map((each) => make("option", { value: each, selected: each === text }, each)),
  );
}

function chosen(text, schema) {
  if (text === "") return undefined;
  return schema.type === "boolean" ? text === "true" : text;
}

/** A value of any kind as JSON; what is no JSON is a text. */
export function json(names, { label = String(names.at(-1)), hint = "", extra = [] } = {}) {
  const value = read(names);
  const text = typeof value === "string" && !parses(value) ? value : value === undefined ? "" : JSON.stringify(value);
  const control = make("textarea", { value: text, rows: Math.min(8, 1 + Math.floor(text.length / 60)), spellcheck: false });
  control.addEventListener("input", () => {
    const next = control.value === "" ? undefined : parses(control.value) ? JSON.parse(control.value) : control.value;
    write(names, next, [], { key: pointer(names), anew: false });
  });
  return row(names, label, hint, control, extra);
}

function parses(text) {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** A reference to a given value, which is kept as it is. */
export function reference(names, label, hint) {
  const control = make("input", { value: shown(read(names).given), list: "given-names", spellcheck: false });
  control.addEventListener("input", () => write([...names, "given"], control.value, [], { key: pointer(names), anew: false }));
  const instead = button("Write the value here", () => write(names, undefined));
  return row(names, `${label} (a given value, by its name)`, hint, control, [instead]);
}

export const isReference = (value) => value !== null && typeof value === "object" && !Array.isArray(value) && "given" in value;

/** The names of the given values, for the fields that refer to one. */
export const givenNames = () =>
  make("datalist", { id: "given-names" }, ...Object.keys(draft.tree.given ?? {}).map((name) => make("option", { value: name })));
