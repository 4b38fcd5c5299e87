// The engine on a thread of its own, so that a page stays quick while it unpacks and works. One thing is asked at a time, in order.

/**
 * @param {(no: { why: "away" | "spoilt" | "cannot", words: string }) => void} failed told once where there will be no engine
 * @returns {{ ask(verb: string, ...texts: string[]): Promise<string>, end(): void }}
 */
export function engineBeside(failed) {
    const thread = new Worker(new URL("thread.js", import.meta.url), { type: "module" });
    const waiting = new Map();
    let asked = 0;
    let no = null;
    const without = (why, words) => {
        no = { why, words };
        thread.terminate();
        for (const [, failing] of waiting.values()) failing(new Error(words));
        waiting.clear();
        failed(no);
    };
    thread.addEventListener("message", ({ data }) => {
        if (data.why) { without(data.why, data.words); return; }
        const [done, failing] = waiting.get(data.number) ?? [];
        waiting.delete(data.number);
        if (data.fault === undefined) done?.(data.text);
        else failing?.(new Error(data.fault));
    });
    // The thread's own scripts were not to be had.
    thread.addEventListener("error", (event) => { event.preventDefault(); if (!no) without("away", event.message || "its scripts did not come"); });
    return {
        ask: (verb, ...texts) => new Promise((done, failing) => {
            if (no) { failing(new Error(no.words)); return; }
            const number = ++asked;
            waiting.set(number, [done, failing]);
            thread.postMessage({ number, verb, texts });
        }),
        end: () => thread.terminate(),
    };
}
