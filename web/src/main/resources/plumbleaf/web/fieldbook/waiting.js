import { queueOf } from "/assets/queue.js";
import { keepWaiting, keptWaiting } from "./held.js";

// What waits to go up lies in the browser's quick store, which writes it down some seconds late: a phone that dies, or that ends its browser to make room for the camera, loses the last
// of it. So it lies a second time in the store that is written at once, and what the quick one has lost is put back from there. Changes are counted as they are made; what was lost are
// those past the last one that the quick store knows of.
const madeOf = (job, person) => `plumbleaf.made.${encodeURIComponent(person)}.${job}`;

function made(job, person) {
    try {
        return Number(localStorage.getItem(madeOf(job, person)) ?? 0);
    } catch {
        return 0;
    }
}

function count(job, person, number) {
    try {
        localStorage.setItem(madeOf(job, person), String(number));
    } catch {
        // A browser that keeps nothing there: all that waits is put back from the other store when the page is opened next.
    }
    return number;
}

/** Number of a change that is being made. */
export const numbered = (job, person) => count(job, person, made(job, person) + 1);

/**
 * Writes down what waits as it is now.
 * @returns {Promise<boolean>} whether it is written: a device that is full keeps what waits in the browser's quick store alone, and whoever asked for it says so
 */
export const writeDown = (job, person) => keepWaiting({ job, person, made: made(job, person), edits: queueOf(job, person).list() }).then(() => true, () => false);

/** Puts back what the quick store has lost. */
export async function putBack(job, person) {
    const kept = await keptWaiting(job);
    if (kept?.person !== person) return;
    const known = made(job, person);
    const queue = queueOf(job, person);
    for (const edit of kept.edits) if (edit.made > known) queue.put(edit);
    if (kept.made > known) count(job, person, kept.made);
}
