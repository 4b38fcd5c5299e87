// The engine in the browser: job text in; design, findings and drawings out. The compiler's own runtime script makes functions out of texts,
// which our pages forbid; this one gives the module the few things it asks for, by name, and nothing else.

import { isWhole, unpackedBy } from "./unpack.js";

const OF_JAVA = Symbol("of java");
const THROWN = Symbol("thrown");
const UNMADE = Symbol("unmade");
const MOST_PAGES = 32768;
const SHELF = "plumbleaf-engine";
const PACKED = "engine.packed";
const UNPACKING = "unpack.wasm";
const BUILTINS = { builtins: ["js-string"] };

/** @typedef {{ [verb: string]: (...texts: string[]) => string }} Engine texts in, a text out */

/**
 * Makes an engine of the module's bytes.
 * @param {BufferSource} bytes
 * @returns {Promise<Engine>}
 */
export async function engineOf(bytes) {
    return started(await WebAssembly.compile(bytes, BUILTINS), knowsStrings());
}

/** Why there is no engine: it was not to be had (`away`), came spoilt (`spoilt`), or cannot run in this browser (`cannot`). */
export class NoEngine extends Error {
    constructor(why, words) {
        super(words);
        this.why = why;
    }
}

/**
 * The same of the packed module as it is fetched. It is unpacked once, and kept unpacked for the next time under the number of what it was packed to.
 * @param {(file: string, how: RequestInit) => Promise<Response>} ask fetches it, and what unpacks it
 * @returns {Promise<Engine>} or a NoEngine
 */
export async function engineFrom(ask) {
    if (!runsHere()) throw new NoEngine("cannot", "this browser is too old for it");
    return keptOrUnpacked(await cameWhole(ask, PACKED), ask);
}

/**
 * The engine's module of the packed one.
 * @param {Uint8Array} packed
 * @param {(file: string, how: RequestInit) => Promise<Response>} ask fetches what unpacks it
 */
export async function unpacked(packed, ask) {
    const by = await instance(await WebAssembly.compile(await cameWhole(ask, UNPACKING), BUILTINS), knowsStrings());
    return unpackedBy(packed, by.exports);
}

/** A file with its sum at its end. One that came spoilt, or half, is fetched once more past everything that keeps it. */
async function cameWhole(ask, file) {
    let came = await fetched(ask, file, {});
    if (!isWhole(came)) came = await fetched(ask, file, { cache: "reload" }).catch(() => new Uint8Array());
    if (!isWhole(came)) throw new NoEngine("spoilt", "it came spoilt or half");
    return came;
}

async function fetched(ask, file, how) {
    try {
        const answer = await ask(file, how);
        if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
        return new Uint8Array(await answer.arrayBuffer());
    } catch (fault) {
        throw new NoEngine("away", fault.message);
    }
}

async function keptOrUnpacked(packed, ask) {
    const shelf = await globalThis.caches?.open(SHELF).catch(() => null);
    if (!shelf) return engineOf(await unpacked(packed, ask));
    const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", packed));
    const name = "/" + [...sum].map((octet) => octet.toString(16).padStart(2, "0")).join("");
    const kept = await shelf.match(name);
    // What was kept and does not start any more is unpacked anew.
    const again = kept && (await WebAssembly.compileStreaming(kept, BUILTINS).then((module) => started(module, knowsStrings())).catch(() => null));
    if (again) return again;
    const bytes = await unpacked(packed, ask);
    for (const old of await shelf.keys()) await shelf.delete(old);
    // Kept while it is being compiled; a device that is full unpacks it again next time.
    shelf.put(name, new Response(bytes, { headers: { "Content-Type": "application/wasm" } })).catch(() => {});
    return engineOf(bytes);
}

/** A module with one structure in it, which only a browser with WebAssembly's own collector takes. */
const runsHere = () => globalThis.WebAssembly?.validate(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 95, 1, 127, 0)) ?? false;

// A module that takes one of the string functions for a function of another shape is refused only by a browser that knows them.
function knowsStrings() {
    const wrong = Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 2, 23, 1, 14, ...letters("wasm:js-string"), 4, ...letters("cast"), 0, 0);
    return !WebAssembly.validate(wrong, { builtins: ["js-string"] });
}

const letters = (word) => [...word].map((letter) => letter.charCodeAt(0));

async function instance(module, strings) {
    const inner = { exports: null };
    const made = await WebAssembly.instantiate(module, asked(inner, strings, room(module)));
    inner.exports = made.exports;
    return made;
}

async function started(module, strings) {
    const { exports } = await instance(module, strings);
    const engine = {};
    for (const [name, made] of Object.entries(exports)) if (made instanceof WebAssembly.Global) Object.defineProperty(engine, name, { get: () => made.value });
    engine.main([]);
    return engine;
}

// How much memory the module says it starts with, in pages of 64 KiB, and where its own data end.
function room(module) {
    const said = WebAssembly.Module.customSections(module, "teavm.memoryRequirements")[0];
    const { min = 1, dataSize = 0 } = said ? JSON.parse(new TextDecoder().decode(said)) : {};
    return { pages: Math.max(min, 1), free: Math.ceil(dataSize / 8) * 8 };
}

// Everything the module imports. The build fails where it asks for more.
function asked(inner, strings, { pages, free }) {
    const imports = {
        env: { memory: new WebAssembly.Memory({ initial: pages, maximum: MOST_PAGES }) },
        teavmMemory: { notifyHeapResized() {}, heapOffset: whole(free), maxSize: whole(2 ** 31 - 1) },
        teavmMath: Math,
        teavmDate: { currentTimeMillis: () => 0 },
        teavm: { takeStackTrace: () => ({ getStack: () => [] }), decorateException: (thrown) => new EngineFault(inner, thrown) },
        teavmJso: between(inner, strings),
    };
    if (!strings) imports["wasm:js-string"] = plainStrings;
    return imports;
}

const whole = (value) => new WebAssembly.Global({ value: "i32", mutable: false }, value);

const plainStrings = {
    fromCharCode: (code) => String.fromCharCode(code),
    concat: (first, second) => first + second,
    charCodeAt: (text, at) => text.charCodeAt(at),
    length: (text) => text.length,
    substring: (text, from, to) => text.substring(from, to),
    // Asked for only where the browser has them of its own.
    fromCharCodeArray: () => { throw new Error("no such strings here"); },
    intoCharCodeArray: () => { throw new Error("no such strings here"); },
};

/** A fault of the engine's as an error of the page's. */
class EngineFault extends Error {
    #inner;
    constructor(inner, thrown) {
        super();
        this.#inner = inner;
        this[THROWN] = thrown;
        inner.exports["teavm.setJsException"](thrown, this);
    }
    get message() {
        const words = this.#inner.exports["teavm.exceptionMessage"](this[THROWN]);
        return words === null ? "a fault in the engine" : this.#inner.exports["teavm.stringToJs"](words);
    }
}

// What passes between the two sides: texts, numbers, functions, faults.
function between(inner, strings) {
    const ofPage = new WeakMap();
    const ofModule = new WeakMap();
    const inward = (error) => {
        inner.exports["teavm.js.throwException"](THROWN in error ? error[THROWN] : inner.exports["teavm.js.wrapException"](error));
        throw error;
    };
    const outward = (error) => {
        const tag = inner.exports["teavm.javaException"];
        if (!(error instanceof WebAssembly.Exception) || !error.is(tag)) throw error;
        const thrown = error.getArg(tag, 0);
        throw inner.exports["teavm.js.extractException"](thrown) ?? inner.exports["teavm.getJsException"](thrown) ?? new EngineFault(inner, thrown);
    };
    const guarded = (call) => (...given) => {
        try { return call(...given); } catch (error) { return outward(error); }
    };
    const within = (call) => {
        try { return call(); } catch (error) { return inward(error); }
    };
    const held = (value, make) => {
        const known = ofPage.get(value)?.deref();
        if (known !== undefined) return known;
        const made = make(value);
        ofPage.set(value, new WeakRef(made));
        return made;
    };
    return {
        stringBuiltinsSupported: () => (strings ? 1 : 0),
        isUndefined: (value) => (value === undefined ? 1 : 0),
        isPrimitive: (value, kind) => (typeof value === kind || value === null ? 1 : 0),
        instanceOf: (value, kind) => (value instanceof kind ? 1 : 0),
        instanceOfOrNull: (value, kind) => (value === null || value instanceof kind ? 1 : 0),
        wrapInt: (value) => value,
        unwrapInt: (value) => value,
        getProperty: (of, name) => within(() => (of === null ? globalThis[name] : of[name])),
        global: (name) => globalThis[name],
        callFunction1: (call, one) => within(() => call(one)),
        callMethod0: (of, name) => within(() => of[name]()),
        // The compiler would make functions out of text. The engine asks for one only, which gives back what it is given.
        createFunction1(name, text) {
            if (text.trim() !== `return ${name};`) throw new Error(`the engine asked for a function made of text: ${text}`);
            return (value) => value;
        },
        defineFunction: guarded,
        defineStaticMethod(of, name, call) { of[name] = guarded(call); },
        createClass(name, parent, maker) {
            const one = function (mark, value) {
                if (mark !== UNMADE) throw new Error("only the engine makes one of these");
                this[OF_JAVA] = value;
            };
            one.prototype = Object.create(parent === null ? Object.prototype : parent.prototype);
            const made = function (value) { return new one(UNMADE, value); };
            made.prototype = one.prototype;
            return made;
        },
        javaObjectToJS(value, kind) {
            if (value === null) return null;
            const known = ofModule.get(value)?.deref();
            if (known !== undefined) return known;
            const made = new kind(value);
            ofModule.set(value, new WeakRef(made));
            return made;
        },
        unwrapJavaObject: (value) => value[OF_JAVA],
        wrapObject(value) {
            if (value === null) return null;
            if (typeof value !== "object" && typeof value !== "function") return inner.exports["teavm.jso.createWrapper"](value);
            return value[OF_JAVA] ?? held(value, inner.exports["teavm.jso.createWrapper"]);
        },
    };
}
