import { isInHand, takeHold } from "./handles.js";
import "./keypad.js";
import { morph } from "./morph.js";
import { waitingJobs } from "./queue.js";
import { decided, isAsking, put, queue, roomNow, sendWith } from "./sending.js";
import { keepSheets, seeInDrawing } from "./sheets.js";
import { keepSpaces } from "./space.js";
import { triesWith } from "./tries.js";
import { keepZoom } from "./zoom.js";

// What is typed, picked or dragged answers on this page without loading it again.
const line = document.getElementById("line");
const inside = () => document.getElementById("inside");
const shownVersion = () => Number(inside()?.dataset.version ?? 0);
const refused = new Map();

function say(words) {
    line.textContent = words;
    line.hidden = !words;
}

const fieldOf = (path) => [...document.querySelectorAll("form.field")].find((form) => form.elements.namedItem("path").value === path);
const valueShown = (form) => {
    const control = form?.elements.namedItem("value");
    if (!control) return undefined;
    return control.options ? ([...control.options].find((option) => option.defaultSelected) ?? control.options[0])?.value : control.defaultValue;
};

function enqueue(form, button) {
    const fields = new FormData(form);
    if (button?.name) fields.set(button.name, button.value);
    const pairs = [...fields].filter(([name, value]) => name !== "_csrf" && name !== "version" && typeof value === "string");
    const path = fields.get("path") ?? "";
    refused.delete(path);
    const known = form.matches(".field") ? { was: valueShown(form), of: form.dataset.of ?? "" } : {};
    put({ at: form.getAttribute("action"), path, fields: pairs, ...known });
}

/** Whether a change of this value has not been answered yet, nor asked about. */
const isWaiting = (path) => (queue?.list() ?? []).some((edit) => edit.path === path && !edit.asked);

/** What was dragged: one value, or two that are one change. */
function move(values) {
    if (values.length > 1) {
        tries.end();
        put({ at: inside().dataset.at + "/press", path: "", fields: [["edit", values.map(([path, value]) => `${path}=${value}`).join("; ")]] });
        return;
    }
    const [[path, value]] = values;
    const form = fieldOf(path);
    const known = form ? { was: valueShown(form), of: form.dataset.of ?? "" } : {};
    tries.end();
    put({ at: inside().dataset.at + "/edit", path, fields: [["path", path], ["unit", "WORDS"], ["value", value]], ...known });
}

/** Answers that came while something was held: shown when it is let go. */
const unseen = [];

function show(page, { done = "", refused: bad = "" }) {
    if (isInHand()) {
        unseen.push([page, { done, refused: bad }]);
        return;
    }
    const next = page.getElementById("inside");
    if (!next || !inside() || Number(next.dataset.version) < shownVersion()) return;
    refused.delete(done);
    if (next.dataset.at !== inside().dataset.at) {
        fromElsewhere(page, bad);
        return;
    }
    if (bad) keepRefused(page, bad);
    const kept = typing();
    for (const old of document.querySelectorAll(".was")) old.remove();
    const before = new Map([...document.querySelectorAll("[data-number]")].map((number) => [number.dataset.number, number.textContent]));
    // What is asked here stays asked whatever else the page shows meanwhile.
    const card = isAsking() && !page.getElementById("conflict") ? document.getElementById("conflict")?.cloneNode(true) : null;
    morph(document.getElementById("job-bar"), page.getElementById("job-bar"));
    morph(inside(), next);
    if (card) inside().prepend(card);
    for (const number of document.querySelectorAll("[data-number]")) showChange(number, before.get(number.dataset.number));
    keepZoom();
    keepSpaces();
    keepSheets();
    restore(kept);
    showRefused();
    if (!card) document.getElementById("conflict")?.focus();
    takeHold(move, tries, isWaiting, showUnseen);
    if (kept.held) document.querySelector(`.sheet [data-of="${CSS.escape(kept.held)}"][tabindex]`)?.focus({ preventScroll: true });
}

function showUnseen() {
    for (const [page, what] of unseen.splice(0)) show(page, what);
}

// A change made on another page of this job went from this one: its answer shows that page, so this one is asked for as it is now.
async function fromElsewhere(page, bad) {
    const now = await roomNow();
    if (now) show(now, {});
    const conflict = page.getElementById("conflict");
    if (conflict) {
        document.getElementById("conflict")?.remove();
        inside().prepend(document.importNode(conflict, true));
        document.getElementById("conflict").focus();
    }
    if (bad) say(`A change from another page of this job was not kept: ${page.querySelector(".problem")?.textContent ?? "it does not read"}`);
}

// While something is dragged, the numbers and the other drawings show what it would come to; the drawing in the hand stays as it is.
function showTry(page, figure) {
    const numbers = page.getElementById("numbers");
    if (!numbers) return;
    const kept = typing();
    for (const old of document.querySelectorAll(".was")) old.remove();
    const others = [...document.querySelectorAll(".sheets > figure")].filter((other) => other.dataset.key !== figure);
    for (const other of others) {
        const next = [...page.querySelectorAll(".sheets > figure")].find((one) => one.dataset.key === other.dataset.key);
        if (next) morph(other, next);
    }
    const verdicts = [document, page].map((one) => one.querySelector("#job-bar .verdict"));
    if (verdicts[0] && verdicts[1]) morph(...verdicts);
    morph(document.getElementById("numbers"), numbers);
    keepZoom();
    keepSpaces();
    restore(kept);
}
const tries = triesWith(showTry);

// What was made behind the page is there.
document.addEventListener("made", (event) => show(event.detail, {}));

// Away from a job's rooms: which jobs have changes on this device that have not gone yet.
function sayWaiting() {
    const jobs = waitingJobs(document.querySelector("meta[name=person]")?.content ?? "");
    if (!jobs.length) return;
    line.hidden = false;
    line.textContent = "Changes wait on this device. They are sent when their job is opened: ";
    for (const { job, count } of jobs) {
        const link = document.createElement("a");
        link.href = "/jobs/" + job;
        const named = [...document.querySelectorAll("main a")].find((other) => other.getAttribute("href")?.startsWith("/jobs/" + job));
        link.textContent = `${named?.textContent.trim() || "a job"} (${count})`;
        line.append(link, " ");
    }
}

// What was typed and refused stays in its field, with what is wrong with it, until something else is typed there.
function keepRefused(page, path) {
    for (const form of page.querySelectorAll("form.field.refused"))
        if (form.elements.namedItem("path").value === path)
            refused.set(path, { value: form.elements.namedItem("value").value, problem: form.querySelector(".problem")?.textContent ?? "" });
}

function showRefused() {
    for (const [path, { value, problem }] of refused) {
        const form = fieldOf(path);
        if (!form || form.matches(".refused") || !problem) continue;
        form.classList.add("refused");
        const control = form.elements.namedItem("value");
        control.value = value;
        control.setAttribute("aria-invalid", "true");
        const words = document.createElement("strong");
        words.className = "problem";
        words.textContent = problem;
        form.querySelector(".about").replaceChildren(words);
    }
}

function showChange(number, was) {
    const now = number.textContent;
    if (was === undefined || was === now || number.dataset.number === "verdict") return;
    number.classList.add("changed");
    const old = document.createElement("span");
    old.className = "was";
    old.textContent = was;
    number.prepend(old);
    setTimeout(() => { old.remove(); number.classList.remove("changed"); }, 4000);
}

// What is being typed right now, or is still waiting to be sent, stays in its field whatever the answer says.
function typing() {
    const active = document.activeElement;
    const texts = new Map();
    for (const edit of queue?.list() ?? []) if (edit.path && !edit.asked) texts.set(edit.path, new Map(edit.fields).get("value"));
    const form = active?.closest?.("form[data-live]");
    const path = form?.elements.namedItem("path")?.value;
    const dirty = active?.matches?.("input[name=value]") && active.value !== active.defaultValue && active.dataset.sent !== active.value;
    if (dirty) texts.set(path, active.value);
    let caret = null;
    try { caret = active?.selectionStart ?? null; } catch { caret = null; }
    const held = active?.closest?.(".sheet [data-of]")?.dataset.of ?? "";
    return { texts, active, caret, held };
}

function restore(kept) {
    for (const form of document.querySelectorAll("form.field")) {
        const path = form.elements.namedItem("path").value;
        if (kept.texts.has(path)) form.elements.namedItem("value").value = kept.texts.get(path);
    }
    if (kept.active?.isConnected && kept.active !== document.activeElement) kept.active.focus({ preventScroll: true });
    if (kept.caret !== null && kept.active?.matches?.("input[name=value]")) kept.active.setSelectionRange(kept.caret, kept.caret);
}

document.addEventListener("change", (event) => {
    const form = event.target.closest("form.field[data-live]");
    if (!form || (!event.isTrusted && event.target.dataset.sent === event.target.value)) return;
    event.target.dataset.sent = event.target.value;
    enqueue(form);
});

document.addEventListener("submit", (event) => {
    const form = event.target;
    if (form.matches("#conflict form:not([data-live])")) decided(false);
    if (!form.matches("form[data-live]")) return;
    event.preventDefault();
    if (form.closest("#conflict")) {
        decided(true);
        return;
    }
    const value = form.matches(".field") ? form.elements.namedItem("value") : null;
    if (value && value.dataset.sent === value.value) return;
    if (value) {
        if (value.value === value.defaultValue) return;
        value.dataset.sent = value.value;
    }
    enqueue(form, event.submitter);
});

document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.matches("input, textarea, select")) return;
    const redo = event.key.toLowerCase() === "y" || (event.shiftKey && event.key.toLowerCase() === "z");
    const button = redo ? document.querySelector("[data-key=redo]") : event.key.toLowerCase() === "z" ? document.querySelector("[data-key=undo]") : null;
    if (!button || button.disabled) return;
    event.preventDefault();
    button.form.requestSubmit(button);
});

// Post P7 and its footing F7 are looked for together.
const withHoles = (things) => [...new Set(things.flatMap((one) => (/^[PF]\d/.test(one) ? ["P" + one.slice(1), "F" + one.slice(1)] : [one])))];

// The thing that is pointed at or focused is ringed everywhere it appears; a line for several things rings them all, and is ringed by each.
function ring(of) {
    for (const old of document.querySelectorAll(".ring")) old.classList.remove("ring");
    for (const one of withHoles(of.split(" "))) {
        if (!one) continue;
        for (const thing of document.querySelectorAll(`[data-of~="${CSS.escape(one)}"]`)) if (!thing.matches(".panel")) thing.classList.add("ring");
    }
}
const thingAt = (target) => target?.closest?.("[data-of]")?.dataset.of ?? "";
document.addEventListener("pointerover", (event) => { if (!pinned) ring(thingAt(event.target)); });
document.addEventListener("focusin", (event) => { if (!pinned) ring(thingAt(event.target)); });
// A click on a line or a thing drawn holds its ring while one looks for it elsewhere on the page; a click beside it, or Escape, lets go.
let pinned = "";
function pin(of, target) {
    pinned = of;
    ring(of);
    seeInDrawing(target?.closest?.(".drawing") ? "" : of);
    for (const one of of.split(" ")) {
        const fold = one && document.querySelector(`details.fold[data-of="${CSS.escape(one)}"]`);
        if (fold) { fold.open = true; fold.scrollIntoView({ block: "nearest" }); }
    }
}
document.addEventListener("click", (event) => {
    if (event.target.closest?.(".seen, [data-leaf]")) return;
    pin(event.target.closest?.("tr[data-of], .row[data-of], .note[data-of], .sheet [data-of]")?.dataset.of ?? "", event.target);
});
document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") pin("");
    if (event.key === "Enter" && event.target.matches?.("tr[data-of]")) pin(event.target.dataset.of);
});

// A narrow screen gets drawings of its own: the server is told how wide this one is, and asked again where it guessed otherwise.
const narrow = matchMedia("screen and (max-width: 820px)");
let fittings = 0;
async function fitBreadth() {
    const mine = ++fittings;
    const breadth = narrow.matches ? "narrow" : "wide";
    document.cookie = `breadth=${breadth}; path=/; max-age=31536000; SameSite=Lax`;
    if (!inside()?.dataset.breadth || inside().dataset.breadth === breadth) return;
    const now = await roomNow();
    // Where the screen was turned meanwhile, this answer is for how it was held before.
    if (now && mine === fittings) show(now, {});
}
narrow.addEventListener("change", fitBreadth);

for (const here of document.querySelectorAll("[data-here]")) here.value = location.pathname;
takeHold(move, tries, isWaiting, showUnseen);
keepZoom();
keepSheets();
fitBreadth();
if (queue) {
    restore(typing());
    sendWith(show, say);
} else sayWaiting();
