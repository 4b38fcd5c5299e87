// Changes to a job that are still to be sent. They lie on this device (local storage), so a closed page or a dead battery loses none of them,
// and whichever page of this job opens next, under the same name, sends them. Made to be used by any page, with or without a server behind it:
//
//     const queue = queueOf(job, person);
//     queue.put({ at, path, fields, base });   one more; a later value for the same path takes the place of one that has not gone yet
//     queue.first(); queue.list(); queue.count();
//     queue.goes(id); queue.stays(id);         it is on its way; it came back, or nobody knows whether it arrived
//     queue.went(id, version);                 kept by the server: what follows now rests on that version
//     queue.drop(id);                          given up: refused, or the other one's change was kept
//     queue.mark(id, { asked: true });         someone changed the job first; it waits for a word
//     waitingJobs(person);                     [{ job, count }] of every job with changes on this device
//
// at      address that takes the change by POST: /jobs/<id>/<room>/edit, .../press, .../write-down, .../undo
// path    place in the job file that it sets; empty for a change that sets no single place
// fields  the form's pairs [[name, value], ...] without _csrf and version, which belong to the moment of sending
// base    the version of the job that the person saw when making it
// sent    the fields of every form in which it was on its way and no answer came: any of them may have arrived. What takes its place takes them over
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
            change((edits) => edits.map((edit) => (edit.id === id ? { ...edit, sent: [...(edit.sent ?? []).filter((fields) => !alike(fields, edit.fields)), edit.fields] } : edit)));
        },
        isGoing: (id) => going.has(id),
        stays: (id) => going.delete(id),
        went(id, version) {
            going.delete(id);
            change((edits) => {
                const gone = edits.find((edit) => edit.id === id);
                return edits.filter((edit) => edit.id !== id).map((edit) => ({ ...edit, ...seenAfter(gone, edit), base: version }));
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

const alike = (fields, others) => JSON.stringify(fields) === JSON.stringify(others);

/** Whether a field holds what was typed, where the desk may have put the field's unit behind it: 4' 6 is kept as 4' 6". */
const isKept = (held, typed) => held === typed || (Boolean(typed) && held.startsWith(typed) && /^ ?(?:"|'|[a-z]+)$/.test(held.slice(typed.length)));

/** Whether a field holds the change already, which its maker did not see there: it arrived, and the answer was lost on the way back. */
export const hasArrived = (edit, held) => held !== edit.was && isKept(held, new Map(edit.fields).get("value"));

/** Whether a field holds what its maker saw when changing it, or a value of the maker's own that arrived without our hearing of it. */
export const isOwn = (edit, held) => held === edit.was || (edit.sent ?? []).some((fields) => isKept(held, new Map(fields).get("value")));

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
