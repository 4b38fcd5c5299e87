import { queueOf } from "/assets/queue.js";
import { valueAt } from "./edits.js";
import { hold, photosOf, photoWent, renamePhotos } from "./held.js";
import { renamed } from "./naming.js";

// What waits goes up when the signal is there: each change by the door its room has, on the job as it then stands. A shot more changes nothing of
// anyone's; a value goes up only where the field still holds what its maker saw, else it stays until its maker says which of the two is kept.

/** The job as the server has it now, or what keeps it from us. */
export async function fetched(id) {
    let answer;
    try {
        answer = await fetch(`/field-book/jobs/${id}`, { redirect: "manual" });
    } catch {
        return { problem: "No signal." };
    }
    if (answer.type === "opaqueredirect" || answer.status === 401) return { problem: "You are signed out. Sign in at the desk, then come back.", signedOut: true };
    if (answer.status === 404) return { problem: "This job is no longer there.", gone: true };
    if (!answer.ok) return { problem: "The server cannot answer now." };
    return { job: { ...(await answer.json()), takenAt: Date.now() } };
}

/** Sends all it can. @returns {Promise<string>} what still stands in the way; empty where nothing does */
export async function sendAll(id, person) {
    const lock = navigator.locks ? (work) => navigator.locks.request("plumbleaf." + id, work) : (work) => work();
    return lock(() => sendInOrder(id, person));
}

async function sendInOrder(id, person) {
    const queue = queueOf(id, person);
    let asked = "";
    while (true) {
        const { job, problem } = await fetched(id);
        if (!job) return problem;
        await hold(job);
        await named(queue, job);
        const edit = queue.list().find((one) => !one.asked);
        if (!edit) return asked || (await sendPhotos(id, job));
        if (!edit.at?.startsWith(`/jobs/${id}/`)) { queue.drop(edit.id); continue; }
        if (isBehind(edit, job)) {
            queue.mark(edit.id, { asked: true, base: Number(job.version) });
            asked = "Someone changed the same value. Under At the desk, say which stays.";
            continue;
        }
        const stop = await send(queue, edit, job);
        if (stop) return stop;
    }
}

/** What waits here takes other numbers where the desk has used them since, before anything reads the two together. */
async function named(queue, job) {
    if (!job.document) return;
    const { edits, gone, photos } = renamed(queue.list(), JSON.parse(job.document));
    for (const id of gone) queue.drop(id);
    for (const { id, ...now } of edits) queue.mark(id, now);
    await renamePhotos(job.id, photos);
}

function isBehind(edit, job) {
    return !new Map(edit.fields).has("list") && edit.was !== undefined && Boolean(job.document) && valueAt(JSON.parse(job.document), edit.path) !== edit.was;
}

async function send(queue, edit, job) {
    const body = new URLSearchParams(edit.fields.filter(([name]) => name !== "own"));
    body.set("_csrf", job.csrf);
    body.set("version", job.version);
    queue.goes(edit.id);
    let answer;
    try {
        answer = await fetch(edit.at, { method: "POST", body, headers: { "X-Live": "1" }, redirect: "manual" });
    } catch {
        queue.stays(edit.id);
        return "No signal.";
    }
    if (answer.ok) queue.went(edit.id, Number(job.version) + 1);
    else if (answer.status === 409) queue.stays(edit.id);
    else if (answer.status === 422 || answer.status === 400) queue.mark(edit.id, { asked: true, refused: true, base: Number(job.version) });
    else {
        queue.stays(edit.id);
        return answer.status === 403 ? "These changes are not yours to make." : "The server cannot take changes now.";
    }
    return "";
}

async function sendPhotos(id, job) {
    for (const photo of await photosOf(id)) {
        const form = new FormData();
        form.set("_csrf", job.csrf);
        form.set("part", photo.part);
        form.set("file", photo.blob, photo.name);
        try {
            const answer = await fetch(`/jobs/${id}/files`, { method: "POST", body: form, redirect: "manual" });
            if (answer.type !== "opaqueredirect" && !answer.ok) return "A photo was not taken in.";
        } catch {
            return "No signal.";
        }
        await photoWent(photo.id);
    }
    return "";
}
