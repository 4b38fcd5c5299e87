// A job's text as it will be once what waits has gone up: the server's text with every waiting change put in, in order. The text is a working copy;
// what goes up are the changes.

/** @param {string} path gates[G1].leaf.bottomGap: an item of a list by its id or its place */
function steps(path) {
    return [...path.matchAll(/(?:^|\.)([A-Za-z][A-Za-z0-9-]*)|\[([^\]]+)\]/g)].map(([, key, item]) => (item === undefined ? { key } : { item }));
}

function child(at, { key, item }) {
    if (at === undefined || at === null) return undefined;
    if (key !== undefined) return at[key];
    return /^\d+$/.test(item) ? at[Number(item)] : at.find?.((one) => one?.id === item);
}

export const valueIn = (job, path) => steps(path).reduce(child, job);

export function valueAt(job, path) {
    const value = valueIn(job, path);
    return value === undefined || value === null ? "" : String(value);
}

/** A post that somebody put where it stands: said for the first time it joins the list of those, emptied it is let go. */
const SET_POST = /^runs\[([^\]]+)\]\.set\[(P[A-Za-z0-9]+)\]\.station$/;

function setPost(job, [, runId, id], station) {
    const run = (job.runs ?? []).find((one) => one.id === runId);
    if (!run) return;
    const others = (run.set ?? []).filter((one) => one.id !== id);
    const known = (run.set ?? []).some((one) => one.id === id);
    if (station === "") run.set = others;
    else if (known) run.set = run.set.map((one) => (one.id === id ? { ...one, station } : one));
    else run.set = [...others, { id, station }];
}

function setAt(job, path, value) {
    const post = SET_POST.exec(path);
    if (post) { setPost(job, post, value); return; }
    const way = steps(path);
    const last = way.pop();
    let at = job;
    for (const step of way) {
        if (child(at, step) === undefined && step.key !== undefined) at[step.key] = {};
        at = child(at, step);
        if (at === undefined || typeof at !== "object") return;
    }
    if (last.key === undefined) return;
    if (value === "") delete at[last.key];
    else at[last.key] = value;
}

function added(job, fields) {
    const way = steps(fields.get("list"));
    const last = way.pop();
    const at = way.reduce((held, step) => child(held, step) ?? (held[step.key] = {}), job);
    const item = { id: fields.get("own") };
    for (const [name, value] of fields) if (!["list", "own", "path"].includes(name) && value !== "") item[name] = value;
    (at[last.key] ??= []).push(item);
}

/** @returns {object} the job with these changes */
export function changed(text, edits) {
    const job = JSON.parse(text);
    for (const edit of edits) {
        const fields = new Map(edit.fields);
        if (fields.has("list")) added(job, fields);
        else if (edit.path) setAt(job, edit.path, fields.get("value") ?? "");
    }
    return job;
}

/** One more than the largest number in use, as the server counts. */
export function nextShot(job) {
    const used = (job.ground?.shots ?? []).map((shot) => Number(/^S(\d{1,6})$/.exec(shot.id ?? "")?.[1] ?? 0));
    return "S" + (Math.max(0, ...used) + 1);
}
