import { hasArrived, isOwn, queueOf, unsure } from "/assets/queue.js";
import { changed, valueAt } from "./edits.js";
import { hold, photosOf, photoWent, renamePhotos } from "./held.js";
import { renamed } from "./naming.js";

// What waits goes up when the signal is there: each change by the door its room has, on the job as it then stands. A shot more changes nothing of
// anyone's; a value goes up only where the field still holds what its maker saw, else it stays until its maker says which of the two is kept.

/**
 * The job as the server has it now, or what keeps it from us.
 * @param {string[]} sent changes that went and whose answer was not heard; those of them that have come are told beside the job
 */
export async function fetched(id, sent = []) {
    let answer;
    try {
        answer = await fetch(`/field-book/jobs/${id}${sent.length ? `?sent=${sent}` : ""}`, { redirect: "manual" });
    } catch {
        return { problem: "No signal." };
    }
    if (answer.type === "opaqueredirect" || answer.status === 401) return { problem: "You are signed out. Sign in at the desk, then come back.", signedOut: true };
    if (answer.status === 404) return { problem: "This job is no longer there.", gone: true };
    if (!answer.ok) return { problem: "The server cannot answer now." };
    const { come = [], ...job } = await answer.json();
    return { job: { ...job, takenAt: Date.now() }, come: new Set(come) };
}

/**
 * Sends all it can; what waits for a word is marked in the queue and stays there.
 * @param {(job: object) => void} arrived told the job as the desk has it, each time that is known anew
 * @returns {Promise<string>} what stands in the way of the rest; empty where nothing does
 */
export async function sendAll(id, person, arrived) {
    const lock = navigator.locks ? (work) => navigator.locks.request("plumbleaf." + id, work) : (work) => work();
    return lock(() => sendInOrder(id, queueOf(id, person), arrived));
}

async function sendInOrder(id, queue, arrived) {
    const known = async (job) => {
        await hold(job);
        arrived(job);
    };
    while (true) {
        const { job, come, problem } = await fetched(id, unsure(queue.list()));
        if (!job) return problem;
        await named(queue, job, come);
        await known(job);
        const edit = queue.list().find((one) => !one.asked);
        if (!edit) return sendPhotos(id, job, queue);
        if (!edit.at?.startsWith(`/jobs/${id}/`)) { queue.drop(edit.id); continue; }
        if (come.has(edit.id) || isThere(edit, job)) {
            queue.went(edit.id, Number(job.version));
            continue;
        }
        if (isBehind(edit, job)) {
            queue.mark(edit.id, { asked: true });
            continue;
        }
        const stop = await send(queue, edit, job, known);
        if (stop) return stop;
    }
}

/** What waits here takes other numbers where the desk has used them since, before anything reads the two together. */
async function named(queue, job, come) {
    if (!job.document) return;
    const { edits, gone, retaken, photos } = renamed(queue.list(), JSON.parse(job.document), come);
    for (const id of gone) queue.drop(id);
    for (const { id, values } of retaken) {
        queue.drop(id);
        for (const value of values) queue.put({ ...value, base: Number(job.version) });
    }
    for (const { id, ...now } of edits) queue.mark(id, now);
    await renamePhotos(job.id, photos);
}

const setsValue = (edit, job) => !new Map(edit.fields).has("list") && edit.was !== undefined && Boolean(job.document);

/** The job says it already: it went up and the answer was lost on the way back, or somebody else found the same. */
function isThere(edit, job) {
    return setsValue(edit, job) && hasArrived(edit, valueAt(JSON.parse(job.document), edit.path));
}

function isBehind(edit, job) {
    return setsValue(edit, job) && !isOwn(edit, valueAt(JSON.parse(job.document), edit.path));
}

async function send(queue, edit, job, known) {
    const body = new URLSearchParams(edit.fields.filter(([name]) => name !== "own"));
    body.set("_csrf", job.csrf);
    body.set("version", job.version);
    body.set("sending", edit.id);
    queue.goes(edit.id);
    let answer;
    try {
        answer = await fetch(edit.at, { method: "POST", body, headers: { "X-Live": "1" }, redirect: "manual" });
    } catch {
        queue.stays(edit.id);
        return "No signal.";
    }
    if (answer.ok) {
        // Held before it leaves the queue: what is typed from now on is made seeing it.
        const version = Number(job.version) + 1;
        await known({ ...job, version: String(version), document: job.document && JSON.stringify(changed(job.document, [edit])) });
        queue.went(edit.id, version);
    }
    else if (answer.status === 409) queue.stays(edit.id);
    else if (answer.status === 422 || answer.status === 400) queue.mark(edit.id, { asked: true, refused: true });
    else {
        queue.stays(edit.id);
        return answer.status === 403 ? "These changes are not yours to make." : "The server cannot take changes now.";
    }
    return "";
}

/** Photos wait for no change but the shot that they are of. */
async function sendPhotos(id, job, queue) {
    const unmade = new Set(queue.list().map((edit) => new Map(edit.fields).get("own")));
    let problem = "";
    for (const photo of (await photosOf(id)).filter((one) => !unmade.has(one.part))) {
        const form = new FormData();
        form.set("_csrf", job.csrf);
        form.set("part", photo.part);
        form.set("file", photo.blob, photo.name);
        let answer;
        try {
            answer = await fetch(`/jobs/${id}/files`, { method: "POST", body: form, redirect: "manual" });
        } catch {
            return "No signal.";
        }
        if (answer.type === "opaqueredirect" || answer.ok) await photoWent(photo.id);
        else problem = `The photo ${photo.name} was not taken in.`;
    }
    return problem;
}
