import { queueOf } from "/assets/queue.js";
import { crew } from "./crew.js";
import { desk } from "./desk.js";
import { drawings } from "./drawings.js";
import { findings } from "./findings.js";
import { heldJob, heldJobs, hold, letGo, photosOf } from "./held.js";
import { measuring } from "./measuring.js";
import { numbers } from "./numbers.js";
import { OpenJob, STEPS } from "./openjob.js";
import { fetched, sendAll } from "./sender.js";
import { putBack, writeDown } from "./waiting.js";
import { changes, escaped, part, stoppedAt } from "./words.js";

// The field book: the jobs this device holds, each with what is measured, changed and worked out of it here.
const content = document.getElementById("content");
const line = document.getElementById("line");
const nav = document.getElementById("pages");
const PAGES = { measure: "Measure", numbers: "Numbers", findings: "Findings", drawings: "Drawings", crew: "Crew sheet", away: "At the desk" };
const FOR_HANDS = ["findings", "drawings", "crew", "away"];
const VERDICTS = { passes: "\u2713 passes", fails: "\u25a0 must fix", open: "\u25cc open questions" };
const VIEWS = { measure: measuring, numbers, findings, drawings, crew, away: (place, book) => desk(place, book, decided) };
const AGAIN = 5000;

/** The one line under the bar. It is read aloud when it changes, so it is not written again where it says the same. */
function say(words) {
    if (line.textContent !== words) line.textContent = words;
    line.hidden = !words;
}

// ---- the engine

let engine = null;
let noEngine = "";
const WITHOUT = {
    away: (words) => `The engine is not on this device, and could not be fetched (${words}). Open this page once more where there is a signal. What you changed is kept.`,
    spoilt: () => "The engine on this device is spoilt. Open this page once more where there is a signal: it is fetched anew. What you changed is kept.",
    cannot: (words) => `The engine cannot run in this browser: ${words}. Bring the browser up to date. The rooms work with the signal.`,
};

function without({ why, words }) {
    engine = null;
    noEngine = WITHOUT[why](words);
    say(noEngine);
    if (open) head(open);
}

/** The script that starts it comes with the engine, and a workspace may have been put together without one. */
function engineFrom(script) {
    const thread = script.then(({ engineBeside }) => engineBeside(without));
    thread.catch((fault) => without({ why: "away", words: fault.message }));
    return { ask: async (...asked) => (await thread).ask(...asked) };
}

function engineHere() {
    engine ??= engineFrom(import("./beside.js"));
    return engine;
}

// ---- the open job

let open = null;
let view = {};

const told = {
    // A page without drawings asks for none; no part named would be all of them.
    asks: () => view.asks?.() ?? { parts: ["none"], known: [], later: [] },
    step(book, laid) {
        if (book !== open) return;
        head(book);
        view.step?.(laid);
    },
    kept(book) {
        if (book !== open) return;
        tellWaiting(book);
        send();
    },
    stopped(book, words) {
        if (book !== open || noEngine) return;
        head(book);
        for (const part of content.querySelectorAll(".coming")) part.textContent = stoppedAt(words);
        tellWaiting(book);
    },
};

function head(book) {
    document.getElementById("title").textContent = book.held.title;
    const verdict = document.getElementById("verdict");
    verdict.textContent = VERDICTS[book.verdict()] ?? "";
    verdict.dataset.verdict = book.verdict();
    const isBehind = book.isWorked && (book.step === STEPS.NONE || book.step === STEPS.LAID);
    document.body.dataset.step = book.isWorked ? book.step : STEPS.PRICED;
    const doing = book.fault ? "stopped" : book.step === STEPS.NONE ? "getting ready" : "working it out";
    document.getElementById("working").textContent = !isBehind ? "" : noEngine ? "no engine" : doing;
    for (const part of document.querySelectorAll(".follows")) part.setAttribute("aria-busy", String(isBehind && !book.fault));
}

/** What waits, and whether it is safe here. */
function keptHere(book) {
    const count = book.queue.count();
    const one = count === 1;
    if (book.isWrittenDown) return `${changes(count)} ${one ? "is" : "are"} kept on this device.`;
    return `${changes(count)} ${one ? "waits" : "wait"} to be sent, and this device may lose ${one ? "it" : "them"} with its battery: it writes nothing more down. Make room on it.`;
}

function tellWaiting(book) {
    const count = book.queue.count();
    const asked = book.queue.list().filter((edit) => edit.asked).length;
    if (asked) say(`${asked} of ${changes(count)} on this device ${asked === 1 ? "needs" : "need"} a word: someone changed the same value, or it was refused. See "At the desk".`);
    else if (count && !book.isWrittenDown) say(keptHere(book));
    else if (book.fault && !noEngine) say(stoppedAt(book.fault));
    else if (count) say(`${changes(count)} ${count === 1 ? "is" : "are"} kept on this device${navigator.onLine ? " and sent now" : "; no signal"}.`);
    else if (noEngine) say(noEngine);
    else say(navigator.onLine ? "" : "No signal. What you change is kept on this device.");
}

function decided() {
    open.writeDown();
    open.work();
    tellWaiting(open);
    show();
}

let sending = false;
let nextTry = 0;
async function send() {
    const book = open;
    if (!book || sending || !book.isWorked || !navigator.onLine) return;
    sending = true;
    try {
        await sendOf(book);
    } catch (fault) {
        if (open === book) say(`What waits could not be sent (${fault.message}). It is kept on this device.`);
    } finally {
        sending = false;
    }
    // A change may have come while the last one went, and a server may be back before a browser says so.
    if (open === book && book.queue.list().some((edit) => !edit.asked)) {
        clearTimeout(nextTry);
        nextTry = setTimeout(send, AGAIN);
    }
}

async function sendOf(book) {
    const before = book.held.version;
    const photos = (await photosOf(book.id)).length;
    const waited = JSON.stringify(book.queue.list());
    const problem = await sendAll(book.id, book.held.person, (job) => { book.held = job; });
    await book.writeDown();
    const photosLeft = (await photosOf(book.id)).length;
    if (open !== book) return;
    const moved = book.held.version !== before;
    if (moved) book.work();
    if (moved || JSON.stringify(book.queue.list()) !== waited || photosLeft !== photos) view.fresh?.();
    tellWaiting(book);
    const kept = book.fault ? stoppedAt(book.fault) : book.queue.count() ? keptHere(book) : "";
    if (problem) say(`${problem} ${kept}`.trim());
}

/** What waits of jobs that are held and not open goes up from the list. */
async function sendFrom(jobs) {
    if (sending || !navigator.onLine) return;
    sending = true;
    let went = false;
    let problem = "";
    try {
        for (const job of jobs) {
            const before = job.seen ? 0 : await waitingOf(job);
            if (!before) continue;
            const stop = await sendAll(job.id, job.person, () => {});
            if (stop) problem = `${job.title}: ${stop}`;
            await writeDown(job.id, job.person);
            went ||= (await waitingOf(job)) < before;
        }
    } catch (fault) {
        if (!open) say(`What waits could not be sent (${fault.message}). It is kept on this device.`);
    } finally {
        sending = false;
    }
    if (open) return send();
    if (problem) say(problem);
    if (went) list();
}

/** How many changes that need no word, and photos. */
const waitingOf = async ({ id, person }) => queueOf(id, person).list().filter((edit) => !edit.asked).length + (await photosOf(id)).length;

async function openJob(id) {
    if (open?.id === id) return open;
    const held = await heldJob(id);
    if (!held) return null;
    await putBack(id, held.person);
    open?.close();
    open = new OpenJob(held, held.seen ? null : engineHere(), told);
    if (!held.seen) {
        open.engine.ask("stock", held.kit ?? "{}").then((problem) => { if (problem) say("The house's prices cannot be read here: " + problem); }, () => {});
        open.work();
    }
    // A device that is full says so before more is keyed in.
    if (open.queue.count()) open.writeDown().then(() => { if (open?.id === id) tellWaiting(open); });
    return open;
}

// ---- what is on the screen

async function list() {
    open?.close();
    open = null;
    document.getElementById("title").textContent = "Field book";
    document.body.dataset.page = "list";
    document.getElementById("verdict").textContent = "";
    document.getElementById("working").textContent = "";
    nav.hidden = true;
    const jobs = await heldJobs();
    for (const job of jobs) await putBack(job.id, job.person);
    content.replaceChildren(part(jobs.length
        ? `<h2>On this device</h2><ul class="held-jobs">${(await Promise.all(jobs.map(heldLine))).join("")}</ul><p class="about">A new job, and one that is not here, need the signal: open it at the desk and press Take along.</p>`
        : "<p>No job is on this device yet. Open one at the desk while there is a signal, and press Take along.</p>"));
    const isKept = navigator.serviceWorker ? document.body.dataset.kept === "yes" || Boolean(await navigator.serviceWorker.getRegistration().then((keeper) => keeper?.active)) : false;
    content.append(part(`<p class="about">${isKept ? "This page is on the device and opens without a signal." : "This page is not kept on the device yet, and needs the signal until it is."}</p>`));
    for (const button of content.querySelectorAll("[data-drop]")) button.addEventListener("click", async () => {
        const job = jobs.find((one) => one.id === button.dataset.drop);
        const waits = await notSent(job);
        if (waits) say(`Of this job ${waits} did not go up yet. Open it where there is a signal first.`);
        else { await letGo(job.id); list(); }
    });
    sendFrom(jobs);
}

async function heldLine(job) {
    const waits = await notSent(job);
    const taken = new Date(job.takenAt).toLocaleString("en-US", { dateStyle: "medium", timeStyle: "short" });
    return `<li><a href="#${job.id}/measure">${escaped(job.title)}</a> <small>taken along ${taken}${waits ? `, ${waits} not sent yet` : ""}</small> <button type="button" data-drop="${job.id}" class="quiet">Leave behind</button></li>`;
}

/** What of a job has not gone up, in words; empty where all has. */
async function notSent({ id, person }) {
    const count = queueOf(id, person).count();
    const photos = (await photosOf(id)).length;
    return [count && changes(count), photos && (photos === 1 ? "1 photo" : `${photos} photos`)].filter(Boolean).join(" and ");
}

async function take(id) {
    say("Taking the job along.");
    const { job, problem } = await fetched(id);
    if (!job) { say(problem); return list(); }
    await hold(job);
    open?.close();
    open = null;
    navigator.storage?.persist?.();
    say("");
    location.replace(`#${id}/${job.seen ? "crew" : "measure"}`);
}

async function show() {
    const [id, page = "measure"] = location.hash.slice(1).split("/");
    try {
        if (id.startsWith("take=")) return await take(id.slice(5));
        if (!id) return await list();
        const book = await openJob(id);
        if (!book) { say("This job is not on this device. Take it along from the desk."); return await list(); }
        const pages = Object.keys(PAGES).filter((key) => book.isWorked || FOR_HANDS.includes(key));
        const shown = pages.includes(page) ? page : "findings";
        nav.hidden = false;
        nav.replaceChildren(part(pages.map((key) => `<a href="#${id}/${key}"${key === shown ? ' aria-current="page"' : ""}>${PAGES[key]}</a>`).join("")));
        scrollTo(0, 0);
        view = VIEWS[shown](content, book) ?? {};
        head(book);
        document.body.dataset.page = shown;
        tellWaiting(book);
        if (book.queue.count() || (await photosOf(id)).length) send();
    } catch (fault) {
        say(fault.message);
    }
}

/** The engine may be had now. */
function anew() {
    noEngine = "";
    open?.close();
    open = null;
    show();
}

addEventListener("hashchange", show);
addEventListener("online", () => {
    if (noEngine) anew();
    if (open) { tellWaiting(open); send(); }
    else heldJobs().then(sendFrom);
});
// What cannot be had without a signal says so where it is pressed, instead of leaving for a page that does not come.
addEventListener("click", (event) => {
    const away = event.target.closest?.("a[href]");
    if (!away || navigator.onLine || away.pathname.startsWith("/field-book/")) return;
    event.preventDefault();
    say(`${away.textContent.trim()}: that needs the signal. What you change here is kept on this device.`);
});
addEventListener("offline", () => { if (open) tellWaiting(open); });
navigator.serviceWorker?.register("/field-book/worker.js").then((keeper) => {
    const coming = keeper.installing;
    coming?.addEventListener("statechange", () => {
        if (coming.state === "redundant" && !keeper.active) say("This page did not come whole and is not kept on the device. Open it once more where there is a signal, before you drive out.");
    });
}).catch((fault) => { if (navigator.onLine) say("This page cannot be kept on the device: " + fault.message); });
navigator.serviceWorker?.ready.then(() => {
    document.body.dataset.kept = "yes";
    // The engine that did not come over a bad line may have come with the rest of the page.
    if (noEngine) anew();
});
show();
