// One question with its fields, left and right side by side.
import {answerKey, blankAnswer, isBlank} from "./record.js";
import {fill, idOf, make} from "./elements.js";

const names = {left: "Left", right: "Right", "": ""};

// How a field is called by whoever reads the page aloud.
function spoken(question, side, what) {
  return [side && `${names[side]}:`, what ? `${what},` : "", question.ask].filter(Boolean).join(" ");
}

/**
 * A question on the page. `record` gives the record that is being written, `changed` is called after
 * each change with the name of the question.
 */
export class QuestionCard {
  constructor(question, record, changed) {
    this.question = question;
    this.record = record;
    this.changed = changed;
    this.faults = new Map(question.sides.map((side) => [side, this.faultPlace(side)]));
    this.element = this.build();
  }

  answer(side) {
    const {answers} = this.record();
    const key = answerKey(this.question.name, side);
    answers[key] ??= blankAnswer(this.question.units[0]);
    return answers[key];
  }

  id(...parts) {
    return idOf("q", this.question.name, ...parts);
  }

  changes(side, change) {
    delete this.record().alike[this.question.name];
    change(this.answer(side));
    this.changed(this.question.name);
  }

  /** Builds the fields anew, and leaves the focus where it was. */
  rebuild() {
    const focused = document.activeElement?.id;
    const old = this.element;
    const open = old.querySelector("details")?.open;
    this.element = this.build();
    if (open) {
      this.element.querySelector("details").open = true;
    }
    old.replaceWith(this.element);
    if (focused) {
      document.getElementById(focused)?.focus();
    }
  }

  build() {
    const {question} = this;
    return make("fieldset",
      {class: `question ${question.sides.length > 1 ? "sided" : "single"}`, id: this.id()},
      make("legend", {}, question.ask),
      question.how
        ? make("details", {class: "how"},
          make("summary", {}, question.form === "measure" ? "How to measure" : "How to look"),
          make("p", {}, question.how))
        : null,
      make("div", {class: "body"}, this.fields(), question.sides.map((side) => this.faults.get(side)), this.rests(), this.tools()));
  }

  fields() {
    switch (this.question.form) {
      case "measure":
        return this.measure();
      case "fibres":
        return this.fibres();
      case "shoe size":
      case "sock range":
        return this.words();
      default:
        return this.levels();
    }
  }

  // Typed answers.

  input(side, index, text, more) {
    return make("input", {
      id: this.id(side, index), type: "text", autocomplete: "off", spellcheck: "false",
      value: text, "aria-describedby": this.id(side, "fault"), ...more,
    });
  }

  reading(side, index) {
    const {texts, notSeen} = this.answer(side);
    return this.input(side, index, texts[index], {
      inputmode: "decimal", class: "reading", disabled: notSeen,
      "aria-label": spoken(this.question, side, index ? `reading ${index + 1}` : ""),
      oninput: (event) => this.changes(side, (answer) => {
        answer.texts[index] = event.target.value;
      }),
    });
  }

  measure() {
    const {question} = this;
    const count = Math.max(...question.sides.map((side) => this.answer(side).texts.length));
    for (const side of question.sides) {
      const {texts} = this.answer(side);
      while (texts.length < count) {
        texts.push("");
      }
    }
    const rows = Array.from({length: count}, (_, index) => make("div", {class: "row"},
      question.sides.map((side) => make("span", {class: "cell"}, this.reading(side, index))),
      index ? null : this.unit()));
    return make("div", {class: "measure"}, this.heads(), rows);
  }

  heads() {
    return this.question.sides.length > 1
      ? make("div", {class: "row heads", "aria-hidden": "true"},
        this.question.sides.map((side) => make("span", {class: "cell"}, names[side])))
      : null;
  }

  unit() {
    const {units, usual} = this.question;
    const chosen = this.answer(this.question.sides[0]).unit;
    return make("span", {class: "unit"},
      units.length > 1
        ? make("select", {
          id: this.id("unit"), "aria-label": `Unit of: ${this.question.ask}`,
          onchange: (event) => {
            for (const side of this.question.sides) {
              this.answer(side).unit = event.target.value;
            }
            this.changed(this.question.name);
          },
        }, units.map((unit) => make("option", {value: unit, selected: unit === chosen}, unit)))
        : units[0],
      usual ? make("span", {class: "usual"}, usual) : null);
  }

  words() {
    const sample = this.question.form === "shoe size" ? "EU 39.5" : "EU 39-42";
    return make("div", {class: "measure"}, this.heads(), make("div", {class: "row"},
      this.question.sides.map((side) => make("span", {class: "cell"},
        this.input(side, 0, this.answer(side).texts[0], {
          class: "words", placeholder: `such as ${sample}`, disabled: this.answer(side).notSeen,
          "aria-label": spoken(this.question, side, ""),
          oninput: (event) => this.changes(side, (answer) => {
            answer.texts[0] = event.target.value;
          }),
        })))));
  }

  fibres() {
    return make("div", {class: "sides"}, this.question.sides.map((side) => {
      const {fibres, notSeen} = this.answer(side);
      while (fibres.length < 2) {
        fibres.push(["", ""]);
      }
      const part = (index, which, what, more) => this.input(side, idOf(index, what), fibres[index][which], {
        disabled: notSeen, "aria-label": spoken(this.question, side, `${what} ${index + 1}`),
        oninput: (event) => this.changes(side, (answer) => {
          answer.fibres[index][which] = event.target.value;
        }),
        ...more,
      });
      return make("div", {class: "fibres"},
        fibres.map((_, index) => make("div", {class: "row"},
          part(index, 0, "fibre", {class: "words", list: "fibre-names", placeholder: index ? "" : "cotton"}),
          part(index, 1, "share", {class: "reading", inputmode: "decimal"}),
          make("span", {class: "unit"}, "%"))));
    }));
  }

  // Ticked answers.

  tick(side, value, words) {
    const answer = this.answer(side);
    const notSeen = value === null;
    return make("input", {
      type: "radio", name: this.id(side), id: notSeen ? this.id("unseen", side) : this.id(side, value.replaceAll(" ", "_")),
      checked: notSeen ? answer.notSeen : !answer.notSeen && answer.texts[0] === value,
      "aria-label": side ? spoken(this.question, side, words) : null,
      "aria-describedby": this.id(side, "fault"),
      onchange: () => this.choose([side], value),
    });
  }

  choose(sides, value) {
    delete this.record().alike[this.question.name];
    for (const side of sides) {
      const answer = this.answer(side);
      answer.notSeen = value === null;
      answer.texts = [value ?? ""];
    }
    this.changed(this.question.name);
    this.rebuild();
  }

  level(value, words, meaning) {
    const {sides} = this.question;
    const told = [make("span", {class: "level-name"}, words),
      meaning ? make("span", {class: "meaning"}, meaning) : null];
    if (sides.length === 1) {
      return make("label", {class: "level"}, this.tick("", value, words), make("span", {class: "told"}, told));
    }
    return make("div", {class: "level"},
      sides.map((side) => make("label", {class: "dot"}, this.tick(side, value, words))),
      // A short way for a finger or a mouse; the keyboard has the two fields themselves.
      make("button", {type: "button", class: "told", tabindex: "-1", "aria-label": `Both: ${words}`,
        onclick: () => this.choose(sides, value)}, told));
  }

  levels() {
    const {levels, sides} = this.question;
    const plain = sides.length === 1 && levels.every((level) => !level.meaning);
    return make("div", {class: plain ? "levels inline" : "levels"}, this.heads(),
      levels.map((level) => this.level(level.name, level.name, level.meaning)),
      this.level(null, "not seen", ""));
  }

  // What stands beside an answer.

  faultPlace(side) {
    return make("p", {class: "fault", id: this.id(side, "fault")});
  }

  line(side, key, words, more = {}) {
    return make("label", {class: "line"}, words,
      make("input", {
        type: "text", id: this.id(side, key), value: this.answer(side)[key], autocomplete: "off",
        "aria-label": spoken(this.question, side, words),
        oninput: (event) => this.changes(side, (answer) => {
          answer[key] = event.target.value;
        }),
        ...more,
      }));
  }

  rests() {
    return make("div", {class: "rests"}, this.question.sides.map((side) => this.rest(side)));
  }

  rest(side) {
    const answer = this.answer(side);
    const typed = ["measure", "fibres", "shoe size", "sock range"].includes(this.question.form);
    return make("div", {},
      answer.confirmed ? this.confirmation(side) : null,
      typed
        ? make("label", {class: "check"},
          make("input", {
            type: "checkbox", id: this.id("unseen", side), checked: answer.notSeen,
            "aria-label": spoken(this.question, side, "not seen"),
            onchange: (event) => {
              this.changes(side, (one) => {
                one.notSeen = event.target.checked;
              });
              this.rebuild();
            },
          }), "not seen")
        : null,
      answer.notSeen ? this.line(side, "reason", "Why not seen", {placeholder: "sole was wet"}) : null,
      answer.note || this.noting ? this.line(side, "note", "Note") : null);
  }

  confirmation(side) {
    const answer = this.answer(side);
    return make("label", {class: "check"},
      make("input", {
        type: "checkbox", id: this.id(side, "confirmed"), checked: answer.confirmed,
        "aria-label": spoken(this.question, side, "I looked again, it is true"),
        onchange: (event) => {
          this.changes(side, (one) => {
            one.confirmed = event.target.checked;
          });
          this.rebuild();
        },
      }), "I looked again: it is true.");
  }

  tool(id, words, act) {
    return make("button", {type: "button", class: "tool", id: this.id(id),
      "aria-label": `${words}: ${this.question.ask}`, onclick: act}, words);
  }

  tools() {
    const {form, sides} = this.question;
    this.clearing = this.tool("clear", "Clear", () => this.clear());
    return make("div", {class: "tools"},
      form === "measure" ? this.tool("again", "Take again", () => this.again()) : null,
      form === "fibres" ? this.tool("again", "One more fibre", () => this.again()) : null,
      this.noting || sides.some((side) => this.answer(side).note)
        ? null : this.tool("noting", "Note", () => this.takeNote()),
      this.clearing);
  }

  again() {
    delete this.record().alike[this.question.name];
    for (const side of this.question.sides) {
      const answer = this.answer(side);
      if (this.question.form === "fibres") {
        answer.fibres.push(["", ""]);
      } else {
        answer.texts.push("");
      }
    }
    this.rebuild();
    const [side] = this.question.sides;
    const {texts, fibres} = this.answer(side);
    const last = this.question.form === "fibres" ? idOf(fibres.length - 1, "fibre") : texts.length - 1;
    document.getElementById(this.id(side, last))?.focus();
  }

  takeNote() {
    this.noting = true;
    this.rebuild();
    document.getElementById(this.id(this.question.sides[0], "note")).focus();
  }

  clear() {
    delete this.record().alike[this.question.name];
    for (const side of this.question.sides) {
      Object.assign(this.answer(side), blankAnswer(this.question.units[0]));
    }
    this.noting = false;
    this.changed(this.question.name);
    this.rebuild();
    this.element.querySelector("input, select")?.focus();
  }

  // What the engine said.

  /** Shows the faults of this question: side to fault. Gives what is new, to be read aloud. */
  show(faults) {
    const news = [];
    for (const side of this.question.sides) {
      const fault = faults.get(side) ?? faults.get("");
      const place = this.faults.get(side);
      const words = fault ? [names[fault.side], this.faultWords(fault)].filter(Boolean).join(": ") : "";
      if (place.dataset.words !== words) {
        place.dataset.words = words;
        fill(place, words);
        if (fault?.unusual) {
          place.append(this.confirmation(side));
        }
        if (words) {
          news.push(words);
        }
      }
      for (const input of this.element.querySelectorAll(`[aria-describedby="${this.id(side, "fault")}"]`)) {
        input.setAttribute("aria-invalid", String(Boolean(fault) && Boolean(input.value.trim())));
      }
    }
    this.element.classList.toggle("faulty", faults.size > 0);
    this.clearing.hidden = this.question.sides.every((side) => isBlank(this.answer(side)));
    return news;
  }

  faultWords(fault) {
    const message = fault.message.charAt(0).toUpperCase() + fault.message.slice(1);
    const hint = fault.unusual ? "Check the value and its unit." : fault.hint && `${fault.hint.charAt(0).toUpperCase()}${fault.hint.slice(1)}`;
    return [message, hint].filter(Boolean).map((one) => /[.?!]$/.test(one) ? one : `${one}.`).join(" ")
      .replaceAll("`", "");
  }

  /** How many of its sides were answered, of how many. */
  progress(faults) {
    return this.question.sides.map((side) => {
      const answer = this.record().answers[answerKey(this.question.name, side)];
      return answer && !isBlank(answer) && !faults.has(side) && !faults.has("");
    });
  }
}
