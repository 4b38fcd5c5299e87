// The engine's side of beside.js: texts come in with a number, and an answer goes back with it.
// The packed engine is asked for at once, while the scripts that unpack it are still on their way.
const packed = (how) => fetch(new URL("engine.packed", import.meta.url), how);
const coming = packed({});
coming.catch(() => {});

const scripts = import("./engine.js").catch((fault) => { throw Object.assign(new Error(fault.message), { why: "away" }); });
const engine = scripts.then(({ engineFrom }) => engineFrom((how) => (how.cache ? packed(how) : coming)));
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
