import { valueAt } from "./edits.js";
import { escaped, part, said } from "./words.js";

// What needs the signal, and the changes that wait for a word: both values, and which stays.

/** @param decided what the page does once a change was kept or given up */
export function desk(place, book, decided) {
    const asked = book.queue.list().filter((edit) => edit.asked);
    const needs = `<h2>What needs the signal</h2><ul class="plain"><li>The price of the whole job, the proposal and the order: worked out by the office with its yard.</li><li>The whole packet as PDF.</li><li>A new job or visit; new runs, corners and gates; styles; people; the calendar; the history with undo.</li></ul>`;
    place.replaceChildren(part(`${asked.length ? `<h2>Waiting for a word</h2><ul class="conflicts">${asked.map((edit) => asking(book, edit)).join("")}</ul>` : ""}
${needs}<p><a class="button" href="/jobs/${book.id}">Open the rooms of this job</a></p>`));
    for (const button of place.querySelectorAll("[data-give-up]")) button.addEventListener("click", () => { book.queue.drop(button.dataset.giveUp); decided(); });
    for (const button of place.querySelectorAll("[data-keep]")) button.addEventListener("click", () => {
        const edit = asked.find((one) => one.id === button.dataset.keep);
        book.queue.mark(edit.id, { asked: false, was: atTheDesk(book, edit) });
        decided();
    });
    return { fresh: () => desk(place, book, decided) };
}

const atTheDesk = (book, edit) => (book.held.document ? valueAt(JSON.parse(book.held.document), edit.path) : "");

/** One that the server refused has nothing to choose but to be keyed in again. */
function asking(book, edit) {
    const mine = escaped(new Map(edit.fields).get("value") ?? "a new entry");
    const giveUp = (words) => `<button type="button" data-give-up="${edit.id}">${words}</button>`;
    if (edit.refused) return `<li><b>${escaped(named(edit.path))}</b> ${mine} was refused. Give it up, or change it under Numbers. ${giveUp("Give it up")}</li>`;
    return `<li><b>${escaped(named(edit.path))}</b> was ${escaped(edit.was) || "not said"} when you changed it; someone else changed it since.
<span class="choice"><button type="button" data-keep="${edit.id}">Keep yours: ${mine}</button> ${giveUp("Keep theirs: " + (escaped(atTheDesk(book, edit)) || "not said"))}</span></li>`;
}

/** gates[G1].leaf.bottomGap, as one says it: bottom gap of G1. */
function named(path) {
    const of = [...path.matchAll(/\[([^\]]+)\]/g)].map(([, id]) => id).at(-1);
    return of && !path.endsWith("]") ? `${said(path)} of ${of}` : said(path);
}
