import { valueIn } from "./edits.js";

// Two devices without a signal count alike: both call their next shot S9 and their next level H2. The one that comes second gives its own the next free numbers, as the
// server will count them, and with a level's name what its shots say they were read from.
const IN_NO_ITEM = ["list", "own", "path", "unit", "sending"];
const NAMED_AFTER = { "ground.setups": "setup" };

/**
 * @param edits what waits here, in order  @param job as the desk has it  @param come the names of those that the desk knows to have come
 * @returns {{ edits: object[], gone: string[], retaken: { id: string, values: object[] }[], photos: Map<string, string> }} what of them changes, what has arrived without our hearing of it, what has
 *     arrived so and was changed here since, with the values that are to be changed there, and the shots' new names
 */
export function renamed(edits, job, come = new Set()) {
    const names = new Map();
    const changed = [];
    const gone = [];
    const retaken = [];
    const taken = new Map();
    for (const edit of edits) {
        let fields = edit.fields;
        const list = new Map(fields).get("list");
        if (!list) continue;
        fields = fields.map(([name, value]) => [name, names.get(`${name} ${value}`) ?? value]);
        const own = new Map(fields).get("own");
        const there = valueIn(job, list) ?? [];
        if (there.some((one) => one.id === own && says(one, fields))) {
            gone.push(edit.id);
            continue;
        }
        const isKnown = (sent) => come.has(new Map(sent).get("sending"));
        const arrived = (edit.sent ?? []).findLast((sent) => isKnown(sent) || there.some((one) => one.id === new Map(sent).get("own") && says(one, sent)));
        if (arrived) {
            retaken.push({ id: edit.id, values: values(edit, arrived) });
            continue;
        }
        if (!taken.has(list)) taken.set(list, new Set(there.map((one) => one.id)));
        const used = taken.get(list);
        const id = used.has(own) ? next(used, own) : own;
        used.add(id);
        if (id !== own) {
            names.set(`${NAMED_AFTER[list] ?? "own"} ${own}`, id);
            fields = fields.map(([name, value]) => [name, name === "own" ? id : value]);
        }
        if (fields.some(([, value], i) => value !== edit.fields[i][1])) changed.push({ id: edit.id, fields, path: `${list}[${id}]` });
    }
    const photos = new Map([...names].filter(([key]) => key.startsWith("own ")).map(([key, id]) => [key.slice(4), id]));
    return { edits: changed, gone, retaken, photos };
}

/** What was changed of an item since it went up, each as a value of its own. */
function values(edit, arrived) {
    const before = new Map(arrived);
    const of = `${before.get("list")}[${before.get("own")}]`;
    return edit.fields.filter(([name, value]) => !IN_NO_ITEM.includes(name) && value !== (before.get(name) ?? "")).map(([name, value]) => {
        const path = `${of}.${name}`;
        return { at: edit.at.replace(/[^/]*$/, "edit"), path, made: edit.made, was: before.get(name) ?? "", fields: [["path", path], ["unit", "WORDS"], ["value", value]] };
    });
}

/** Whether it is the same in every word: it went up, and the answer was lost on the way back. */
function says(item, fields) {
    const own = fields.filter(([name, value]) => !IN_NO_ITEM.includes(name) && value !== "");
    return own.every(([name, value]) => item[name] === value);
}

function next(used, own) {
    const letters = /^[A-Z]+/.exec(own)?.[0] ?? "S";
    const numbers = [...used].map((id) => (id.startsWith(letters) ? Number(id.slice(letters.length)) || 0 : 0));
    return letters + (Math.max(0, ...numbers) + 1);
}
