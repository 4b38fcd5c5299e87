// The engine's side of beside.js: texts come in with a number, and an answer goes back with it.
import { engineFrom } from "./engine.js";

const engine = engineFrom((how) => fetch(new URL("engine.packed", import.meta.url), how));
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
