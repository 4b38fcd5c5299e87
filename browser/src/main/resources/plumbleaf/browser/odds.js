// How likely each number of a packed module is, and which it is: the twin of Odds.java, which says how. Both must guess alike to the last bit, so only whole numbers and the four
// operations of doubles are used, which are the same everywhere, and nothing here may change without it.

const MOST = 8, KINDS = 26, BITS = 22, FLAG_BITS = 17, SURE_AFTER = 127, PACE = 0.02, LIKELY_FROM = 2, LIKELY_BITS = 18;
const STARTS = [0, 11, 27, 283, 4379];

export const mix = (h, v) => {
    h = Math.imul(h ^ v, 0x9e3779b1);
    return (h ^ (h >>> 15)) >> 2;
};

/** @param {Uint8Array} packed */
export function oddsOf(packed) {
    const table = new Int32Array((1 << BITS) + (1 << FLAG_BITS)).fill(0x80000000 | 0);
    const weights = new Float64Array(KINDS * 64 * MOST).fill(0.3);
    const stretch = new Float64Array(4096), sure = new Float64Array(1024), step = new Int32Array(1024), squash = new Int32Array(8192);
    for (let k = 0, up = 1; k < 4096; k++, up *= 1.0039138893383475) {
        const p = Math.trunc((65536 * up) / (up + 1));
        squash[4096 + k] = Math.min(p, 65535);
        if (k > 0) squash[4096 - k] = Math.max(65536 - p, 1);
    }
    squash[0] = 1;
    for (let i = 0, at = 0; i < 4096; i++) {
        while (at < 8191 && squash[at] < i * 16 + 8) at++;
        stretch[i] = Math.min(8, Math.max(-8, (at - 4096) / 256));
    }
    for (let n = 0; n < 1024; n++) {
        step[n] = Math.trunc(Math.trunc(32768 / (2 * n + 3)) / 2);
        sure[n] = n === 0 ? 0 : n < 3 ? 0.75 + 0.1 * n : 1.2;
    }
    const contexts = new Int32Array(MOST), slots = new Int32Array(MOST), inputs = new Float64Array(MOST);
    // The least and the most that what is to come may be, and what it begins with: kept here, since a browser makes an object of each number past thirty bits that is kept elsewhere.
    const range = Int32Array.of(0, -1, (packed[0] << 24) | (packed[1] << 16) | (packed[2] << 8) | packed[3]);
    let used = 0, taken = 4;

    const learned = (t, aim) => {
        const seen = t & 1023;
        return ((t & 0xfffffc00) + (Math.imul((aim - (t >>> 10)) >> 3, step[seen]) & 0xfffffc00)) | (seen < SURE_AFTER ? seen + 1 : seen);
    };
    // As many bits as asked for, each by what the slots say of those before it.
    function bits(count, set) {
        let lo = range[0], hi = range[1], at = range[2], node = 1;
        const n = used;
        for (let k = 0; k < count; k++) {
            const own = set + node * MOST;
            let dot = 0;
            for (let i = 0; i < n; i++) {
                const t = table[slots[i] + node];
                const x = stretch[t >>> 20] * sure[t & 1023];
                inputs[i] = x;
                dot += weights[own + i] * x;
            }
            let q = ((dot * 256) | 0) + 4096;
            if (q < 1) q = 1; else if (q > 8191) q = 8191;
            const p = squash[q];
            const wide = (hi - lo) | 0;
            const mid = (lo + Math.imul(wide >>> 16, p) + (Math.imul(wide & 0xffff, p) >>> 16)) | 0;
            const bit = (at ^ 0x80000000) <= (mid ^ 0x80000000) ? 1 : 0;
            if (bit) hi = mid; else lo = (mid + 1) | 0;
            while (((lo ^ hi) & 0xff000000) === 0) { lo <<= 8; hi = (hi << 8) | 255; at = (at << 8) | packed[taken++]; }
            const off = (bit - p / 65536) * PACE, aim = bit << 22;
            for (let i = 0; i < n; i++) {
                weights[own + i] += off * inputs[i];
                table[slots[i] + node] = learned(table[slots[i] + node], aim);
            }
            node = node * 2 + bit;
        }
        range[0] = lo; range[1] = hi; range[2] = at;
        return node;
    }
    function nibble(kind, place, prefix) {
        for (let i = 0; i < used; i++) {
            const h = Math.imul(contexts[i] ^ Math.imul(prefix, 0x85ebca6b), 0xc2b2ae35);
            slots[i] = (Math.imul(h ^ (h >>> 15), 0x9e3779b1) >>> (36 - BITS)) << 4;
        }
        return bits(4, (kind * 4 + place) * 16 * MOST) & 15;
    }
    function flag(kind) {
        for (let i = 0; i < used; i++) {
            const h = Math.imul(contexts[i], 0xc2b2ae35);
            slots[i] = (1 << BITS) - 1 + (Math.imul(h ^ (h >>> 15), 0x9e3779b1) >>> (32 - FLAG_BITS));
        }
        const one = bits(1, (kind * 64 - 1) * MOST) & 1;
        used = 0;
        return one;
    }
    const likely = new Int32Array(1 << LIKELY_BITS), likelyFor = new Uint16Array(1 << LIKELY_BITS), likelySo = new Uint8Array(1 << LIKELY_BITS);
    function number(kind) {
        if (used < LIKELY_FROM) return plainNumber(kind);
        const h = mix(contexts[used - 1], 12345), at = (h >>> 10) & ((1 << LIKELY_BITS) - 1), check = h & 0xffff;
        const so = likelySo[at], ours = so > 0 && likelyFor[at] === check;
        if (ours) {
            const guess = likely[at], keep = used, k0 = contexts[0], k1 = contexts[1], k2 = contexts[2];
            used = 0;
            c1(kind + 40, so < 20 ? so : 20); c2(kind + 40, guess, so > 3 ? 2 : 1); c3(kind + 40, k0, guess, 1);
            if (flag(kind)) { if (so < 255) likelySo[at] = so + 1; return guess; }
            used = keep; contexts[0] = k0; contexts[1] = k1; contexts[2] = k2;
        }
        const v = plainNumber(kind);
        likelyFor[at] = check; likely[at] = v; likelySo[at] = 1;
        return v;
    }
    function plainNumber(kind) {
        const first = nibble(kind, 0, 0);
        let v = first;
        if (first >= 11) {
            const n = first === 15 ? 8 : first - 10;
            let prefix = n;
            v = 0;
            for (let i = 1; i <= n; i++) {
                const x = nibble(kind, i < 3 ? i : 3, prefix);
                prefix = (prefix * 16 + x + 16) | 0;
                v = (v << 4) | x;
            }
            if (n < 8) v = (v + STARTS[n]) | 0;
        }
        used = 0;
        return v;
    }
    function octet(kind) {
        const first = nibble(kind, 0, 0);
        const second = nibble(kind, 1, 1 + first);
        used = 0;
        return first * 16 + second;
    }
    const start = (kind, a) => {
        const h = Math.imul((Math.imul(kind, 0x2545f491) + 77) ^ a, 0x9e3779b1);
        return (h ^ (h >>> 15)) >> 2;
    };
    const put = (h) => { contexts[used] = mix(h, used + 1); used++; };
    const c1 = (k, a) => put(start(k, a));
    const c2 = (k, a, b) => put(mix(start(k, a), b));
    const c3 = (k, a, b, c) => put(mix(mix(start(k, a), b), c));
    const c4 = (k, a, b, c, d) => put(mix(mix(mix(start(k, a), b), c), d));
    const c5 = (k, a, b, c, d, e) => put(mix(mix(mix(mix(start(k, a), b), c), d), e));
    return { number, octet, flag, c1, c2, c3, c4, c5 };
}
