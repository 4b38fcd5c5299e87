import { takeHold } from "./handles.js";
import { morph } from "./morph.js";
import { keepSpaces } from "./space.js";
import { keepZoom } from "./zoom.js";

// Edits go out one at a time, in the order they were made, each on the version the last answer showed. So an answer can never overwrite a
// newer one, and what was typed while the line was down is sent when it is back.
const waiting = [];
let sending = false;
const line = document.getElementById("line");

const inside = () => document.getElementById("inside");
const shownVersion = () => Number(inside()?.dataset.version ?? 0);

function say(words) {
    line.textContent = words;
    line.hidden = !words;
}

function enqueue(form, button) {
    const fields = new URLSearchParams(new FormData(form));
    if (button?.name) fields.set(button.name, button.value);
    const path = fields.get("path") ?? "";
    const at = form.getAttribute("action");
    push({ at, fields, path });
}

// A later value for the same field takes the place of one that is still waiting.
function push(edit) {
    const last = waiting.findIndex((other, i) => edit.path && other.path === edit.path && !(i === 0 && sending));
    if (last >= 0) waiting.splice(last, 1);
    waiting.push(edit);
    send();
}

function move(path, value) {
    const fields = new URLSearchParams({ _csrf: document.querySelector("meta[name=csrf]").content, path, unit: "WORDS", value });
    push({ at: inside().dataset.at + "/edit", fields, path });
}

async function send() {
    if (sending || waiting.length === 0) return;
    sending = true;
    const edit = waiting[0];
    edit.fields.set("version", String(shownVersion()));
    let answer;
    try {
        answer = await fetch(edit.at, { method: "POST", body: edit.fields, headers: { "X-Live": "1" }, redirect: "error" });
    } catch {
        sending = false;
        say(waiting.length === 1 ? "No connection. One change is kept here and will be sent again." : `No connection. ${waiting.length} changes are kept here and will be sent again.`);
        setTimeout(send, 1500);
        return;
    }
    waiting.shift();
    sending = false;
    if (answer.ok || answer.status === 409 || answer.status === 422) {
        if (answer.status === 409) waiting.length = 0;
        show(await answer.text());
        say("");
    } else {
        waiting.length = 0;
        say("That change was not kept. Load the page again and repeat it.");
    }
    send();
}

function show(html) {
    const page = new DOMParser().parseFromString(html, "text/html");
    const next = page.getElementById("inside");
    if (!next || Number(next.dataset.version) < shownVersion()) return;
    const kept = typing();
    for (const old of document.querySelectorAll(".was")) old.remove();
    const before = new Map([...document.querySelectorAll("[data-number]")].map((number) => [number.dataset.number, number.textContent]));
    morph(document.getElementById("job-bar"), page.getElementById("job-bar"));
    morph(inside(), next);
    for (const number of document.querySelectorAll("[data-number]")) showChange(number, before.get(number.dataset.number));
    keepZoom();
    keepSpaces();
    restore(kept);
    document.getElementById("conflict")?.focus();
    takeHold(move);
    if (kept.held) document.querySelector(`.sheet [data-of="${CSS.escape(kept.held)}"][tabindex]`)?.focus({ preventScroll: true });
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
    for (const edit of waiting) if (edit.path) texts.set(edit.path, edit.fields.get("value"));
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
    if (!form) return;
    event.target.dataset.sent = event.target.value;
    enqueue(form);
});

document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.matches("form[data-live]")) return;
    event.preventDefault();
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

// The thing that is pointed at or focused is ringed everywhere it appears; a line for several things rings them all, and is ringed by each.
function ring(of) {
    for (const old of document.querySelectorAll(".ring")) old.classList.remove("ring");
    for (const one of of.split(" ")) {
        if (!one) continue;
        for (const thing of document.querySelectorAll(`[data-of~="${CSS.escape(one)}"]`)) if (!thing.matches(".panel")) thing.classList.add("ring");
    }
}
const thingAt = (target) => target?.closest?.("[data-of]")?.dataset.of ?? "";
document.addEventListener("pointerover", (event) => { if (!pinned) ring(thingAt(event.target)); });
document.addEventListener("focusin", (event) => { if (!pinned) ring(thingAt(event.target)); });
// A click on a line or a thing drawn holds its ring while one looks for it elsewhere on the page; a click beside it, or Escape, lets go.
let pinned = "";
function pin(of) {
    pinned = of;
    ring(of);
    for (const one of of.split(" ")) {
        const fold = one && document.querySelector(`details.fold[data-of="${CSS.escape(one)}"]`);
        if (fold) { fold.open = true; fold.scrollIntoView({ block: "nearest" }); }
    }
}
document.addEventListener("click", (event) => pin(event.target.closest?.("tr[data-of], .sheet [data-of]")?.dataset.of ?? ""));
document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") pin("");
    if (event.key === "Enter" && event.target.matches?.("tr[data-of]")) pin(event.target.dataset.of);
});

for (const here of document.querySelectorAll("[data-here]")) here.value = location.pathname;
takeHold(move);
addEventListener("online", send);
addEventListener("beforeunload", (event) => { if (waiting.length) event.preventDefault(); });
