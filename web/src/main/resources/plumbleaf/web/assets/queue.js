// Changes to a job that are still to be sent. They lie on this device (local storage), so a closed page or a dead battery loses none of them,
// and whichever page of this job opens next, under the same name, sends them. Made to be used by any page, with or without a server behind it:
//
//     const queue = queueOf(job, person);
//     queue.put({ at, path, fields, base });   one more; a later value for the same path takes the place of one that has not gone yet
//     queue.first(); queue.list(); queue.count();
//     queue.goes(id); queue.stays(id);         it is on its way; it came back, or nobody knows whether it arrived
//     queue.went(id, version);                 kept by the server: what was made on the version before rests on that one now
//     queue.drop(id);                          given up: refused, or the other one's change was kept
//     queue.mark(id, { asked: true });         someone changed the job first; it waits for a word
//     queue.shelf                              where it lies, as the browser names it to other pages that hear of a change there
//     waitingJobs(person);                     [{ job, count }] of every job with changes on this device
//
// at      address that takes the change by POST: /jobs/<id>/<room>/edit, .../press, .../write-down, .../undo
// path    place in the job file that it sets; empty for a change that sets no single place
// fields  the form's pairs [[name, value], ...] without _csrf and version, which belong to the moment of sending
// base    the version of the job that the person saw when making it
// sent    the fields of every form in which it was on its way and no answer came, with the name it went under: any of them may have arrived. What takes its place takes them over
const SHELF = "plumbleaf.waiting.";

const shelfOf = (job, person) => SHELF + encodeURIComponent(person) + "." + job;
let memory = new Map();
/** Changes on their way to the server, of every queue on this page: what is typed meanwhile does not take their place. */
const going = new Set();

function read(shelf) {
    try {
        return JSON.parse(localStorage.getItem(shelf) ?? "[]");
    } catch {
        return memory.get(shelf) ?? [];
    }
}

function write(shelf, edits) {
    memory.set(shelf, edits);
    try {
        if (edits.length) localStorage.setItem(shelf, JSON.stringify(edits));
        else localStorage.removeItem(shelf);
    } catch {
        // No room or not allowed: what waits lives as long as the page does, and the page says so before it is closed.
    }
}

/** Whether what waits would outlive this page. */
export function outlives() {
    try {
        localStorage.setItem(SHELF + "try", "1");
        localStorage.removeItem(SHELF + "try");
        return true;
    } catch {
        return false;
    }
}

export function queueOf(job, person) {
    const shelf = shelfOf(job, person);
    const list = () => read(shelf);
    const change = (how) => write(shelf, how(list()));
    return {
        shelf,
        list,
        count: () => list().length,
        first: () => list()[0],
        put(edit) {
            const id = Date.now().toString(36) + "-" + Math.random().toString(36).slice(2, 10);
            const replaced = (other) => edit.path && other.path === edit.path && !going.has(other.id);
            change((edits) => {
                const sent = edits.filter(replaced).flatMap((other) => other.sent ?? []);
                return [...edits.filter((other) => !replaced(other)), { ...edit, ...(sent.length ? { sent } : {}), id }];
            });
            return id;
        },
        /** Written down before it goes: a page that ends meanwhile never hears whether it arrived. */
        goes(id) {
            going.add(id);
            change((edits) => edits.map((edit) => (edit.id === id ? { ...edit, sent: [...(edit.sent ?? []).filter((fields) => !alike(fields, named(edit))), named(edit)] } : edit)));
        },
        isGoing: (id) => going.has(id),
        stays: (id) => going.delete(id),
        went(id, version) {
            going.delete(id);
            change((edits) => {
                const gone = edits.find((edit) => edit.id === id);
                // Where somebody else's changes lie between, the makers of the rest have not seen them: each still rests on what was seen, and is looked at by itself.
                const next = (edit) => (!edit.asked && edit.base === gone?.base && version === gone.base + 1 ? { base: version } : {});
                return edits.filter((edit) => edit.id !== id).map((edit) => ({ ...edit, ...seenAfter(gone, edit), ...next(edit) }));
            });
        },
        drop(id) {
            going.delete(id);
            change((edits) => edits.filter((edit) => edit.id !== id));
        },
        mark(id, more) {
            going.delete(id);
            change((edits) => edits.map((edit) => (edit.id === id ? { ...edit, ...more } : edit)));
        },
    };
}

/** A change's fields with the name under which it goes: the server makes none twice under one name. */
const named = (edit) => [...edit.fields, ["sending", edit.id]];

/** The names of the changes that went and of which nobody knows whether they arrived. */
export const unsure = (edits) => [...new Set(edits.flatMap((edit) => (edit.sent ?? []).map((fields) => new Map(fields).get("sending"))).filter(Boolean))];

const alike = (fields, others) => JSON.stringify(fields) === JSON.stringify(others);

const BARE = /^[-+]?(?:\d+[ -])?\d*(?:[./]\d+)?$/;
const ENDINGS = { INCHES: /^"$/, FEET: /^'$/, PERCENT: /^%$/, COUNT: /^$/, WORDS: /^$/ };
const SAID_AFTER_A_SPACE = /^ [A-Za-z][A-Za-z/0-9-]*$/;

/** Whether a field holds what a form sent, where the desk puts the field's unit behind a number that came without one: 54 is kept as 54". */
function isKept(held, fields) {
    const said = new Map(fields);
    const typed = (said.get("value") ?? "").trim();
    if (held === typed) return true;
    return typed !== "" && BARE.test(typed) && held.startsWith(typed) && (ENDINGS[said.get("unit")] ?? SAID_AFTER_A_SPACE).test(held.slice(typed.length));
}

/** Whether a field holds the change already, which its maker did not see there: it arrived, and the answer was lost on the way back. */
export const hasArrived = (edit, held) => held !== edit.was && isKept(held, edit.fields);

/** Whether a field holds what its maker saw when changing it, or a value of the maker's own that arrived without our hearing of it. */
export const isOwn = (edit, held) => held === edit.was || (edit.sent ?? []).some((fields) => isKept(held, fields));

const isNew = (edit) => new Map(edit.fields).has("own");

/**
 * Whether a change goes up from the field book alone: one more in a list, as shots are written down there, which may need another number by then, and with a level's all shots that were
 * read from it; and what was changed of such a one since.
 */
export const goesFromBook = (edit, edits) => isNew(edit) || edits.some((other) => isNew(other) && edit.path?.startsWith(other.path + "."));

/** What was typed while an older value of the same field was on its way was made seeing that one. */
function seenAfter(gone, edit) {
    const value = new Map(gone?.fields).get("value");
    return gone?.path && gone.path === edit.path && edit.was !== undefined && value !== undefined ? { was: value } : {};
}

export function waitingJobs(person) {
    const jobs = [];
    try {
        const own = SHELF + encodeURIComponent(person) + ".";
        for (let i = 0; i < localStorage.length; i++) {
            const shelf = localStorage.key(i);
            const count = shelf.startsWith(own) ? read(shelf).length : 0;
            if (count) jobs.push({ job: shelf.slice(own.length), count });
        }
    } catch {
        // A browser that keeps nothing has nothing waiting.
    }
    return jobs;
}
