import { goesFromBook, hasArrived, isOwn, outlives, queueOf } from "./queue.js";

// Sends what waits in the queue, one change at a time, in the order they were made, each on the version that its maker saw. So an answer never
// overwrites a newer one. A lost connection, a server that is down and a sign-in that ran out lose nothing: the rest is sent when it is back.
const AGAIN_SOON = 1500;
const AGAIN_LATER = 6000;
const TO_READ = 6000;
const meta = (name) => document.querySelector(`meta[name=${name}]`)?.content ?? "";
const inside = () => document.getElementById("inside");
const shownVersion = () => Number(inside()?.dataset.version ?? 0);
const changes = (count) => (count === 1 ? "1 change is" : `${count} changes are`);

const job = location.pathname.match(/^\/jobs\/([a-z0-9]+)/)?.[1] ?? "";
export const queue = job ? queueOf(job, meta("person")) : null;

let busy = false;
let timer = 0;
let renewed = false;
let noted = 0;
/** What this page asks about: the change, and the version and the value that it was asked against. */
let asking = null;
/** Changes that were asked about on a page that may be gone, to be asked about here. */
const again = new Set();
let show = () => {};
let say = () => {};

/** What this page can send, in order. */
function ours() {
    const all = queue?.list() ?? [];
    return all.filter((edit) => !goesFromBook(edit, all));
}

/** The next that may go; one that waits for a word, and all behind it, may not. */
function next() {
    const [first] = ours();
    return first && (!first.asked || again.has(first.id)) ? first : null;
}

/** What the line reads where nothing else is to be said. */
function rest() {
    const left = (queue?.count() ?? 0) - ours().length;
    return left ? `${changes(left)} kept in the field book of this job: open it, and what was measured goes up from there.` : "";
}

export const isAsking = () => asking !== null;

/** @param shows puts an answer on the page  @param says what the line under the rooms reads; empty hides it */
export function sendWith(shows, says) {
    show = shows;
    say = says;
    if (!queue) return;
    addEventListener("online", send);
    addEventListener("offline", offline);
    addEventListener("beforeunload", (event) => { if (queue.count() && !outlives()) event.preventDefault(); });
    addEventListener("storage", (event) => { if (event.key === queue.shelf) elsewhere(event); });
    // The page one looks at is the one that asks, also where another one asked and was closed.
    document.addEventListener("visibilitychange", askHere);
    addEventListener("focus", askHere);
    askHere();
    if (!navigator.onLine) offline();
    else say(ours().length ? `${changes(ours().length)} kept on this device from before, and sent now.` : rest());
    send();
}

function askHere() {
    const [first] = ours();
    if (document.hidden || !first?.asked || asking?.id === first.id) return;
    again.add(first.id);
    send();
}

export function put(edit) {
    queue.put({ ...edit, base: shownVersion() });
    if (asking) say("What you change now is kept on this device, and sent once you have said which of the two stays.");
    send();
}

/** The person decided what becomes of the change that came second, having seen what the field held. */
export function decided(mine) {
    if (!asking) return;
    const { id, version, value } = asking;
    asking = null;
    if (mine) queue.mark(id, { asked: false, base: version, ...(value === undefined ? {} : { was: value }) });
    else queue.drop(id);
    say(rest());
    send();
}

function offline() {
    const count = ours().length;
    say(count ? `No connection. ${changes(count)} kept on this device and will be sent again.` : "No connection. What you change is kept on this device and sent when it is back.");
}

function later(milliseconds) {
    clearTimeout(timer);
    timer = setTimeout(send, milliseconds);
}

// Two pages of one job on one device share the queue; the lock lets one of them send at a time.
async function send() {
    if (busy || !next()) return;
    busy = true;
    let isDone = false;
    const work = async () => { isDone = await sendAll(); };
    try {
        if (navigator.locks) await navigator.locks.request("plumbleaf." + job, work);
        else await work();
    } finally {
        busy = false;
    }
    // What was put in while the lock was given back.
    if (isDone) send();
}

/** Whether all went that may go. */
async function sendAll() {
    for (let edit = next(); edit; edit = next()) if (!(await sendOne(edit))) return false;
    return true;
}

/** The room as the server has it now; nothing without a connection. */
export async function roomNow() {
    try {
        const answer = await fetch(location.pathname, { headers: { "X-Live": "1" } });
        return answer.ok ? new DOMParser().parseFromString(await answer.text(), "text/html") : null;
    } catch {
        return null;
    }
}

// Another page of this job on this device took a change in hand, or settled one. What is answered there is not asked here any longer, what went
// from there is shown here too, and what still waits goes from here where that page is closed meanwhile.
async function elsewhere({ oldValue, newValue }) {
    const left = JSON.parse(newValue ?? "[]");
    if (asking && !left.some((edit) => edit.id === asking.id && edit.asked)) {
        asking = null;
        document.getElementById("conflict")?.remove();
    }
    if (left.length) later(AGAIN_SOON);
    if (left.length >= JSON.parse(oldValue ?? "[]").length) return;
    const page = await roomNow();
    if (page) show(page, {});
}

/** Whether the next one may go. */
async function sendOne(edit) {
    if (!edit.at?.startsWith(`/jobs/${job}/`)) {
        queue.drop(edit.id);
        return true;
    }
    queue.goes(edit.id);
    const body = new URLSearchParams(edit.fields);
    body.set("_csrf", meta("csrf"));
    body.set("version", String(edit.base));
    body.set("sending", edit.id);
    let answer;
    try {
        answer = await fetch(edit.at, { method: "POST", body, headers: { "X-Live": "1" }, redirect: "manual" });
    } catch {
        return waits(edit, AGAIN_SOON, "No connection.");
    }
    if (answer.type === "opaqueredirect" || answer.status === 401) {
        return signedOut(edit);
    }
    if (answer.status >= 500 || answer.status === 429) return waits(edit, AGAIN_LATER, "The server cannot take changes now.");
    if (answer.status === 403 && !renewed) return renew(edit);
    renewed = false;
    if (answer.ok) return kept(edit, await answer.text());
    if (answer.status === 409) return second(edit, await answer.text());
    queue.drop(edit.id);
    if (answer.status === 422) show(new DOMParser().parseFromString(await answer.text(), "text/html"), { refused: edit.path });
    else say(answer.status === 403 ? "That change is not yours to make." : "That change was not kept. Load the page again and repeat it.");
    return true;
}

function signedOut(edit) {
    queue.stays(edit.id);
    say(`You are signed out. ${changes(ours().length)} kept on this device: sign in again and they are sent.`);
    return false;
}

function waits(edit, milliseconds, why) {
    queue.stays(edit.id);
    say(`${why} ${changes(ours().length)} kept on this device and will be sent again.`);
    later(milliseconds);
    return false;
}

/** The page's token may be older than the sign-in; a fresh page has a fresh one. */
async function renew(edit) {
    renewed = true;
    queue.stays(edit.id);
    try {
        const page = new DOMParser().parseFromString(await (await fetch(location.pathname)).text(), "text/html");
        const fresh = page.querySelector("meta[name=csrf]")?.content;
        if (!fresh) return signedOut(edit);
        document.querySelector("meta[name=csrf]").content = fresh;
        return true;
    } catch {
        return waits(edit, AGAIN_SOON, "No connection.");
    }
}

function kept(edit, html) {
    const page = new DOMParser().parseFromString(html, "text/html");
    queue.went(edit.id, Number(page.getElementById("inside")?.dataset.version ?? edit.base + 1));
    show(page, { done: edit.path });
    if (Date.now() > noted) say(rest());
    return true;
}

// Someone changed the job first. Where the field still holds what its maker saw, both changes stand; else the person is asked, and what
// else waits, waits for the answer.
function second(edit, html) {
    const page = new DOMParser().parseFromString(html, "text/html");
    const version = Number(page.getElementById("inside")?.dataset.version ?? 0);
    const theirs = page.querySelector("#conflict p")?.textContent ?? "";
    const now = edit.path && edit.was !== undefined ? valueIn(page, edit) : undefined;
    if (now !== undefined && hasArrived(edit, now)) {
        page.getElementById("conflict")?.remove();
        queue.went(edit.id, version);
        show(page, { done: edit.path });
        say(rest());
        return true;
    }
    if (now !== undefined && isOwn(edit, now)) {
        queue.mark(edit.id, { asked: false, base: version });
        page.getElementById("conflict")?.remove();
        show(page, {});
        say(`Meanwhile: ${theirs} Your change is put in as well.`);
        noted = Date.now() + TO_READ;
        setTimeout(() => { if (!ours().length) say(rest()); }, TO_READ);
        return true;
    }
    again.delete(edit.id);
    if (edit.path) {
        asking = { id: edit.id, version, value: now };
        queue.mark(edit.id, { asked: true });
    } else queue.drop(edit.id);
    show(page, {});
    say(rest());
    return !edit.path;
}

function valueIn(page, edit) {
    for (const form of page.querySelectorAll("form.field")) {
        if (form.elements.namedItem("path").value !== edit.path) continue;
        return (form.dataset.of ?? "") === (edit.of ?? "") ? form.elements.namedItem("value").value : undefined;
    }
    return undefined;
}
