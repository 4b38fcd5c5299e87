// Unpacks the engine's module. What an instruction works on is guessed from the values that wait for it and from what came before; the packed file says how far the guesses were
// off. Its twin writes that file while the program is built (PackedModule.java, PackedTypes.java, PackedCode.java, PackedWords.java), and this may not change without it. It is one function, long as
// it is, since it runs in a second only while all that it guesses from lies in its own variables.
import { mix, oddsOf } from "./odds.js";

const OP = 0, LOCAL = 1, FUNC = 2, TYPE = 3, FIELD = 4, I32 = 5, F64 = 6, GLOBAL = 7, LABEL = 8, BLOCK = 9, LOCALS = 10, LOCAL_TYPE = 11, MEMORY = 12, I64 = 13,
    COUNT = 14, MISC = 15, OCTET = 16, HIT = 17, FUNC_TYPE = 18, TYPE_PART = 19, GLOBAL_TYPE = 20, WORDS = 21, LOCAL_HIT = 22, TYPE_KIND = 23, WORDS_HIT = 24, TYPE_HIT = 25;
const NONE = [];

/** How many octets at the end are the sum of all before them. */
const SUM = 4;

/** Whether it came as it was packed, by the sum at its end (CRC-32, as in gzip, RFC 1952 section 8): of what is cut off or changed the guesses would be nonsense without end. */
export function isWhole(packed) {
    const to = packed.length - SUM;
    if (to <= 0) return false;
    const steps = new Int32Array(256);
    for (let i = 0; i < 256; i++) {
        let step = i;
        for (let bit = 0; bit < 8; bit++) step = step & 1 ? (step >>> 1) ^ 0xedb88320 : step >>> 1;
        steps[i] = step;
    }
    let sum = -1;
    for (let i = 0; i < to; i++) sum = steps[(sum ^ packed[i]) & 255] ^ (sum >>> 8);
    return ~sum === new DataView(packed.buffer, packed.byteOffset).getInt32(to);
}

/** @param {Uint8Array} packed @returns {Uint8Array} the module */
export function unpacked(packed) {
    const { number, octet, flag, c1, c2, c3, c4, c5 } = oddsOf(packed);
    const num = (kind, a, b) => { c1(kind, a); c2(kind, a, b); return number(kind); };
    const unzig = (v) => (v >>> 1) ^ -(v & 1);
    const unzi = (v) => (v & 1 ? -((v + 1) / 2) : v / 2);

    // ---- what is written
    let out = new Uint8Array(1 << 22), end = 0;
    const byte = (v) => { out[end++] = v; };
    function leb(v) { while (v > 127) { out[end++] = (v & 127) | 128; v >>>= 7; } out[end++] = v; }
    function sleb(v) {
        for (;;) {
            const b = v & 127;
            v >>= 7;
            if ((v === 0 && !(b & 64)) || (v === -1 && b & 64)) { out[end++] = b; return; }
            out[end++] = b | 128;
        }
    }
    function value(v) {
        if (v >= 0) { byte(v & 1 ? 0x63 : 0x64); sleb(v >> 1); }
        else if (v <= -2000) { byte(0x64); sleb(v + 2000); }
        else if (v <= -1000) { byte(0x63); sleb(v + 1000); }
        else byte(v & 127);
    }

    // ---- sections that are short, as they are
    const raw = {};
    for (const id of [2, 4, 13, 7, 8, 0]) {
        const n = num(COUNT, 0, 0);
        const bytes = raw[id] = new Uint8Array(n);
        for (let i = 0, p = 0, pp = 0; i < n; i++) {
            c1(OCTET, p); c2(OCTET, p, pp); c3(OCTET, 9, 9, 9);
            pp = p;
            bytes[i] = p = octet(OCTET);
        }
    }

    // ---- types
    const supers = [], kinds = [], params = [], results = [], fields = [];
    let pk = 0, pk2 = 0, psup = 0;
    function part(slot, p1, p2, guess) {
        if (guess !== undefined) {
            c1(TYPE_HIT, slot); c2(TYPE_HIT, 1, p1);
            if (flag(TYPE_HIT)) return guess;
        }
        c3(TYPE_PART, slot, pk, pk2); c3(TYPE_PART, 5, slot, psup);
        return unzi(number(TYPE_PART));
    }
    function list(slot, above) {
        c3(TYPE_KIND, 7, slot, pk2); c3(TYPE_KIND, 7, slot, above.length);
        const n = number(TYPE_KIND), all = [];
        leb(n);
        for (let i = 0; i < n; i++) {
            all.push(part(slot + Math.min(i, 3), i > 0 ? all[i - 1] : n * 7777, i > 1 ? all[i - 2] : 0, i < above.length ? above[i] : undefined));
            value(all[i]);
        }
        return all;
    }
    function type() {
        const t = kinds.length;
        c2(TYPE_KIND, 3, pk); c3(TYPE_KIND, 3, pk, pk2);
        const kk = number(TYPE_KIND), kind = 0x5e + Math.trunc(kk / 3), ways = kk % 3;
        let above = ways === 2 ? 0 : -1;
        if (ways === 2) {
            c2(TYPE_KIND, 4, kk); c3(TYPE_KIND, 4, kk, psup); c3(TYPE_KIND, 4, pk, pk2);
            above = psup = number(TYPE_KIND);
        }
        if (ways) { byte(0x50); byte(ways - 1); if (ways === 2) leb(above); }
        byte(kind);
        kinds.push(kind);
        supers.push(ways === 0 ? -2 : above);
        pk2 = pk;
        pk = kk;
        if (kind === 0x60) {
            params[t] = list(1, above < 0 ? NONE : params[above]);
            results[t] = list(7, above < 0 ? NONE : results[above]);
        } else if (kind === 0x5f) {
            const of = above < 0 ? NONE : fields[above];
            c2(TYPE_KIND, 5, kk); c2(TYPE_KIND, 5, ways === 0 ? -2 : above);
            const n = number(TYPE_KIND) + of.length, all = fields[t] = [];
            leb(n);
            for (let i = 0; i < n; i++) {
                all.push(part(i < of.length ? 20 : 21, i > 0 ? all[i - 1] : 0, i > 1 ? all[i - 2] : 0, i < of.length ? of[i] : undefined));
                value(all[i]);
                c2(TYPE_KIND, 6, all[i]);
                byte(flag(TYPE_KIND));
            }
        } else {
            const v = part(22, 0, 0, undefined);
            fields[t] = [v];
            value(v);
            c2(TYPE_KIND, 6, v);
            byte(flag(TYPE_KIND));
        }
    }
    const groups = num(COUNT, 1, 0);
    leb(groups);
    for (let i = 0; i < groups; i++) {
        const m = num(TYPE_KIND, 2, 0) - 1;
        if (m >= 0) { byte(0x4e); leb(m); }
        for (let j = 0; j < Math.abs(m); j++) type();
    }
    const typeBytes = out.slice(0, end);

    // ---- functions and globals
    const functionTypes = [], globalTypes = [];
    let importedFunctions = 0, importedGlobals = 0;
    imports(raw[2]);
    const functions = num(COUNT, 2, 0) + importedFunctions, globals = num(COUNT, 2, 0) + importedGlobals;
    const bodyFrom = new Int32Array(functions), bodyTo = new Int32Array(functions), named = new Uint8Array(functions), done = new Uint8Array(functions);
    let globalBytes = new Uint8Array(1 << 20), globalEnd = 0;
    const pending = [];
    named.fill(1, 0, importedFunctions); done.fill(1, 0, importedFunctions);
    let mostFunction = importedFunctions, mostGlobal = 0, mostType = 0, lastFunctionType = 0, lastGlobalType = 0;
    const referred = new Uint8Array(functions);

    function imports(d) {
        let at = 0;
        const read = () => { let r = 0, s = 0, b; do { b = d[at++]; r |= (b & 127) << s; s += 7; } while (b > 127); return r; };
        const n = read();
        for (let i = 0; i < n; i++) {
            at += d[at] + 1; at += d[at] + 1;
            const kind = d[at++];
            if (kind === 0) { functionTypes.push(read()); importedFunctions++; }
            else if (kind === 3) { globalTypes.push((d[at] << 25) >> 25); at += 2; importedGlobals++; }
            else { const f = read(); read(); if (f & 1) read(); }
        }
    }

    // ---- code
    const stack = new Int32Array(100000), heights = new Int32Array(10000), yields = [];
    let sp = 0, depth = 0;
    const push = (t) => { stack[sp++] = t; };
    const pop = () => (sp > heights[depth] ? stack[--sp] : 0);
    const drop = (n) => { sp = Math.max(heights[depth], sp - n); };
    const top = (k) => (sp - 1 - k >= 0 ? stack[sp - 1 - k] : 0);
    let o1 = 0, o2 = 0, o3 = 0, o4 = 0, o5 = 0, t1 = 0, t2 = 0, t3 = 0, t4 = 0;
    let lastType = 0, lastField = 0, fieldBefore = 0, lastFunction = 0, lastGlobal = 0, lastSet = 0, lastKept = 0;
    let locals = 0, mostLocal = 0, localTypes = NONE, localKnown = NONE;
    const ops = [0x20, 0x10, 0x102, 0x23, 0x21, 0x41, 0x0b, 0x22, 0x105, 0x14, 0x0d];
    for (let o = 0, first = ops.slice(); o < 0x220; o++) if (!first.includes(o)) ops.push(o);

    function operand(kind, o) {
        const s0 = top(0), s1 = top(1), s2 = top(2);
        switch (kind) {
            case LOCAL:
                c3(1, o, s0, mostLocal); c4(1, o, lastSet, o1, mostLocal);
                break;
            case FUNC:
                c2(2, o, s0); c3(2, o, s0, s1); c2(2, lastFunction, o); c5(2, s0, s1, s2, o1, o2);
                break;
            case TYPE:
                c2(3, o, s0); c2(3, o, lastKept); c2(3, o, t1); c3(3, o, s0, s1);
                break;
            case FIELD:
                c2(4, o, lastType); c4(4, lastType, o, t1, t2); c4(4, t1, t2, t3, lastType);
                break;
            case GLOBAL:
                c2(kind, o, s0); c2(kind, o, o1);
                break;
            default:
                c2(kind, o, s0); c4(kind, o, o1, o2, o3);
        }
        return number(kind);
    }
    function known(f) {
        c2(FUNC_TYPE, 9, lastFunctionType);
        const said = number(FUNC_TYPE), t = said === 0 ? mostType : said - 1;
        functionTypes[f] = lastFunctionType = t;
        mostType = Math.max(mostType, t + 1);
        named[f] = 1;
        pending.push(f);
    }
    function func(o) {
        const said = operand(FUNC, o), f = said === 0 ? mostFunction : said - 1;
        mostFunction = Math.max(mostFunction, f + 1);
        if (!named[f]) {
            c2(FUNC_TYPE, top(0), o); c3(FUNC_TYPE, top(0), top(1), o); c2(FUNC_TYPE, t1, o); c3(FUNC_TYPE, top(0), top(1), top(2)); c2(FUNC_TYPE, t1, t2);
            known(f);
        }
        leb(f);
        return f;
    }
    function global(o) {
        const said = operand(GLOBAL, o), g = said === 0 ? mostGlobal : said - 1;
        leb(g);
        while (mostGlobal <= g) {
            const n = mostGlobal++;
            if (n < importedGlobals) continue;
            const back = out, backEnd = end;
            out = globalBytes; end = globalEnd;
            c1(GLOBAL_TYPE, t1); c2(GLOBAL_TYPE, t1, t2); c2(GLOBAL_TYPE, o, top(0)); c1(GLOBAL_TYPE, lastGlobalType); c2(GLOBAL_TYPE, lastGlobalType, t1);
            const t = unzi(number(GLOBAL_TYPE));
            globalTypes[n] = lastGlobalType = t;
            value(t);
            c2(GLOBAL_TYPE, t, 1);
            byte(flag(GLOBAL_TYPE));
            const keep = [o1, o2, o3, o4, o5, t1, t2, t3, t4, sp, depth, lastGlobal, lastType, lastField, lastFunction, lastKept];
            depth++;
            heights[depth] = sp; yields[depth] = NONE;
            const until = depth;
            o1 = o2 = o3 = o4 = o5 = t2 = t3 = t4 = 0; t1 = t;
            push(t);
            while (depth >= until) instruction();
            [o1, o2, o3, o4, o5, t1, t2, t3, t4, sp, depth, lastGlobal, lastType, lastField, lastFunction, lastKept] = keep;
            globalEnd = end;
            out = back; end = backEnd;
        }
        return g;
    }
    function typeOperand(o, guess) {
        let t = -1;
        if (guess >= 0) {
            c2(HIT, o, guess); c3(HIT, o, t1, t2); c3(HIT, o, t1, guess);
            const up = number(HIT);
            if (up < 11) { t = guess; for (let i = 0; i < up; i++) t = supers[t]; }
        }
        if (t < 0) t = unzi(operand(TYPE, o));
        lastType = t; lastField = -1;
        leb(t);
        return t;
    }
    const reference = (v) => (v < 0 ? -1 : v >> 1);
    function call(t) { drop(params[t].length); for (const r of results[t]) push(r); }
    const wide = (f) => (f === -8 || f === -9 ? -1 : f);
    function label(o) { const l = operand(LABEL, o); leb(l); return l; }

    function instruction() {
        c3(OP, o1, top(0), top(1)); c5(OP, o1, o2, o3, o4, o5);
        const o = ops[number(OP)];
        if (o < 0x100) byte(o); else { byte(o < 0x200 ? 0xfb : 0xfc); byte(o & 255); }
        let x = 0, t;
        switch (o) {
            case 0x02: case 0x03: case 0x04: case 0x1f: {
                if (o === 4) pop();
                const said = operand(BLOCK, o);
                let yielded, taken = 0;
                if (said & 1) { const f = said >> 1; sleb(f); yielded = results[f]; taken = params[f].length; }
                else { const v = unzi(said / 2); if (v === -64) byte(0x40); else value(v); yielded = v === -64 ? NONE : [v]; }
                if (o === 0x1f) {
                    const n = operand(COUNT, o);
                    leb(n);
                    for (let i = 0; i < n; i++) { const k = operand(MISC, o); byte(k); if (k < 2) leb(operand(MISC, o)); label(o); }
                }
                depth++;
                heights[depth] = Math.max(heights[depth - 1], sp - taken);
                yields[depth] = yielded;
                break;
            }
            case 0x05: sp = heights[depth]; break;
            case 0x0b: { sp = heights[depth]; const yielded = yields[depth]; depth--; for (const r of yielded) push(r); break; }
            case 0x0c: case 0x0d: case 0xd5: case 0xd6:
                x = label(o);
                if (o === 0x0d || o === 0xd6) pop(); else if (o === 0xd5) { const v = pop(); push(v >= 0 ? v & ~1 : v); }
                break;
            case 0x0e: { const n = operand(COUNT, o); leb(n); for (let i = 0; i <= n; i++) { const l = label(o); t4 = t3; t3 = t2; t2 = t1; t1 = l; } pop(); break; }
            case 0x10: x = lastFunction = func(o); call(functionTypes[x]); break;
            case 0xd2: x = lastFunction = func(o); referred[x] = 1; push(2 * functionTypes[x]); break;
            case 0x14: x = typeOperand(o, reference(top(0))); pop(); call(x); break;
            case 0x100: x = typeOperand(o, -1); drop(fields[x].length); push(2 * x); break;
            case 0x101: x = typeOperand(o, -1); push(2 * x); break;
            case 0x107: x = typeOperand(o, -1); pop(); push(2 * x); break;
            case 0x10b: case 0x10c: case 0x10d: x = typeOperand(o, reference(top(1))); drop(2); push(wide(fields[x][0])); break;
            case 0x10e: x = typeOperand(o, reference(top(2))); drop(3); break;
            case 0x10f: pop(); push(-1); break;
            case 0x102: case 0x103: case 0x104: case 0x105: {
                t = typeOperand(o, reference(top(o === 0x105 ? 1 : 0)));
                lastField = fieldBefore;
                const f = operand(FIELD, o);
                leb(f);
                lastField = fieldBefore = f;
                x = t * 99 + f * 7777;
                if (o === 0x105) drop(2); else { pop(); push(wide(fields[t][f])); }
                break;
            }
            case 0x108: { x = typeOperand(o, -1); const n = operand(COUNT, o); leb(n); drop(n); push(2 * x); break; }
            case 0x111: typeOperand(o, -1); typeOperand(o, -1); drop(5); break;
            case 0x114: case 0x115: case 0x116: case 0x117: case 0xd0:
                x = unzi(operand(TYPE, o));
                sleb(x);
                lastType = x; lastField = -1;
                if (o !== 0xd0) pop();
                push(o === 0x114 || o === 0x115 ? -1 : x < 0 ? x : 2 * x + (o === 0x116 ? 0 : 1));
                break;
            case 0x118: case 0x119: byte(operand(MISC, o)); label(o); sleb(unzi(operand(TYPE, o))); x = unzi(operand(TYPE, o)); sleb(x); lastType = x; break;
            case 0x20: case 0x21: case 0x22: {
                const said = operand(LOCAL, o);
                x = said === 0 ? mostLocal : said - 1;
                leb(x);
                mostLocal = Math.max(mostLocal, x + 1);
                if (!localKnown[x]) {
                    localKnown[x] = 1;
                    const guess = top(0) >= 0 ? top(0) | 1 : top(0);
                    c2(LOCAL_HIT, top(0), o); c2(LOCAL_HIT, t1, o); c3(LOCAL_HIT, o, 1, 1);
                    if (flag(LOCAL_HIT)) localTypes[x] = guess;
                    else { c2(LOCAL_TYPE, top(0), o); c2(LOCAL_TYPE, o, t1); c3(LOCAL_TYPE, o, t1, t2); c4(LOCAL_TYPE, o, lastFunction, 1, 1); localTypes[x] = unzi(number(LOCAL_TYPE)); }
                }
                if (o === 0x20) push(localTypes[x]); else if (o === 0x21) pop(); else { pop(); push(localTypes[x]); }
                if (o !== 0x20) lastSet = x;
                break;
            }
            case 0x23: case 0x24: x = global(o); lastGlobal = x; if (o === 0x23) { push(globalTypes[x]); lastKept = globalTypes[x]; } else pop(); break;
            case 0x41: x = unzig(operand(I32, o)); sleb(x); push(-1); break;
            case 0x42: { let b, n = 0; do { c1(I64, n); c2(I64, n, x); c3(I64, n, x, t1); b = octet(I64); byte(b); n++; x = mix(x, b); } while (b > 127); push(-2); break; }
            case 0x43: for (let i = 0; i < 4; i++) { c1(OCTET, i); byte(octet(OCTET)); } push(-3); break;
            case 0x44: {
                let b = 0;
                for (let i = 7; i >= 0; i--) {
                    c2(F64, i, b); c4(F64, i, x, 1, 1);
                    const v = octet(F64);
                    out[end + i] = v;
                    b = v; x = mix(x, v);
                }
                end += 8;
                push(-4);
                break;
            }
            case 0x08: leb(operand(MISC, o)); pop(); break;
            case 0x0a: case 0x1a: pop(); break;
            case 0x1b: { pop(); const a = pop(); pop(); push(a); break; }
            case 0x40: byte(0); pop(); push(-1); break;
            case 0x20a: byte(0); byte(0); drop(3); break;
            case 0x20b: byte(0); drop(3); break;
            case 0xd3: drop(2); push(-1); break;
            case 0x11a: pop(); push(-18); break;
            case 0x11b: pop(); push(-17); break;
            case 0x11c: pop(); push(-20); break;
            case 0x00: case 0x01: case 0x0f: break;
            default: plain(o);
        }
        t4 = t3; t3 = t2; t2 = t1; t1 = mix(o, x);
        o5 = o4; o4 = o3; o3 = o2; o2 = o1; o1 = o;
    }
    function plain(o) {
        if (o >= 0x28 && o <= 0x3e) {
            leb(operand(MEMORY, o)); leb(operand(MEMORY, o));
            if (o < 0x36) { pop(); push(o === 0x28 || (o >= 0x2c && o <= 0x2f) ? -1 : o === 0x2a ? -3 : o === 0x2b ? -4 : -2); } else drop(2);
        } else if ((o >= 0x46 && o <= 0x4f) || (o >= 0x51 && o <= 0x66) || (o >= 0x6a && o <= 0x78)) { drop(2); push(-1); }
        else if (o >= 0x7c && o <= 0x8a) { drop(2); push(-2); }
        else if (o >= 0x92 && o <= 0x98) { drop(2); push(-3); }
        else if (o >= 0xa0 && o <= 0xa6) { drop(2); push(-4); }
        else if ((o >= 0x79 && o <= 0x7b) || (o >= 0xac && o <= 0xb1) || o === 0xbd || (o >= 0x204 && o <= 0x207)) { pop(); push(-2); }
        else if ((o >= 0x8b && o <= 0x91) || (o >= 0xb2 && o <= 0xb6) || o === 0xbe) { pop(); push(-3); }
        else if ((o >= 0x99 && o <= 0x9f) || (o >= 0xb7 && o <= 0xbb) || o === 0xbf) { pop(); push(-4); }
        else if (!(o >= 0xc0 && o <= 0xc4)) { pop(); push(-1); }
    }
    function body(f) {
        sp = 0; depth = 0; heights[0] = 0; yields[0] = NONE;
        lastSet = t2 = t3 = t4 = o1 = o2 = o3 = o4 = o5 = 0;
        const own = params[functionTypes[f]], given = own.length;
        mostLocal = given;
        c1(LOCALS, given); c2(LOCALS, functionTypes[f], 1);
        locals = given + number(LOCALS);
        localTypes = new Int32Array(locals); localKnown = new Uint8Array(locals);
        for (let i = 0; i < given; i++) { localTypes[i] = own[i]; localKnown[i] = 1; }
        t1 = mix(12345, functionTypes[f]);
        const from = end;
        while (depth >= 0) instruction();
        for (let i = given; i < locals; i++) if (!localKnown[i]) { c1(LOCAL_TYPE, 0); localTypes[i] = unzi(number(LOCAL_TYPE)); }
        // Locals stand before the code, and are known only after it.
        const to = end;
        let runs = 0;
        for (let i = given; i < locals; i++) if (i === given || localTypes[i] !== localTypes[i - 1]) runs++;
        leb(runs);
        for (let i = given; i < locals; ) {
            let n = 1;
            while (i + n < locals && localTypes[i + n] === localTypes[i]) n++;
            leb(n); value(localTypes[i]);
            i += n;
        }
        const before = end - to;
        const moved = out.slice(to, end);
        out.copyWithin(from + before, from, to);
        out.set(moved, from);
        bodyFrom[f] = from; bodyTo[f] = end;
    }
    end = 0;
    const codeBuffer = out;
    for (let lowest = importedFunctions; ; ) {
        while (pending.length) { const f = pending.pop(); done[f] = 1; body(f); }
        while (lowest < functions && done[lowest]) lowest++;
        if (lowest === functions) break;
        if (!named[lowest]) { mostFunction = Math.max(mostFunction, lowest + 1); known(lowest); }
    }

    // ---- words and tables
    const size = num(COUNT, 9, 0);
    const d = new Uint8Array(size);
    words(d);
    function words(d) {
        const seen = new Int32Array(1 << 16).fill(-1);
        let match = -1, length = 0, field = 0, miss = 0;
        for (let at = 0; at < size; ) {
            const p1 = at > 0 ? d[at - 1] : 0, p2 = at > 1 ? d[at - 2] : 0, p3 = at > 2 ? d[at - 3] : 0;
            const like = match >= 0 ? d[match] : -1;
            let b = -1;
            if (length >= 8) {
                c1(WORDS_HIT, Math.min(length, 40)); c3(WORDS_HIT, 1, like, p1); c3(WORDS_HIT, miss, length > 20 ? 1 : 0, 7); c4(WORDS_HIT, field, Math.min(length, 16), 3, 3);
                if (flag(WORDS_HIT)) b = like;
            }
            if (b < 0) {
                const x = length >= 8 ? 0 : Math.min(length, 15);
                c2(WORDS, p1, p2); c3(WORDS, p1, p2, p3); c4(WORDS, length >= 8 ? -1 : like, x, 1, 1);
                b = octet(WORDS);
            }
            d[at++] = b;
            if (like === b) { match++; length++; } else { if (match >= 0) miss = (miss * 2 + 1) & 7; match = -1; length = 0; }
            if (like === b && length === 32) miss = (miss * 2) & 7;
            const hash = at >= 6 ? Math.imul((((d[at - 1] * 31 + d[at - 2]) * 31 + d[at - 3]) * 31 + d[at - 4]) * 31 + d[at - 5], 0x9e3779b1) >>> 16 : 0;
            if (match < 0) {
                match = seen[hash]; length = 0;
                if (match >= 0) while (length < 32 && match - 1 - length >= 0 && d[match - 1 - length] === d[at - 1 - length]) length++;
                if (length < 5) { match = -1; length = 0; }
            }
            seen[hash] = at;
            if (b === 44) field++;
            if (b === 10) field = 0;
        }
    }

    // ---- put together
    const bodies = codeBuffer;
    const whole = new Uint8Array(1 << 22);
    out = whole; end = 0;
    const bytes = (all) => { out.set(all, end); end += all.length; };
    bytes([0, 97, 115, 109, 1, 0, 0, 0]);
    const section = (id, write) => {
        const at = end;
        write();
        const made = out.slice(at, end);
        end = at;
        if (!made.length) return;
        byte(id);
        if (id === 10) four(made.length); else leb(made.length);
        bytes(made);
    };
    const four = (n) => { for (let i = 0; i < 3; i++) { byte((n & 127) | 128); n >>>= 7; } byte(n); };
    section(1, () => bytes(typeBytes));
    section(2, () => bytes(raw[2]));
    section(3, () => { leb(functions - importedFunctions); for (let f = importedFunctions; f < functions; f++) leb(functionTypes[f]); });
    section(4, () => bytes(raw[4]));
    section(13, () => bytes(raw[13]));
    section(6, () => { leb(globals - importedGlobals); bytes(globalBytes.subarray(0, globalEnd)); });
    section(7, () => bytes(raw[7]));
    section(8, () => bytes(raw[8]));
    section(9, () => {
        let n = 0;
        for (const one of referred) n += one;
        byte(1); byte(3); byte(0); leb(n);
        for (let f = 0; f < functions; f++) if (referred[f]) leb(f);
    });
    section(10, () => {
        leb(functions - importedFunctions);
        for (let f = importedFunctions; f < functions; f++) {
            let n = bodyTo[f] - bodyFrom[f];
            for (let i = 0; i < 3; i++) { byte((n & 127) | 128); n >>>= 7; }
            byte(n & 127);
            bytes(bodies.subarray(bodyFrom[f], bodyTo[f]));
        }
    });
    section(11, () => bytes(d));
    section(0, () => bytes(raw[0]));
    return whole.subarray(0, end);
}
