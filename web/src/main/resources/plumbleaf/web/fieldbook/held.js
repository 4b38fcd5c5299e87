// The jobs this device holds and the photos that wait to go up, in the browser's own store.
const NAME = "plumbleaf-field-book";
/** 1 held jobs alone; 2 photos beside them; 3 what waits, written down a second time. */
const MAKE = 3;

function opened() {
    return new Promise((done, failed) => {
        const asked = indexedDB.open(NAME, MAKE);
        asked.onupgradeneeded = (event) => {
            const store = asked.result;
            if (event.oldVersion < 1) store.createObjectStore("jobs", { keyPath: "id" });
            if (event.oldVersion < 2) store.createObjectStore("photos", { keyPath: "id", autoIncrement: true }).createIndex("job", "job");
            if (event.oldVersion < 3) store.createObjectStore("waiting", { keyPath: "job" });
        };
        asked.onsuccess = () => done(asked.result);
        asked.onerror = () => failed(asked.error);
        asked.onblocked = () => failed(new Error("an older page of the field book is open; close it"));
    });
}

async function inStore(name, mode, work) {
    const store = await opened();
    try {
        return await new Promise((done, failed) => {
            // Written to the disk before it counts as written: a battery may die the moment after.
            const passage = store.transaction(name, mode, { durability: "strict" });
            const asked = work(passage.objectStore(name));
            passage.oncomplete = () => done(asked?.result);
            passage.onerror = () => failed(passage.error);
            passage.onabort = () => failed(passage.error);
        });
    } finally {
        store.close();
    }
}

export const heldJobs = () => inStore("jobs", "readonly", (jobs) => jobs.getAll());
export const heldJob = (id) => inStore("jobs", "readonly", (jobs) => jobs.get(id));
export const hold = (job) => inStore("jobs", "readwrite", (jobs) => jobs.put(job));
export async function letGo(id) {
    await inStore("jobs", "readwrite", (jobs) => jobs.delete(id));
    await inStore("waiting", "readwrite", (waiting) => waiting.delete(id));
}

/** @param {{ job: string, person: string, made: number, edits: object[] }} all that waits of a job, and how many changes were ever made to it here */
export const keepWaiting = (all) => inStore("waiting", "readwrite", (waiting) => waiting.put(all));
export const keptWaiting = (job) => inStore("waiting", "readonly", (waiting) => waiting.get(job));

export const photosOf = (job) => inStore("photos", "readonly", (photos) => photos.index("job").getAll(job));
export const keepPhoto = (photo) => inStore("photos", "readwrite", (photos) => photos.add(photo));
export const photoWent = (id) => inStore("photos", "readwrite", (photos) => photos.delete(id));

/** @param {Map<string, string>} names of shots, as they were and as they are now */
export async function renamePhotos(job, names) {
    if (!names.size) return;
    const waiting = (await photosOf(job)).filter((photo) => names.has(photo.part));
    await inStore("photos", "readwrite", (photos) => {
        for (const photo of waiting) {
            const part = names.get(photo.part);
            photos.put({ ...photo, part, name: photo.name.replace(photo.part + "-", part + "-") });
        }
    });
}
