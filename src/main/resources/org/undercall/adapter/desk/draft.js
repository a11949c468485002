/** The procedure as it stands in the page, what is chosen in it, and the way back. */
import { get, put } from "./tree.js";

const MOST_BACK = 500;
const listeners = [];
const back = [];
const forth = [];
let tree = {};
let chosen = "";
let saved = tree;
let lastKey = "";

export const draft = {
  name: "",
  base: "",
  blocks: [],
  get tree() { return tree; },
  get chosen() { return chosen; },
  get unsaved() { return tree !== saved; },
  get canUndo() { return back.length > 0; },
  get canRedo() { return forth.length > 0; },
};

/** Told of a change: whether the form must be made anew, for fields came or went. */
export const whenChanged = (listener) => listeners.push(listener);
const tell = (anew) => listeners.forEach((listener) => listener(anew));

export function lay(read) {
  Object.assign(draft, { name: read.name, path: read.path, base: read.base, blocks: read.blocks });
  tree = saved = read.tree;
  back.length = forth.length = 0;
  chosen = "";
  tell(true);
}

/** The tree that was saved; what was typed meanwhile is not. */
export function wasSaved(what, base) {
  saved = what;
  draft.base = base;
  tell(false);
}

/** Another tree. Changes with the same key, one after the other, are undone as one. */
export function become(next, { key = "", anew = true, choose = chosen } = {}) {
  if (next === tree) return;
  if (key === "" || key !== lastKey) {
    back.push({ tree, chosen });
    if (back.length > MOST_BACK) back.shift();
  }
  lastKey = key;
  forth.length = 0;
  tree = next;
  chosen = choose;
  tell(anew);
}

export const write = (names, value, order, options) => become(put(tree, names, value, order), options);
export const read = (names) => get(tree, names);

export function choose(pointer) {
  if (pointer === chosen) return;
  chosen = pointer;
  lastKey = "";
  tell(true);
}

function go(from, to) {
  if (from.length === 0) return false;
  to.push({ tree, chosen });
  ({ tree, chosen } = from.pop());
  lastKey = "";
  tell(true);
  return true;
}

export const undo = () => go(back, forth);
export const redo = () => go(forth, back);
