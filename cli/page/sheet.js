// The recording sheet: puts the parts together and keeps them in step.
import {counted, fill, make} from "./elements.js";
import {startEngine} from "./engine.js";
import {Keeping} from "./keeping.js";
import {writePaper} from "./paper.js";
import {QuestionCard} from "./question.js";
import {blankRecord, isBlank, isUntouched, recordOf, recordOfFile} from "./record.js";
import {Tape} from "./tape.js";
import {VerdictPanel, practitionerFirst} from "./verdict.js";

// ms without a stroke, after which faults are told: half a number is no fault. What it all comes to stands there at once.
const pause = 350;

// … and after leaving a field: words that come or go meanwhile would move what a finger is just pressing.
const blink = 120;

const place = (id) => document.getElementById(id);

function today() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function bytesOf(base64) {
  return Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
}

class Sheet {
  constructor(engine, page) {
    this.engine = engine;
    this.page = page;
    this.keeping = new Keeping(page.rules.name, localStorage);
    this.id = this.keeping.newId();
    this.record = blankRecord(today());
    this.tape = new Tape(place("sections"), place("here"));
    this.verdictPanel = new VerdictPanel(place("verdict"), page.blind);
    this.saved = true;
  }

  start() {
    // What stands still at the head of the page hides nothing that is gone to.
    new ResizeObserver(([head]) => {
      document.documentElement.style.setProperty("--head", `${head.target.offsetHeight}px`);
    }).observe(document.querySelector(".top"));
    this.ask(this.page.languages.length ? this.page.languages : navigator.languages);
    this.listen();
    if (!this.page.record || this.begin(JSON.stringify(this.page.record)).length) {
      this.lay();
    }
    this.offerKept();
  }

  // What is asked.

  ask(languages) {
    this.engine.speak(JSON.stringify(languages));
    this.sheet = JSON.parse(this.engine.questions(""));
    this.judged = undefined;
  }

  speak(languages) {
    this.ask(languages);
    this.lay();
  }

  lay() {
    const {sections, fibres} = this.sheet;
    document.title = `${this.sheet.title}: recording sheet`;
    fill(place("title"), this.sheet.title);
    fill(place("about"), this.sheet.about);
    document.documentElement.lang = this.sheet.language || "en";
    this.cards = new Map();
    fill(place("questions"), sections.map((section) => make("section",
      {class: "bench", id: `section-${section.name}`, "aria-labelledby": `heading-${section.name}`},
      make("h2", {id: `heading-${section.name}`, tabindex: "-1"}, section.title),
      section.questions.map((question) => {
        const card = new QuestionCard(question, () => this.record, () => this.changed());
        this.cards.set(question.name, card);
        return card.element;
      }))));
    fill(place("fibre-names"), fibres.map((fibre) => make("option", {value: fibre})));
    fill(place("of-rules"), `Rules ${this.sheet.rules}${this.sheet.edition ? `, edition ${this.sheet.edition}` : ""}.`);
    fill(place("cautions"), this.sheet.cautions.map((words) => make("li", {}, words)));
    this.fillHead();
    this.tape.lay([{id: "who-and-what", title: "Who and what", size: 3}, ...sections.map((section) => (
      {id: `section-${section.name}`, title: section.title, size: section.questions.length}))]);
    this.layLanguages();
    this.judge();
    this.tell();
  }

  layLanguages() {
    const {languages, language} = this.sheet;
    place("languages").hidden = languages.length < 2;
    const named = (tag) => new Intl.DisplayNames([tag], {type: "language"}).of(tag);
    fill(place("language"), languages.map((tag) =>
      make("option", {value: tag, selected: tag === language}, named(tag))));
  }

  fillHead() {
    for (const [key, text] of Object.entries(this.record.head)) {
      place(`head-${key}`).value = text;
    }
  }

  // What was answered.

  changed() {
    this.saved = false;
    const works = isUntouched(this.record)
      ? (this.keeping.forget(this.id), true)
      : this.keeping.keep(this.id, this.record);
    place("not-kept").hidden = works;
    this.tellState(works ? "Kept on this device, not saved yet." : "");
    cancelAnimationFrame(this.frame);
    this.frame = requestAnimationFrame(() => this.judge());
    this.tellAfter(pause);
  }

  tellAfter(milliseconds) {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => {
      this.judge();
      this.tell();
    }, milliseconds);
  }

  tellState(words) {
    fill(place("state"), words);
  }

  recordText() {
    return JSON.stringify(recordOf(this.record, this.sheet));
  }

  /** Asks the engine about everything, and shows what the answers come to. */
  judge() {
    cancelAnimationFrame(this.frame);
    const text = this.recordText();
    if (text === this.judged) {
      return;
    }
    this.judged = text;
    this.answers = JSON.parse(this.engine.answers(text));
    this.faults = new Map();
    for (const fault of this.answers.faults) {
      this.faults.set(fault.name, (this.faults.get(fault.name) ?? new Map()).set(fault.side, fault));
    }
    this.verdict = JSON.parse(this.engine.verdict(text));
    this.showProgress();
    this.verdictPanel.show(this.sheet.grades, this.answers, this.verdict);
    this.showBrief();
  }

  /** Shows what is wrong with the answers, and has what is new read aloud. */
  tell() {
    clearTimeout(this.waiting);
    const news = this.showFaults();
    if (this.brief !== this.told) {
      news.push(this.told === undefined || !this.brief ? "" : `So far: ${this.brief}.`);
      this.told = this.brief;
    }
    const words = news.filter(Boolean).join(" ");
    if (words) {
      fill(place("said"), words);
    }
  }

  faultsOf(name) {
    return this.faults.get(name) ?? new Map();
  }

  showFaults() {
    const news = [];
    for (const [name, card] of this.cards) {
      news.push(...card.show(this.faultsOf(name)));
    }
    const date = this.faultsOf("date").get("");
    fill(place("head-date-fault"), date ? date.message.replaceAll("`", "") : "");
    place("head-date").setAttribute("aria-invalid", String(Boolean(date)));
    return news;
  }

  showProgress() {
    const {head} = this.record;
    const about = [head.client, head.observer, head.date].map((text) => Boolean(text.trim()));
    const progress = new Map([["who-and-what", [about.filter(Boolean).length, 3, 0]]]);
    let [all, of] = [0, 0];
    for (const section of this.sheet.sections) {
      const parts = section.questions.flatMap(({name}) => this.cards.get(name).progress(this.faultsOf(name)));
      const faulty = section.questions.filter(({name}) => this.faultsOf(name).size).length;
      const done = parts.filter(Boolean).length;
      progress.set(`section-${section.name}`, [done, parts.length, faulty]);
      all += done;
      of += parts.length;
    }
    this.tape.measure(progress);
    fill(place("count"), `${all} of ${of} answers`);
  }

  showBrief() {
    this.brief = this.answers.refers ? "See a practitioner first"
      : this.page.blind ? "" : VerdictPanel.brief(this.verdict);
    fill(place("brief"), this.brief);
    place("panel").classList.toggle("refers", this.answers.refers);
  }

  // Files.

  save() {
    this.judge();
    this.tell();
    const {faults} = this.answers;
    if (faults.length) {
      const [first] = faults;
      this.tellState(`${counted(faults.length, "answer")} to look at before this can be saved. Nothing is lost meanwhile.`);
      const card = this.cards.get(first.name);
      const field = card
        ? card.element.querySelector('[aria-invalid="true"]') ?? card.element.querySelector("input")
        : place("head-date");
      field.focus();
      return;
    }
    const name = `${[this.record.head.client.trim() || "record", this.record.head.date].filter(Boolean)
      .join("-").replace(/[^\w.-]+/g, "_")}.json`;
    const file = new Blob([this.engine.file(this.recordText())], {type: "application/json"});
    const link = make("a", {href: URL.createObjectURL(file), download: name});
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    this.keeping.forget(this.id);
    this.saved = true;
    this.tellState(`Saved as ${name}, among this device's downloads.`);
  }

  /** Takes over the record that a text is. Gives the faults, if it is none of these rules. */
  begin(text) {
    const opened = JSON.parse(this.engine.opened(text));
    if (!opened.errors) {
      this.take(this.keeping.newId(), recordOfFile(opened, this.sheet));
      this.saved = true;
    }
    return opened.errors ?? [];
  }

  async open(file) {
    const text = await file.text();
    const faults = this.begin(text);
    if (faults.length) {
      const isJson = text.trimStart().startsWith("{");
      fill(place("open-faults"),
        make("h2", {tabindex: "-1"}, `${file.name} cannot be opened`),
        isJson
          ? make("ul", {}, faults.slice(0, 10).map(({line, column, message, hint}) => make("li", {},
            `Line ${line}, column ${column}: ${message}${hint ? `; ${hint}` : ""}.`.replaceAll("`", ""))))
          : [make("p", {}, "A sheet opens what a sheet saved: a record in JSON, which begins with {. To go on here with a record " +
              "from the terminal or an editor, have a sheet made that begins with it:"),
            make("p", {}, make("code", {}, `heelrule sheet ${this.sheet.rules} --as page --with ${/^[\w.-]+$/.test(file.name) ? file.name : "RECORD"} >sheet.html`))],
        make("button", {type: "button", class: "tool", onclick: () => {
          place("open-faults").hidden = true;
          place("open").focus();
        }}, "Close"));
      place("open-faults").hidden = false;
      place("open-faults").firstChild.focus();
      return;
    }
    place("open-faults").hidden = true;
    this.tellState(`${file.name} is open.`);
  }

  /** Goes on with a record. */
  take(id, record) {
    this.id = id;
    this.record = record;
    this.saved = false;
    this.judged = undefined;
    this.lay();
  }

  startAfresh() {
    if (!this.saved && !isUntouched(this.record)) {
      this.keeping.keep(this.id, this.record);
    }
    this.take(this.keeping.newId(), blankRecord(today()));
    this.saved = true;
    this.tellState("");
    this.offerKept();
    place("head-client").focus();
    scrollTo(0, 0);
  }

  // What was left behind.

  offerKept() {
    const kept = this.keeping.kept().filter(({id}) => id !== this.id);
    const offer = place("kept");
    offer.hidden = kept.length === 0;
    fill(offer,
      make("h2", {tabindex: "-1"}, "Go on where you were?"),
      make("p", {}, "These answers were typed on this device and never saved."),
      make("ul", {}, kept.map((one) => this.keptOffer(one))));
  }

  keptOffer({id, at, record}) {
    const {client, label} = record.head;
    const when = new Date(at).toLocaleString([], {dateStyle: "medium", timeStyle: "short"});
    const count = Object.values(record.answers).filter((answer) => !isBlank(answer)).length;
    const who = [client || "no client code", label].filter(Boolean).join(", ");
    return make("li", {},
      make("span", {}, `${who}: ${counted(count, "answer")}, ${when} `),
      make("button", {type: "button", class: "main", onclick: () => {
        this.take(id, record);
        this.tellState("Kept on this device, not saved yet.");
        place("kept").hidden = true;
        place("head-client").focus();
      }}, "Go on"),
      make("button", {type: "button", class: "tool", onclick: (event) => {
        if (event.target.dataset.asked) {
          this.keeping.forget(id);
          this.offerKept();
        } else {
          event.target.dataset.asked = "yes";
          fill(event.target, "Really throw away?");
        }
      }}, "Throw away"));
  }

  // Hands.

  listen() {
    for (const key of Object.keys(this.record.head)) {
      place(`head-${key}`).addEventListener("input", (event) => {
        this.record.head[key] = event.target.value;
        this.changed();
      });
    }
    document.addEventListener("change", () => this.tellAfter(blink));
    place("save").addEventListener("click", () => this.save());
    place("save-too").addEventListener("click", () => this.save());
    place("print").addEventListener("click", () => print());
    place("afresh").addEventListener("click", () => this.startAfresh());
    place("open").addEventListener("click", () => place("file").click());
    place("file").addEventListener("change", async (event) => {
      const [file] = event.target.files;
      if (file) {
        await this.open(file);
        event.target.value = "";
      }
    });
    place("language").addEventListener("change", (event) => this.speak([event.target.value]));
    place("brief-button").addEventListener("click", () => this.togglePanel());
    this.keeping.watch(() => this.id, () => {
      place("two-windows").hidden = false;
    });
    addEventListener("beforeprint", () => {
      this.judge();
      writePaper(place("paper"), this.sheet.title, this.sheet, this.record, practitionerFirst(this.verdict));
    });
    document.addEventListener("keydown", (event) => this.key(event));
  }

  togglePanel() {
    const open = place("panel").classList.toggle("open");
    place("brief-button").setAttribute("aria-expanded", String(open));
  }

  // Enter goes on to the next field, as a pencil would.
  key(event) {
    if (event.key === "Escape" && place("panel").classList.contains("open")) {
      this.togglePanel();
      place("brief-button").focus();
    }
    if (event.key !== "Enter" || event.target.tagName !== "INPUT" || event.target.type === "file") {
      return;
    }
    event.preventDefault();
    const fields = [...document.querySelectorAll("#sheet input:not([disabled])")]
      .filter((field) => field.type === "text" || field.type === "date" ||
        (field.type === "radio" && (field.checked || !document.querySelector(`input[name="${field.name}"]:checked`))));
    const next = fields.slice(fields.indexOf(event.target) + 1)
      .find((field) => field.type !== "radio" || field.name !== event.target.name);
    next?.focus();
  }
}

async function run() {
  try {
    const page = JSON.parse(place("page-data").textContent);
    const module = bytesOf(place("page-engine").textContent.trim());
    const engine = await startEngine(module, JSON.stringify(page.rules));
    const sheet = new Sheet(engine, page);
    sheet.start();
    document.body.classList.add("running");
  } catch (fault) {
    fill(place("failed-words"), `${fault.message ?? fault}`);
    place("failed").hidden = false;
  }
}

run();
