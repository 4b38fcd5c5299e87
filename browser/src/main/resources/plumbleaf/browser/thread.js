// The engine's side of beside.js: texts come in with a number, and an answer goes back with it.
// The packed engine and what unpacks it are asked for at once, while the scripts are still on their way.
const asked = (file, how) => fetch(new URL(file, import.meta.url), how);
const coming = new Map(["engine.packed", "unpack.wasm"].map((file) => [file, asked(file, {})]));
for (const one of coming.values()) one.catch(() => {});

const scripts = import("./engine.js").catch((fault) => { throw Object.assign(new Error(fault.message), { why: "away" }); });
const engine = scripts.then(({ engineFrom }) => engineFrom((file, how) => (how.cache ? asked(file, how) : coming.get(file))));
engine.catch((fault) => postMessage({ why: fault.why ?? "spoilt", words: fault.message }));

addEventListener("message", async ({ data: { number, verb, texts } }) => {
    let made;
    try { made = await engine; } catch { return; }
    try {
        postMessage({ number, text: made[verb](...texts) });
    } catch (fault) {
        postMessage({ number, fault: fault.message });
    }
});
