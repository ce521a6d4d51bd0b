// Keeps what is typed in the browser's own storage, stroke by stroke, until it has been saved.

const prefix = "heelrule sheet";

/** Where the records of one rule set are kept. Tells whether this browser keeps anything at all. */
export class Keeping {
  constructor(rules, storage) {
    this.rules = rules;
    this.storage = storage;
    this.works = this.tries();
  }

  tries() {
    try {
      this.storage.setItem(`${prefix} trial`, "kept");
      this.storage.removeItem(`${prefix} trial`);
      return true;
    } catch {
      return false;
    }
  }

  key(id) {
    return `${prefix} ${this.rules} ${id}`;
  }

  /** A name that no other record has. */
  newId() {
    return `${Date.now().toString(36)}-${crypto.getRandomValues(new Uint32Array(1))[0].toString(36)}`;
  }

  /** Keeps a record. False where that failed. */
  keep(id, record) {
    try {
      this.storage.setItem(this.key(id), JSON.stringify({at: new Date().toISOString(), record}));
      this.works = true;
    } catch {
      this.works = false;
    }
    return this.works;
  }

  forget(id) {
    if (this.works) {
      this.storage.removeItem(this.key(id));
    }
  }

  /** Every record that was kept and never saved, the latest first. */
  kept() {
    if (!this.works) {
      return [];
    }
    const found = [];
    for (let i = 0; i < this.storage.length; ++i) {
      const key = this.storage.key(i);
      if (key.startsWith(this.key(""))) {
        try {
          found.push({id: key.slice(this.key("").length), ...JSON.parse(this.storage.getItem(key))});
        } catch {
          // Somebody else's entry under our name: not ours to read or to throw away.
        }
      }
    }
    return found.sort((a, b) => b.at.localeCompare(a.at));
  }

  /** Calls back when another window changes the record that `id` gives. */
  watch(id, changed) {
    addEventListener("storage", (event) => {
      if (event.key === this.key(id()) && event.newValue !== null) {
        changed();
      }
    });
  }
}
