import { feetAndInches } from "./handles.js";

// A gate on its ground as solid bodies: dragged, or turned with the arrow keys; the slider opens it. Straight lines of sight, so that what is plumb
// looks plumb. The scene says what stands (outlines on the plan, raised) and what turns (outlines in the leaf's plane) in inches.
const STUFF = { STEEL: [0.76, 0.79, 0.8], WOOD: [0.89, 0.81, 0.66], CONCRETE: [0.8, 0.79, 0.75] };
const SOIL = [0.91, 0.86, 0.76];
const TIGHT = [0.93, 0.76, 0.42];
const STRIKES = [0.86, 0.34, 0.28];
const BESIDE_IN = 16;
const TIGHT_IN = 1;
const VIEWS = { outside: [0.45, 0.3], inside: [Math.PI - 0.45, 0.3], above: [0, Math.PI / 2] };
const states = new Map();

const VERTEX = `attribute vec3 at; attribute vec3 ink; uniform mat4 look; uniform float nearer; varying vec3 shown;
void main() { gl_Position = look * vec4(at, 1.0); gl_Position.z -= nearer; shown = ink; }`;
const FRAGMENT = `precision mediump float; varying vec3 shown; void main() { gl_FragColor = vec4(shown, 1.0); }`;

export function keepSpaces() {
    for (const place of document.querySelectorAll(".space")) lay(place);
}

function lay(place) {
    const key = location.pathname + " " + place.closest("figure").dataset.key;
    const canvas = place.querySelector("canvas");
    let state = states.get(key);
    if (!state || state.canvas !== canvas) {
        state = { canvas, yaw: VIEWS.outside[0], pitch: VIEWS.outside[1], times: 1, open: state?.open ?? 30, gl: null };
        state.gl = program(canvas);
        states.set(key, state);
        if (state.gl) listen(place, state);
    }
    if (!state.gl) {
        canvas.hidden = true;
        place.querySelector(".turn").hidden = true;
        place.querySelector(".no-space").hidden = false;
        return;
    }
    if (state.text !== place.dataset.space) {
        state.text = place.dataset.space;
        state.scene = JSON.parse(state.text);
    }
    place.querySelector("input").value = state.open;
    draw(place, state);
}

function program(canvas) {
    const gl = canvas.getContext("webgl", { antialias: true, preserveDrawingBuffer: true });
    if (!gl) return null;
    const made = gl.createProgram();
    for (const [kind, text] of [[gl.VERTEX_SHADER, VERTEX], [gl.FRAGMENT_SHADER, FRAGMENT]]) {
        const shader = gl.createShader(kind);
        gl.shaderSource(shader, text);
        gl.compileShader(shader);
        gl.attachShader(made, shader);
    }
    gl.linkProgram(made);
    gl.useProgram(made);
    return { gl, made, faces: gl.createBuffer(), edges: gl.createBuffer() };
}

function listen(place, state) {
    const { canvas } = state;
    const again = () => draw(place, state);
    // A phone takes the drawing surface away from a page in the background, and gives it back.
    canvas.addEventListener("webglcontextlost", (event) => event.preventDefault());
    canvas.addEventListener("webglcontextrestored", () => {
        state.gl = program(canvas);
        again();
    });
    canvas.addEventListener("pointerdown", (event) => {
        if (event.button !== 0) return;
        canvas.setPointerCapture(event.pointerId);
        let [x, y] = [event.clientX, event.clientY];
        const move = (now) => {
            state.yaw += (now.clientX - x) / 120;
            state.pitch = tilted(state.pitch + (now.clientY - y) / 120);
            [x, y] = [now.clientX, now.clientY];
            again();
        };
        const done = () => { canvas.removeEventListener("pointermove", move); canvas.removeEventListener("pointerup", done); canvas.removeEventListener("pointercancel", done); };
        canvas.addEventListener("pointermove", move);
        canvas.addEventListener("pointerup", done);
        canvas.addEventListener("pointercancel", done);
    });
    canvas.addEventListener("keydown", (event) => {
        const turn = { ArrowLeft: [-0.1, 0], ArrowRight: [0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] }[event.key];
        const times = { "+": 1.2, "=": 1.2, "-": 1 / 1.2, "0": 0 }[event.key];
        if (!turn && times === undefined) return;
        event.preventDefault();
        if (turn) [state.yaw, state.pitch] = [state.yaw + turn[0], tilted(state.pitch + turn[1])];
        else state.times = times === 0 ? 1 : Math.min(6, Math.max(0.5, state.times * times));
        again();
    });
    canvas.addEventListener("wheel", (event) => {
        if (!event.ctrlKey) return;
        event.preventDefault();
        state.times = Math.min(6, Math.max(0.5, state.times * Math.exp(-event.deltaY / 300)));
        again();
    }, { passive: false });
    place.querySelector("input").addEventListener("input", (event) => {
        state.open = Number(event.target.value);
        again();
    });
    for (const button of place.querySelectorAll("[data-view]")) button.addEventListener("click", () => {
        [state.yaw, state.pitch] = VIEWS[button.dataset.view];
        again();
    });
    addEventListener("resize", again);
}

const tilted = (pitch) => Math.min(Math.PI / 2, Math.max(-0.35, pitch));

function draw(place, state) {
    const { canvas, gl: { gl, made, faces, edges }, scene } = state;
    const sharp = Math.min(2, devicePixelRatio || 1);
    const wide = canvas.clientWidth * sharp;
    const high = canvas.clientHeight * sharp;
    if (!wide || !high) return;
    if (canvas.width !== wide || canvas.height !== high) [canvas.width, canvas.height] = [wide, high];
    const bodies = collect(scene, state.open);
    gl.viewport(0, 0, wide, high);
    gl.clearColor(...inked(canvas, "--sheet"), 1);
    gl.enable(gl.DEPTH_TEST);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    gl.uniformMatrix4fv(gl.getUniformLocation(made, "look"), false, look(state, bodies.box, wide / high));
    fill(gl, made, faces, bodies.faces, gl.TRIANGLES, 0);
    const ink = inked(canvas, "--ink").map((part, i) => 0.75 * part + 0.25 * inked(canvas, "--sheet")[i]);
    fill(gl, made, edges, bodies.edges.flatMap((point) => [...point, ...ink]), gl.LINES, 0.0015);
    const room = said(scene, state.open, scene.metric);
    place.querySelector("output").textContent = state.open + "°. " + room;
    place.querySelector("input[type=range]").setAttribute("aria-valuetext", `${state.open} degrees, ${room}`);
}

function fill(gl, made, buffer, numbers, kind, nearer) {
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
    gl.bufferData(gl.ARRAY_BUFFER, new Float32Array(numbers), gl.DYNAMIC_DRAW);
    for (const [name, from] of [["at", 0], ["ink", 12]]) {
        const place = gl.getAttribLocation(made, name);
        gl.enableVertexAttribArray(place);
        gl.vertexAttribPointer(place, 3, gl.FLOAT, false, 24, from);
    }
    gl.uniform1f(gl.getUniformLocation(made, "nearer"), nearer);
    gl.drawArrays(kind, 0, numbers.length / 6);
}

function inked(canvas, name) {
    const text = getComputedStyle(canvas).getPropertyValue(name).trim();
    return [1, 3, 5].map((at) => parseInt(text.slice(at, at + 2), 16) / 255);
}

/** Everything as triangles with their shade, and as edges; and the box it all lies in, the leaf fully turned counted so that the picture keeps still. */
function collect(scene, open) {
    const out = { faces: [], edges: [], box: [[Infinity, Infinity, Infinity], [-Infinity, -Infinity, -Infinity]] };
    for (const block of scene.standing) solid(out, block, (across, up, deep) => [across, up, deep]);
    for (const leaf of scene.leaves) {
        const turned = Math.min(open, leaf.opens);
        const place = placer(leaf, turned);
        for (const block of leaf.blocks) solid(out, block, (r, z, n) => place(r, n, z));
        ground(out, leaf);
    }
    return out;
}

function placer(leaf, degrees) {
    const q = (degrees * Math.PI) / 180;
    const [cos, sin] = [Math.cos(q), Math.sin(q)];
    return (r, n, z) => {
        const s = -leaf.side * n - leaf.off;
        return [
            leaf.pinX + leaf.along * (r * cos - s * sin),
            leaf.pinY + leaf.side * (r * sin + s * cos),
            leaf.pinZ + z + leaf.rise * degrees,
        ];
    };
}

/** For what stands the outline lies on the plan and the body goes up; for a leaf it lies in its plane and the body goes across. */
function solid(out, block, place) {
    const near = block.outline.map((point) => place(point.x, point.y, block.from));
    const far = block.outline.map((point) => place(point.x, point.y, block.to));
    const ink = STUFF[block.stuff];
    cap(out, near, ink);
    cap(out, far, ink);
    const round = near.length > 8;
    near.forEach((point, i) => {
        const next = (i + 1) % near.length;
        cap(out, [point, near[next], far[next], far[i]], ink);
        out.edges.push(point, near[next], far[i], far[next]);
        if (!round) out.edges.push(point, far[i]);
    });
    for (const point of [...near, ...far]) stretch(out.box, point);
}

function stretch(box, point) {
    for (let i = 0; i < 3; i++) {
        box[0][i] = Math.min(box[0][i], point[i]);
        box[1][i] = Math.max(box[1][i], point[i]);
    }
}

function cap(out, corners, ink) {
    const shade = shadeOf(corners);
    const shown = ink.map((part) => part * shade);
    for (let i = 1; i + 1 < corners.length; i++) for (const at of [0, i, i + 1]) out.faces.push(...corners[at], ...shown);
}

/** By which way a face looks, not from where it is seen: a thing keeps its shade while the eye moves. */
function shadeOf(corners) {
    const [a, b, c] = [corners[0], corners[1], corners[2]];
    const u = b.map((part, i) => part - a[i]);
    const v = c.map((part, i) => part - a[i]);
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const size = Math.hypot(...n) || 1;
    return 0.72 + 0.28 * (0.62 * Math.abs(n[2]) + 0.3 * Math.abs(n[1]) + 0.12 * Math.abs(n[0])) / size / 0.62 * 0.9;
}

function ground(out, leaf) {
    const under = leaf.turns.map((degrees, a) => {
        const q = (degrees * Math.PI) / 180;
        return leaf.reaches.map((r, i) => [
            leaf.pinX + leaf.along * (r * Math.cos(q) + leaf.off * Math.sin(q)),
            leaf.pinY + leaf.side * (r * Math.sin(q) - leaf.off * Math.cos(q)),
            leaf.pinZ + leaf.ground[a][i],
        ]);
    });
    for (let a = 0; a + 1 < under.length; a++) {
        if (leaf.turns[a] > Math.max(90, leaf.opens) + 1e-6) break;
        for (let r = 0; r + 1 < under[a].length; r++) {
            const room = Math.min(leaf.room[a][r], leaf.room[a + 1][r], leaf.room[a][r + 1], leaf.room[a + 1][r + 1]);
            const swept = leaf.turns[a] < leaf.opens - 1e-6;
            const ink = !swept ? SOIL : room < 0 ? STRIKES : room < TIGHT_IN ? TIGHT : SOIL;
            cap(out, [under[a][r], under[a][r + 1], under[a + 1][r + 1], under[a + 1][r]], ink);
        }
        out.edges.push(under[a][under[a].length - 1], under[a + 1][under[a].length - 1]);
    }
    // The other side of the fence was not swept: a strip of it, as the fence line has it.
    const line = under[0];
    const beyond = line.map(([x, y, z]) => [x, y - leaf.side * BESIDE_IN, z]);
    for (let r = 0; r + 1 < line.length; r++) {
        cap(out, [line[r], line[r + 1], beyond[r + 1], beyond[r]], SOIL);
        out.edges.push(beyond[r], beyond[r + 1]);
    }
    for (const row of [...under, beyond]) for (const point of row) stretch(out.box, point);
}

/** Turned about the middle of the box, and small enough that nothing is cut off however it is turned. */
function look(state, box, shape) {
    const middle = box[0].map((low, i) => (low + box[1][i]) / 2);
    const reach = Math.hypot(...box[0].map((low, i) => box[1][i] - low)) / 2;
    const [cy, sy, cp, sp] = [Math.cos(state.yaw), Math.sin(state.yaw), Math.cos(state.pitch), Math.sin(state.pitch)];
    const right = [cy, sy, 0];
    const up = [-sy * sp, cy * sp, cp];
    const away = [-sy * cp, cy * cp, -sp];
    const scale = (state.times * 1.02) / reach;
    const [sx, sy2] = shape > 1 ? [scale / shape, scale] : [scale, scale * shape];
    const rows = [right.map((part) => part * sx), up.map((part) => part * sy2), away.map((part) => part / reach / 1.05)];
    const moved = rows.map((row) => -(row[0] * middle[0] + row[1] * middle[1] + row[2] * middle[2]));
    return [0, 1, 2].flatMap((column) => [rows[0][column], rows[1][column], rows[2][column], 0]).concat([...moved, 1]);
}

/** What is under the leaf where it stands now. */
function said(scene, open, metric) {
    const words = [];
    for (const leaf of scene.leaves) {
        const turned = Math.min(open, leaf.opens);
        let at = 0;
        while (at + 2 < leaf.turns.length && leaf.turns[at + 1] < turned) at++;
        const share = Math.min(1, Math.max(0, (turned - leaf.turns[at]) / (leaf.turns[at + 1] - leaf.turns[at])));
        const room = Math.min(...leaf.room[at].map((near, r) => near + share * (leaf.room[at + 1][r] - near)));
        const size = metric ? Math.round(Math.abs(room) * 25.4) + " mm" : feetAndInches(Math.round(Math.abs(room) * 16) / 16);
        const name = scene.leaves.length > 1 ? leaf.id + ": " : "";
        words.push(name + (room < 0 ? `${size} into the ground` : `${size} clear at the least`));
    }
    return words.join("; ");
}

keepSpaces();
