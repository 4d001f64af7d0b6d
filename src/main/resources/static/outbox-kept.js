// The entries that this browser keeps until the server has confirmed them, in IndexedDB. An entry is removed only then, or
// when its person says so. Each belongs to one person by number; whoever asks says for whom.
"use strict";

const beltmarkKept = (() => {
  const STORE = "kept";
  // how long an entry that was stored is still shown as stored
  const SHOWN_MILLISECONDS = 12 * 60 * 60 * 1000;
  let opened = null;

  const promised = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

  const open = () => {
    if (opened === null) {
      const request = indexedDB.open("beltmark-outbox", 1);
      request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: "id", autoIncrement: true });
      opened = promised(request);
    }
    return opened;
  };

  const change = async (step) => {
    const transaction = (await open()).transaction(STORE, "readwrite", { durability: "strict" });
    const result = await promised(step(transaction.objectStore(STORE)));
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
    return result;
  };

  const list = async () => promised((await open()).transaction(STORE).objectStore(STORE).getAll());

  return {
    /** Keeps a new entry; it is on the disk when its number is there. */
    add: (entry) => change((store) => store.add(entry)),
    put: (entry) => change((store) => store.put(entry)),
    remove: (id) => change((store) => store.delete(id)),
    /** All entries in the order in which they were made. */
    list,
    /** Marks an entry as confirmed by the server; what was typed is dropped. */
    confirm: (entry, page) => change((store) => store.put(
      { ...entry, state: "stored", fields: [], page: page ?? entry.page, storedAt: Date.now() })),
    /** Forgets what was stored some time ago. */
    forgetOld: async () => {
      for (const entry of await list()) {
        if (entry.state === "stored" && Date.now() - entry.storedAt > SHOWN_MILLISECONDS) {
          await change((store) => store.delete(entry.id));
        }
      }
    },
  };
})();
