// Keeps the field book's files on the device, all of one make: a new make is fetched whole before the old one goes. Jobs are not kept here (held.js does).
const MAKE = "plumbleaf-field-book-@version@";
const FILES = ["@files@"];

async function take() {
    const shelf = await caches.open(MAKE);
    await Promise.all(FILES.map(async (file) => {
        const answer = await fetch(file, { cache: "no-cache" });
        // Who is signed out is sent to the sign-in page: that is not the file.
        if (!answer.ok || answer.redirected) throw new Error("not to be had: " + file);
        await shelf.put(file, answer);
    }));
}

async function tidy() {
    for (const name of await caches.keys()) if (name.startsWith("plumbleaf-field-book-") && name !== MAKE) await caches.delete(name);
    await self.clients.claim();
}

self.addEventListener("install", (event) => event.waitUntil(take().then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("fetch", (event) => {
    const { pathname, origin } = new URL(event.request.url);
    if (event.request.method !== "GET" || origin !== location.origin || !FILES.includes(pathname)) return;
    event.respondWith(caches.open(MAKE).then(async (shelf) => (await shelf.match(pathname)) ?? fetch(event.request)));
});
