// Makes the page like the answer while leaving every part in place that is in both: what has the focus, what is being pressed and what is
// scrolled stays as it is.
const keyOf = (node) => (node.nodeType === 1 ? node.id || node.dataset?.key || "" : "");
const alike = (a, b) => a.nodeType === b.nodeType && a.nodeName === b.nodeName && keyOf(a) === keyOf(b);

export function morph(now, next) {
    if (now.nodeType === 3) {
        if (now.data !== next.data) now.data = next.data;
        return;
    }
    if (now.nodeType !== 1) return;
    if (now.nodeName === "svg") {
        if (!now.isEqualNode(next)) now.replaceWith(document.importNode(next, true));
        return;
    }
    // A picture of another shape would keep the shape of the old one until it is loaded, and push what stands below it then.
    if (now.nodeName === "IMG" && ["width", "height"].some((name) => now.getAttribute(name) !== next.getAttribute(name))) {
        now.replaceWith(document.importNode(next, true));
        return;
    }
    // What someone unfolded stays so through an answer; what the answer unfolds, because something in it is refused, opens.
    const kept = (name) => name === "open" && now.nodeName === "DETAILS";
    for (const name of now.getAttributeNames()) if (!next.hasAttribute(name) && !kept(name)) now.removeAttribute(name);
    for (const name of next.getAttributeNames()) {
        if (now.getAttribute(name) !== next.getAttribute(name)) now.setAttribute(name, next.getAttribute(name));
    }
    children(now, next);
    if (now.nodeName === "INPUT" || now.nodeName === "SELECT") now.value = next.value;
}

function children(now, next) {
    const keyed = new Map([...now.children].filter(keyOf).map((child) => [keyOf(child), child]));
    let at = now.firstChild;
    for (const wanted of [...next.childNodes]) {
        const key = keyOf(wanted);
        const same = key ? keyed.get(key) : null;
        if (same && same !== at && alike(same, wanted)) now.insertBefore(same, at);
        else if (!same && at && keyOf(at) && keyOf(at) !== key) {
            now.insertBefore(document.importNode(wanted, true), at);
            continue;
        }
        const present = same && alike(same, wanted) ? same : at;
        if (present && alike(present, wanted)) {
            at = present.nextSibling;
            morph(present, wanted);
        } else if (present) {
            at = present.nextSibling;
            present.replaceWith(document.importNode(wanted, true));
        } else {
            now.append(document.importNode(wanted, true));
        }
    }
    while (at) {
        const gone = at;
        at = at.nextSibling;
        gone.remove();
    }
}
