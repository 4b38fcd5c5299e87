// The ground of a run as its shots come in: a plain line, the newest shot ringed. Heights are drawn several times too high, and the sketch says so.
const WIDE = 360;
const HIGH = 96;
const EDGE = 18;
/** What the name of a shot takes of it. */
const NAME_WIDE = 26;
const SVG = "http://www.w3.org/2000/svg";

function make(name, attributes, words = "") {
    const part = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) part.setAttribute(key, String(value));
    part.textContent = words;
    return part;
}

/** @param {{ run: string, lengthIn: number, points: { shot: string, stationIn: number, elevationIn: number }[] }} ground */
export function sketch(place, ground, newest) {
    const svg = make("svg", { viewBox: `0 0 ${WIDE} ${HIGH}`, role: "img", class: "sketch" });
    place.replaceChildren(svg);
    const points = ground?.points ?? [];
    if (!points.length) {
        svg.append(make("text", { x: WIDE / 2, y: HIGH / 2, "text-anchor": "middle" }, "No shot on this run yet."));
        return;
    }
    const heights = points.map((point) => point.elevationIn);
    const low = Math.min(...heights);
    const rise = Math.max(...heights) - low || 1;
    const long = Math.max(ground.lengthIn, ...points.map((point) => point.stationIn)) || 1;
    const across = (WIDE - 2 * EDGE) / long;
    const up = Math.min((HIGH - 3 * EDGE) / rise, 8 * across);
    const x = (point) => EDGE + point.stationIn * across;
    const y = (point) => HIGH - 1.5 * EDGE - (point.elevationIn - low) * up;
    svg.append(make("title", {}, `Ground of ${ground.run}, ${points.length} shots`));
    svg.append(make("path", { class: "ground", d: points.map((point, i) => `${i ? "L" : "M"}${x(point)} ${y(point)}`).join("") }));
    // A name that would lie on its neighbor's is left out; the newest always has its own.
    const ringed = points.find((point) => point.shot === newest);
    let named = -NAME_WIDE;
    const isClear = (point) => x(point) - named >= NAME_WIDE && (!ringed || Math.abs(x(point) - x(ringed)) >= NAME_WIDE);
    for (const point of points) {
        svg.append(make("circle", { class: point.shot === newest ? "shot newest" : "shot", cx: x(point), cy: y(point), r: point.shot === newest ? 5 : 3, "data-of": point.shot }));
        if (point !== ringed && !isClear(point)) continue;
        named = x(point);
        svg.append(make("text", { class: point === ringed ? "of-newest" : "", x: x(point), y: y(point) - 8, "text-anchor": "middle" }, point.shot));
    }
    svg.append(make("text", { x: EDGE, y: HIGH - 4 }, `heights drawn ${Math.max(1, Math.round(up / across))} times as high`));
}
