/** The form of an object, made from the schema and from what the object has. */
import { read, write, become, draft } from "./draft.js";
import { insert, pointer, put } from "./tree.js";
import { empty, kinds, resolve, shape, words } from "./schema.js";
import { button, hintOf, isReference, json, make, reference, single } from "./fields.js";

/** The fields of an object: those that must be written, then the others. */
export function fields(raw, names, without = []) {
  const value = read(names) ?? {};
  const { properties = {}, must = [], key } = shape(raw, value);
  const known = Object.keys(properties);
  const first = [...must.filter((n) => known.includes(n)), ...known.filter((n) => !must.includes(n))];
  const order = key ? first : known;
  const one = (name) => field(properties[name], [...names, name], { must: must.includes(name), order, keep: name === key });
  const rest = known.filter((n) => !must.includes(n) && !without.includes(n));
  const parts = [...new Set(must)].filter((n) => known.includes(n) && !without.includes(n)).map(one);
  if (rest.length > 0) {
    const more = make("details", { open: rest.some((n) => n in value) }, make("summary", {}, "May be left out"), make("div", { className: "inner" }, ...rest.map(one)));
    more.dataset.more = pointer(names);
    if (opened.has(more.dataset.more)) more.open = true;
    more.addEventListener("toggle", () => more.open && opened.add(more.dataset.more));
    parts.push(more);
  }
  const strange = Object.keys(value).filter((n) => !known.includes(n) && !without.includes(n));
  return [...parts, ...strange.map((name) => unknown([...names, name]))];
}

/** Which groups were opened by hand: they stay open when the form is made anew. */
const opened = new Set();

/** A field that does not belong here; it stays until it is removed. */
function unknown(names) {
  return json(names, { hint: "The format has no such field here.", extra: [button("Remove", () => write(names, undefined))] });
}

/** Whatever a part of the schema describes. */
export function field(raw, names, how) {
  const schema = resolve(raw);
  const value = read(names);
  const label = how.label ?? words(String(names.at(-1)));
  if (isReference(value)) return reference(names, label, hintOf(schema, how.must));
  if (schema.if?.type === "object" || schema.if?.properties?.type) return eitherWay(schema, names, { ...how, label });
  if (schema.type === "array") return list(schema, names, { ...how, label });
  if (schema.type === "object" || schema.properties) return object(raw, schema, names, { ...how, label });
  return single(schema, names, { ...how, label });
}

/** A text, or an object with more fields. */
function eitherWay(schema, names, how) {
  const value = read(names);
  const more = resolve(schema.then);
  const main = more.required?.[0];
  if (value !== null && typeof value === "object") {
    const plain = button("Write it as a text alone", () => write(names, value[main] ?? ""));
    return group(names, how.label, hintOf(schema, true), [...fields(more, names), ...(main ? [plain] : [])]);
  }
  const asObject = button("With more fields", () => write(names, main && value ? { [main]: value } : {}));
  return single({ ...resolve(schema.else), description: schema.description }, names, { ...how, keep: true, extra: [asObject, ...(how.extra ?? [])] });
}

function group(names, label, hint, inner) {
  return make(
    "fieldset",
    { "data-at": pointer(names) },
    make("legend", {}, label),
    make("p", { className: "hint" }, hint),
    make("ul", { className: "found" }),
    ...inner,
  );
}

function object(raw, schema, names, how) {
  const value = read(names);
  if (!schema.properties && !schema.allOf && kinds(raw).length === 0) return named(schema, names, how);
  if (value === undefined) {
    const add = button(`Add ${how.label}`, () => write(names, empty(raw), how.order), { "data-adds": pointer(names) });
    return group(names, how.label, hintOf(schema, how.must), [add]);
  }
  const remove = button(`Remove ${how.label}`, () => write(names, undefined));
  return group(names, how.label, hintOf(schema, how.must), [...fields(raw, names), ...(how.must ? [] : [remove])]);
}

/** Values by names of one's own. */
function named(schema, names, how) {
  const value = read(names) ?? {};
  const rows = Object.keys(value).map((name) =>
    json([...names, name], { hint: "A number, a text, or a list or object as JSON.", extra: [button(`Remove ${name}`, () => write([...names, name], undefined))] }));
  const name = make("input", { "aria-label": "Name of a new value", spellcheck: false });
  const add = button("Add the value", () => name.value && !(name.value in value) && become(put(put(draft.tree, names, value, how.order), [...names, name.value], "")));
  return group(names, how.label, hintOf(schema, how.must), [...rows, make("div", { className: "row" }, name, add)]);
}

/** A list: each item with what moves and removes it, and what adds one. */
function list(schema, names, how) {
  const value = read(names);
  const items = Array.isArray(value) ? value : [];
  if (value !== undefined && !Array.isArray(value)) return unknown(names);
  const item = resolve(schema.items);
  const small = !item.properties && !item.allOf && kinds(schema.items).length === 0 && !item.if;
  const rows = items.map((_, i) => entry(schema, names, i, items.length, small));
  const add = (what, text) =>
    button(text, () => become(put(draft.tree, names, [...items, what], how.order)), { "data-adds": pointer(names) });
  const several = kinds(schema.items);
  const adds = several.length > 0
    ? several.map((kind) => add({ [kind.key]: "" }, `Add: ${kind.node.description.replace(/\.$/, "").toLowerCase()}`))
    : [add(small || item.if ? "" : empty(schema.items), `Add to ${how.label}`)];
  return group(names, how.label, hintOf(schema, how.must), [...rows, make("div", { className: "tools" }, ...adds)]);
}

function entry(schema, names, i, length, small) {
  const at = [...names, String(i)];
  const label = `${words(String(names.at(-1)))} ${i + 1}`;
  const move = (by) => () => {
    const item = read(at);
    become(insert(put(draft.tree, at, undefined), names, i + by, item));
  };
  const tools = make(
    "div",
    { className: "tools", role: "group", "aria-label": label },
    button("Up", move(-1), { disabled: i === 0, "aria-label": `${label} up` }),
    button("Down", move(1), { disabled: i === length - 1, "aria-label": `${label} down` }),
    button("Remove", () => become(put(draft.tree, at, undefined)), { "aria-label": `Remove ${label}` }),
  );
  const inner = field(schema.items, at, { must: true, label, keep: small, order: [] });
  return make("div", { className: "entry" }, inner, tools);
}
