/** What the schema of the format says of a value: its fields, its kinds, its words. */
let schema = {};

export async function load() {
  schema = await (await fetch("/schema.json")).json();
}

export const whole = () => schema;
export const named = (name) => schema.$defs[name];

/** A part of the schema with what it refers to. */
export function resolve(node) {
  if (!node?.$ref) return node ?? {};
  const { $ref, ...own } = node;
  return { ...resolve($ref.split("/").slice(1).reduce((at, name) => at[name], schema)), ...own };
}

/** The kinds of an object that are told apart by which field is there; none if it has no kinds. */
export function kinds(raw) {
  const node = resolve(raw);
  if (!node.if?.required || !node.then?.$ref) return [];
  const rest = kinds(node.else);
  const last = resolve(node.else);
  return [
    { key: node.if.required[0], node: resolve(node.then) },
    ...(rest.length > 0 ? rest : [{ key: last.required[0], node: last }]),
  ];
}

/** The words of the field that tells the kind of an object, such as those of a step. */
export const byWord = (node) => Object.keys(node.allOf?.[0]?.if?.properties ?? {})[0];

/** The fields of an object as it is: their parts of the schema, and which must be written. */
export function shape(raw, value) {
  const node = resolve(raw);
  const several = kinds(node);
  if (several.length > 0) {
    const kind = several.find((k) => value && k.key in value) ?? several.at(-1);
    return { ...shape(kind.node, value), key: kind.key };
  }
  const word = byWord(node);
  if (word) {
    const own = node.allOf.find((each) => each.if.properties[word].const === value?.[word]);
    const kind = resolve(own?.then ?? {});
    const names = kind.properties ? Object.keys(kind.properties) : node.required;
    const known = (n) => (kind.properties?.[n] ?? true) === true ? node.properties[n] : kind.properties[n];
    return {
      properties: Object.fromEntries(names.map((n) => [n, known(n)])),
      must: [...node.required, ...(kind.required ?? [])],
    };
  }
  return { properties: node.properties, items: node.items, must: must(node) };
}

function must(node) {
  const either = (node.oneOf ?? []).flatMap((each) => each.required ?? []);
  const unless = node.else?.required ? [...(node.if?.required ?? []), ...node.else.required] : [];
  return [...(node.required ?? []), ...either, ...unless];
}

/** The part of the schema for a place below another one. */
export function below(node, value, names) {
  let at = node;
  let there = value;
  for (const name of names) {
    const found = shape(at, there);
    at = found.properties?.[name] ?? found.items;
    if (!at) return undefined;
    there = there?.[name];
  }
  return at;
}

/** An object with nothing in it but the objects that it must have; no value is ever made up. */
export function empty(raw, value = {}) {
  const { properties = {}, must: names } = shape(raw, value);
  const inner = names.filter((n) => n in properties && !(n in value) && resolve(properties[n]).type === "object");
  return { ...value, ...Object.fromEntries(inner.map((n) => [n, empty(properties[n])])) };
}

/** The name of a field in words: oneTimeUse is "one time use". */
export const words = (name) => name.replace(/([A-Z])/g, (c) => " " + c.toLowerCase());
