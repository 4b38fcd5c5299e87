// Unpacks the engine's module by a small module of its own (unpack.wasm): the very classes that pack it while the program is built (plumbleaf.browser.packed).

/** How many octets at the end are the sum of all before them. */
const SUM = 4;

/** Whether a file came as it was made, by the sum at its end (CRC-32, as in gzip, RFC 1952 section 8): of what is cut off or changed the guesses would be nonsense without end. */
export function isWhole(file) {
    const to = file.length - SUM;
    if (to <= 0) return false;
    const steps = new Int32Array(256);
    for (let i = 0; i < 256; i++) {
        let step = i;
        for (let bit = 0; bit < 8; bit++) step = step & 1 ? (step >>> 1) ^ 0xedb88320 : step >>> 1;
        steps[i] = step;
    }
    let sum = -1;
    for (let i = 0; i < to; i++) sum = steps[(sum ^ file[i]) & 255] ^ (sum >>> 8);
    return ~sum === new DataView(file.buffer, file.byteOffset).getInt32(to);
}

/**
 * @param {Uint8Array} packed
 * @param {WebAssembly.Exports} by what unpack.wasm gives
 * @returns {Uint8Array} the engine's module
 */
export function unpackedBy(packed, by) {
    by.room(packed.length);
    const given = new DataView(new ArrayBuffer(Math.ceil(packed.length / 4) * 4));
    new Uint8Array(given.buffer).set(packed);
    for (let at = 0; at < given.byteLength; at += 4) by.give(at, given.getInt32(at, true));
    const length = by.unpack();
    const made = new DataView(new ArrayBuffer(Math.ceil(length / 4) * 4));
    for (let at = 0; at < made.byteLength; at += 4) made.setInt32(at, by.word(at), true);
    return new Uint8Array(made.buffer, 0, length);
}
