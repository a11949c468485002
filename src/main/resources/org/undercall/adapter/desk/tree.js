/** Changes of a tree that leave the tree before as it was, so that it can be gone back to. */

/** The names that a JSON pointer (RFC 6901) goes along. */
export const along = (pointer) =>
  pointer === "" ? [] : pointer.slice(1).split("/").map((p) => p.replaceAll("~1", "/").replaceAll("~0", "~"));

export const pointer = (names) =>
  names.map((n) => "/" + String(n).replaceAll("~", "~0").replaceAll("/", "~1")).join("");

export const get = (tree, names) => names.reduce((at, name) => at?.[name], tree);

/** With another value there; undefined takes it away. A new field comes where the order says. */
export function put(tree, names, value, order = []) {
  if (names.length === 0) return value;
  const [name, ...rest] = names;
  const inner = put(tree?.[name], rest, value, order);
  if (Array.isArray(tree)) {
    const list = [...tree];
    if (inner === undefined) list.splice(Number(name), 1);
    else list[Number(name)] = inner;
    return list;
  }
  const fields = Object.entries(tree ?? {});
  const at = fields.findIndex(([key]) => key === name);
  if (inner === undefined) return Object.fromEntries(fields.filter(([key]) => key !== name));
  if (at >= 0) fields[at] = [name, inner];
  else fields.splice(placeOf(fields, name, rest.length === 0 ? order : []), 0, [name, inner]);
  return Object.fromEntries(fields);
}

/** After the last field that stands before it in the order. */
function placeOf(fields, name, order) {
  const own = order.indexOf(name);
  if (own < 0) return fields.length;
  let place = 0;
  fields.forEach(([key], i) => {
    const other = order.indexOf(key);
    if (other < own && (other >= 0 || key.startsWith("$"))) place = i + 1;
  });
  return place;
}

/** With one more item in a list. */
export function insert(tree, names, index, item) {
  const list = [...(get(tree, names) ?? [])];
  list.splice(index, 0, item);
  return put(tree, names, list);
}

/** The pointers of all places that hold what is asked for. */
export function places(tree, is, names = []) {
  if (is(tree, names)) return [names];
  if (tree === null || typeof tree !== "object") return [];
  return Object.entries(tree).flatMap(([name, value]) => places(value, is, [...names, name]));
}
