// Keeps the field book's files on the device, all of one make: a new make is fetched whole before the old one goes, and a file that comes otherwise than it was sent is none. Jobs are
// not kept here (held.js does).
const MAKE = "plumbleaf-field-book-@version@";
/** Each file with its SHA-256. */
const FILES = new Map(["@files@"]);

/** A file as this make has it, and not as something between may have kept or cut it. */
async function sent(file) {
    const answer = await fetch(file, { cache: "no-cache" });
    // Who is signed out is sent to the sign-in page: that is not the file.
    if (!answer.ok || answer.redirected) throw new Error("not to be had: " + file);
    const bytes = await answer.clone().arrayBuffer();
    const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    const hex = [...sum].map((octet) => octet.toString(16).padStart(2, "0")).join("");
    if (FILES.get(file) !== hex) throw new Error("came cut off, changed or of another make: " + file);
    return answer;
}

async function take() {
    const shelf = await caches.open(MAKE);
    await Promise.all([...FILES.keys()].map(async (file) => shelf.put(file, await sent(file))));
}

/** A file that the page found spoilt, past everything that keeps it; once it is here it takes the spoilt one's place. */
async function anew(file) {
    const shelf = await caches.open(MAKE);
    const answer = await sent(file);
    await shelf.put(file, answer.clone());
    return answer;
}

async function tidy() {
    for (const name of await caches.keys()) if (name.startsWith("plumbleaf-field-book-") && name !== MAKE) await caches.delete(name);
    await self.clients.claim();
}

/** One that the device threw away to make room is got again. */
async function kept(file) {
    return (await (await caches.open(MAKE)).match(file)) ?? anew(file);
}

self.addEventListener("install", (event) => event.waitUntil(take().then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("fetch", (event) => {
    const { request } = event;
    const { pathname, origin } = new URL(request.url);
    if (request.method !== "GET" || origin !== location.origin || !FILES.has(pathname)) return;
    event.respondWith(request.cache === "reload" && request.mode !== "navigate" ? anew(pathname) : kept(pathname));
});
