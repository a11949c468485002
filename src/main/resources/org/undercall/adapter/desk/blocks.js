/** An include of a block: its own few fields, and each value that the block takes. */
import { draft, read, write } from "./draft.js";
import { places, pointer } from "./tree.js";
import { below, named, resolve, whole } from "./schema.js";
import { button, isReference, json, make, single } from "./fields.js";
import { field } from "./form.js";

const TEXT = { type: "string" };
const ORDER = ["include", "ids", "revision", "with"];

export const blockOf = (include) => draft.blocks.find((block) => block.path === include)?.tree;

/** The form of an include. */
export function include(names) {
  const value = read(names);
  const block = blockOf(value.include);
  const one = (name, description) => single({ ...TEXT, description }, [...names, name], { must: name === "include", order: ORDER });
  const own = [
    one("include", "The path of the block, seen from this file."),
    one("ids", "Put before the ids of the block's steps, so that they stay apart; with a hyphen last."),
    one("revision", `The revision of the block that this is written for.${block ? ` It is of revision ${block.revision} now.` : ""}`),
  ];
  const taken = Object.entries(block?.takes ?? {});
  const given = taken.map(([name, what]) => taker(block, [...names, "with", name], what, taken.map(([n]) => n)));
  const strange = Object.keys(value.with ?? {}).filter((name) => !(name in (block?.takes ?? {})));
  const rest = strange.map((name) =>
    json([...names, "with", name], { hint: "The block takes no such value.", extra: [button("Remove", () => write([...names, "with", name], undefined))] }));
  const said = block ? `${block.title}. Values of its own: ${block.values}.` : "There is no such block below the folder of the procedure.";
  return [
    make("p", {}, said),
    ...own,
    make("fieldset", { "data-at": pointer([...names, "with"]) }, make("legend", {}, "with"), make("p", { className: "hint" }, "What the block takes."), make("ul", { className: "found" }), ...given, ...rest),
  ];
}

/** The field of a value that a block takes, of the form that the place of its use has. */
function taker(block, names, what, order) {
  const says = typeof what === "string" ? what : what.what;
  const orNull = what.orNull === true;
  const name = names.at(-1);
  const value = read(names);
  const known = use(block, name);
  const schema = known && { ...resolve(known), description: `${says}.` };
  const how = { must: true, order, label: name };
  const extra = make(
    "div",
    { className: "tools" },
    ...(orNull && value !== null ? [button("Leave it out: null", () => write(names, null, order), { "aria-label": `Leave out ${name}: null` })] : []),
    ...(Object.keys(draft.tree.given ?? {}).length > 0 && !isReference(value) ? [button("Take a given value", () => write(names, { given: "" }, order), { "aria-label": `Take a given value for ${name}` })] : []),
  );
  const asJson = value === null || schema === undefined;
  const made = asJson ? json(names, { label: name, hint: `${says}.${orNull ? " null says that it is left out on purpose." : ""}` }) : field(schema, names, how);
  return make("div", { className: "entry" }, made, extra);
}

/** The part of the schema for the place where a block puts a value to use. */
function use(block, name) {
  const list = block.phases ? "phases" : "steps";
  const found = places(block[list], (value) => isReference(value) && value.given === name)[0];
  const root = { properties: { phases: whole().properties.phases, steps: resolve(named("phase")).properties.steps } };
  return found && below(root, block, [list, ...found]);
}

