import { queueOf } from "/assets/queue.js";
import { changed, valueAt } from "./edits.js";
import { dragging } from "./dragging.js";
import { heldJob, heldJobs, hold, letGo, photosOf } from "./held.js";
import { measuring } from "./measuring.js";
import { fetched, sendAll } from "./sender.js";

// The field book: the jobs this device holds, each with what is measured, changed and worked out of it here.
const content = document.getElementById("content");
const line = document.getElementById("line");
const nav = document.getElementById("pages");
const PAGES = { measure: "Measure", numbers: "Numbers", findings: "Findings", drawings: "Drawings", crew: "Crew sheet", away: "At the desk" };
const FOR_HANDS = ["findings", "drawings", "crew", "away"];
const AGAIN = 5000;

const part = (html) => document.createRange().createContextualFragment(html);
const escaped = (text) => String(text).replace(/[&<>"]/g, (one) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[one]);

function say(words) {
    line.textContent = words;
    line.hidden = !words;
}

let engine;
async function ready() {
    engine ??= import("./engine.js").then((script) => script.engineFrom(fetch("/field-book/engine.packed"))).catch((fault) => {
        engine = undefined;
        throw new Error("The engine cannot run in this browser (" + fault.message + "). The rooms work with the signal.");
    });
    return engine;
}

/** One open job: its text with what waits, and what the engine makes of it. */
class OpenJob {
    constructor(held, worked) {
        this.held = held;
        this.id = held.id;
        this.queue = queueOf(held.id, held.person);
        this.worked = worked;
        if (worked) this.work();
    }
    work() {
        this.now = changed(this.held.document, this.queue.list());
        this.text = JSON.stringify(this.now);
        this.result = this.designed(this.text);
    }
    /** What the engine makes of a job. Of the job it made last it need not be asked again: a change is tried before it is kept. */
    designed(text) {
        if (this.last?.text !== text) this.last = { text, result: JSON.parse(this.worked.design(text)) };
        return this.last.result;
    }
    job() { return this.now; }
    /** What waits goes now where there is a signal: a photo is no change and tells nobody that it is there. */
    send() { return send(); }
    /** What the field held when it was first changed here. */
    was(path) { return this.queue.list().find((edit) => edit.path === path)?.was ?? valueAt(JSON.parse(this.held.document), path); }
    metric() { return this.now.display === "metric"; }
    findings() { return (this.worked ? this.result : JSON.parse(this.held.seen.design)).findings ?? []; }
    verdict() { return (this.worked ? this.result : JSON.parse(this.held.seen.design)).verdict ?? ""; }
    drawings() { return this.worked ? JSON.parse(this.worked.drawings(this.text)) : this.held.seen.drawings; }
    crewSheet() { return this.worked ? this.worked.crewSheet(this.text) : this.held.seen.crewSheet; }
    ground() { return JSON.parse(this.worked.ground(this.text)); }
    /** The layout alone with a post somewhere else: what a hand sees while it moves. */
    moved(run, post, station, keys) { return JSON.parse(this.worked.moved(run, post, station, keys.join(" "))); }
    /** What the whole job comes to with one value more; nothing is kept of it. */
    tried(edit) { return this.designed(this.with(edit)); }
    with(edit) { return JSON.stringify(changed(this.held.document, [...this.queue.list().filter((other) => other.path !== edit.path), edit])); }
    /** Puts a change in the queue where the job still reads well with it. @returns what is wrong; empty where nothing is */
    put(edit) {
        const wrong = this.tried(edit).errors?.[0];
        if (wrong) return `${wrong.field}: ${wrong.problem}; ${wrong.cure}.`;
        this.queue.put({ ...edit, base: Number(this.held.version) });
        this.work();
        tellWaiting(this);
        send();
        return "";
    }
}

let open = null;
const changes = (count) => (count === 1 ? "1 change is" : `${count} changes are`);

function tellWaiting(book) {
    const count = book.queue.count();
    const asked = book.queue.list().filter((edit) => edit.asked).length;
    if (asked) say(`${asked} of ${count} changes on this device need a word: someone changed the same value, or it was refused. See "At the desk".`);
    else if (count) say(`${changes(count)} kept on this device${navigator.onLine ? " and sent now" : " and go up when the signal is back"}.`);
    else say(navigator.onLine ? "" : "No signal. What you change is kept on this device.");
}

let sending = false;
async function send() {
    const book = open;
    if (!book || sending || !book.worked || !navigator.onLine) return;
    sending = true;
    const before = book.held.version;
    try {
        const photos = (await photosOf(book.id)).length;
        const problem = await sendAll(book.id, book.held.person);
        const held = await heldJob(book.id);
        const moved = held && held.version !== before;
        if (open === book && (moved || (await photosOf(book.id)).length !== photos)) {
            if (moved) {
                book.held = held;
                book.work();
            }
            show();
        }
        tellWaiting(book);
        if (problem) say(problem + (book.queue.count() ? ` ${changes(book.queue.count())} kept on this device.` : ""));
        if (book.queue.list().some((edit) => !edit.asked)) setTimeout(send, AGAIN);
    } finally {
        sending = false;
    }
}

async function list() {
    document.getElementById("title").textContent = "";
    nav.hidden = true;
    const jobs = await heldJobs();
    content.replaceChildren(part(jobs.length
        ? `<h2>On this device</h2><ul class="held-jobs">${jobs.map((job) => `<li><a href="#${job.id}/measure">${escaped(job.title)}</a> <small>taken along ${new Date(job.takenAt).toLocaleString("en-US")}${queueOf(job.id, job.person).count() ? `, ${queueOf(job.id, job.person).count()} changes wait` : ""}</small> <button type="button" data-drop="${job.id}" class="quiet">Leave behind</button></li>`).join("")}</ul>`
        : "<p>No job is on this device yet. Open one at the desk while there is a signal, and press Take along.</p>"));
    for (const button of content.querySelectorAll("[data-drop]")) button.addEventListener("click", async () => {
        const job = jobs.find((one) => one.id === button.dataset.drop);
        if (queueOf(job.id, job.person).count()) say("Changes of this job have not gone up yet. Open it where there is a signal first.");
        else { await letGo(job.id); list(); }
    });
}

async function take(id) {
    say("Taking the job along.");
    const { job, problem } = await fetched(id);
    if (!job) { say(problem); return; }
    await hold(job);
    navigator.storage?.persist?.();
    say("");
    location.replace(`#${id}/${job.seen ? "crew" : "measure"}`);
}

async function openJob(id) {
    if (open?.id === id) return open;
    const held = await heldJob(id);
    if (!held) return null;
    let worked = null;
    if (!held.seen) {
        worked = await ready();
        const problem = worked.stock(held.kit ?? "{}");
        if (problem) say("The house's prices cannot be read here: " + problem);
    }
    open = new OpenJob(held, worked);
    return open;
}

const mark = { "must-fix": "\u25a0 must fix", "cannot-say": "\u25cc cannot say", caution: "\u25b3 caution", pass: "\u2713 passes" };

const views = {
    measure: (book) => measuring(content, book),
    findings(book) {
        const told = book.findings().filter((one) => one.severity !== "pass");
        content.replaceChildren(part(`<h2>${book.verdict() === "passes" ? "Everything passes." : told.length + " to look at"}</h2><ul class="findings">${told.map((one) => `<li class="${one.severity}"><b>${mark[one.severity]}</b> ${escaped(one.message)} <small>${escaped(one.basis ?? "")}</small></li>`).join("")}</ul>
<p class="caution">Results are for review; local code governs. Have buried utilities located before you dig.</p>`));
    },
    drawings(book) {
        const hint = book.worked ? `<p class="how">Drag a line post along its run, or take it with Tab and move it with the arrow keys.</p><p id="dragged" class="dragged" role="status" hidden></p>` : "";
        content.replaceChildren(part(`${hint}<div class="sheets">${book.drawings().map((one) => `<figure class="sheet"><figcaption>${escaped(one.name)}</figcaption>${one.svg.replace(/^<\?xml[^>]*>/, "")}</figure>`).join("")}</div>`));
        if (book.worked) dragging(content, book, show);
    },
    crew: (book) => content.replaceChildren(part(book.crewSheet() || "<p>The job has errors; see its findings at the desk.</p>")),
    numbers,
    away(book) {
        const asked = book.queue.list().filter((edit) => edit.asked);
        content.replaceChildren(part(`<h2>What needs the signal</h2><ul class="plain"><li>Prices, the proposal and the order: worked out by the office with its yard.</li><li>The whole packet as PDF.</li><li>New runs, corners and gates; styles; people; the calendar; the history with undo.</li></ul>
${asked.length ? `<h2>Waiting for a word</h2><ul class="conflicts">${asked.map((edit) => asking(book, edit)).join("")}</ul>` : ""}
<p><a class="button" href="/jobs/${book.id}">Open the rooms of this job</a></p>`));
        for (const button of content.querySelectorAll("[data-give-up]")) button.addEventListener("click", () => { book.queue.drop(button.dataset.giveUp); decided(book); });
        for (const button of content.querySelectorAll("[data-keep]")) button.addEventListener("click", () => {
            const edit = asked.find((one) => one.id === button.dataset.keep);
            book.queue.mark(edit.id, { asked: false, was: atTheDesk(book, edit) });
            decided(book);
        });
    },
};

const atTheDesk = (book, edit) => (book.held.document ? valueAt(JSON.parse(book.held.document), edit.path) : "");

/** A change that needs a word: both values, and which stays. One that the server refused has nothing to choose but to be keyed in again. */
function asking(book, edit) {
    const mine = escaped(new Map(edit.fields).get("value") ?? "a new entry");
    const giveUp = (words) => `<button type="button" data-give-up="${edit.id}">${words}</button>`;
    if (edit.refused) return `<li><b>${escaped(edit.path)}</b> ${mine} was refused. Give it up, or change it under Numbers. ${giveUp("Give it up")}</li>`;
    return `<li><b>${escaped(edit.path)}</b> was ${escaped(edit.was) || "not said"} when you changed it; someone else changed it since.
<span class="choice"><button type="button" data-keep="${edit.id}">Keep yours: ${mine}</button> ${giveUp("Keep theirs: " + (escaped(atTheDesk(book, edit)) || "not said"))}</span></li>`;
}

function decided(book) {
    if (book.worked) book.work();
    tellWaiting(book);
    show();
}

/** The values one changes most in the yard, each kept as soon as it is typed. */
function numbers(book) {
    const fields = [];
    for (const run of book.job().runs ?? []) for (const [key, words] of [["infill", "Height"], ["bottomGap", "Bottom gap"], ["maxBay", "Longest bay"]]) fields.push([`runs[${run.id}].${key}`, `${words} of ${run.id}`, "line"]);
    for (const gate of book.job().gates ?? []) for (const [key, words] of [["station", "Station"], ["opening", "Opening"], ["leaf.bottomGap", "Bottom gap"], ["hinge", "Hinge, left or right"], ["swing", "Swing, in or out"]]) fields.push([`gates[${gate.id}].${key}`, `${words} of ${gate.id}`, "gates"]);
    for (const shot of book.job().ground?.shots ?? []) {
        const key = ["rod", "elevation", "falls", "rises"].find((one) => shot[one] !== undefined);
        if (key) fields.push([`ground.shots[${shot.id}].${key}`, `${key[0].toUpperCase() + key.slice(1)} of ${shot.id}`, "ground"]);
    }
    content.replaceChildren(part(`<h2>Numbers</h2><div class="fields">${fields.map(([path, words, room]) => `<label>${escaped(words)} <input data-path="${escaped(path)}" data-room="${room}" value="${escaped(valueAt(book.job(), path))}" autocomplete="off"><span class="problem"></span></label>`).join("")}</div>`));
    for (const input of content.querySelectorAll("input[data-path]")) input.addEventListener("change", () => {
        const { path, room } = input.dataset;
        const own = book.queue.list().find((edit) => path.startsWith(edit.path + ".") && new Map(edit.fields).has("list"));
        const wrong = own ? retaken(book, own, path.slice(own.path.length + 1), input.value) : book.put({
            at: `/jobs/${book.id}/${room}/edit`, path, fields: [["path", path], ["unit", "WORDS"], ["value", input.value.trim()]],
            was: book.was(path),
        });
        input.nextElementSibling.textContent = wrong;
        input.setAttribute("aria-invalid", wrong ? "true" : "false");
    });
}

/** A number of a shot that has not gone up yet: the shot itself is changed where it waits. */
function retaken(book, own, key, value) {
    return book.put({ ...own, id: undefined, fields: own.fields.map(([name, was]) => (name === key ? [name, value.trim()] : [name, was])) });
}

async function show() {
    const [id, page = "measure"] = location.hash.slice(1).split("/");
    const start = performance.now();
    try {
        if (id.startsWith("take=")) return await take(id.slice(5));
        if (!id) { open = null; return await list(); }
        const book = await openJob(id);
        if (!book) { say("This job is not on this device. Take it along from the desk."); return await list(); }
        document.getElementById("title").textContent = book.held.title + (book.verdict() ? " \u00b7 " + { passes: "passes", fails: "must fix", open: "open questions" }[book.verdict()] : "");
        nav.hidden = false;
        nav.replaceChildren(part(Object.entries(PAGES).filter(([key]) => book.worked || FOR_HANDS.includes(key)).map(([key, word]) => `<a href="#${id}/${key}"${key === page ? ' aria-current="page"' : ""}>${word}</a>`).join("")));
        (views[page] ?? views.findings)(book);
        document.body.dataset.shownIn = (performance.now() - start).toFixed(1);
        document.body.dataset.page = page;
        tellWaiting(book);
        if (book.queue.count() || (await photosOf(id)).length) send();
    } catch (fault) {
        say(fault.message);
    }
}

addEventListener("hashchange", show);
addEventListener("online", () => { if (open) { tellWaiting(open); send(); } });
addEventListener("offline", () => { if (open) tellWaiting(open); });
navigator.serviceWorker?.register("/field-book/worker.js").catch((fault) => say("This page cannot be kept on the device: " + fault.message));
navigator.serviceWorker?.ready.then(() => { document.body.dataset.kept = "yes"; });
show();
