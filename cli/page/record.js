// What was answered so far, and the record that it makes. Nothing is checked here: the engine does
// that.

/** A question that nobody has answered. */
export function blankAnswer(unit) {
  return {
    texts: [""], unit: unit ?? "", fibres: [], notSeen: false, reason: "", note: "",
    confirmed: false, doubt: "",
  };
}

/** A record that nobody has begun. `today` is `2026-10-03`. */
export function blankRecord(today) {
  return {
    head: {client: "", observer: "", date: today, label: "", marked: "", note: ""},
    answers: {},
    alike: {}, // questions to which one value was given for both sides, until one side is changed
    other: {},
  };
}

/** Under which name an answer is kept. */
export function answerKey(name, side) {
  return side ? `${name} ${side}` : name;
}

/** Whether nothing at all was said. */
export function isBlank(answer) {
  return !answer.notSeen && !answer.note.trim() && answer.texts.every((text) => !text.trim()) &&
    answer.fibres.every(([fibre, share]) => !fibre.trim() && !share.trim());
}

/** Whether there is anything that would be lost. */
export function isUntouched(record) {
  const {client, observer, label, marked, note} = record.head;
  return ![client, observer, label, marked, note].some((text) => text.trim()) &&
    Object.values(record.answers).every(isBlank);
}

// What was typed, with the unit that was chosen unless it brings its own.
function withUnit(text, unit) {
  const written = text.trim();
  return unit && /[0-9.,]$/.test(written) ? `${written} ${unit}` : written;
}

// A value as a record holds it.
function valueOf(answer, question) {
  if (question.form === "fibres") {
    const parts = answer.fibres.filter(([fibre, share]) => fibre.trim() || share.trim());
    return Object.fromEntries(parts.map(([fibre, share]) => [fibre.trim(), withUnit(share, "%")]));
  }
  const texts = answer.texts.filter((text) => text.trim())
    .map((text) => question.form === "measure" ? withUnit(text, answer.unit) : text.trim());
  return texts.length > 1 ? texts : texts[0] ?? "";
}

function recorded(answer, question) {
  const note = answer.note.trim();
  if (answer.notSeen) {
    const reason = answer.reason.trim();
    return reason || note ? {"not seen": reason, ...(note && {note})} : "not seen";
  }
  const value = valueOf(answer, question);
  const confirmed = answer.confirmed && question.form === "measure";
  const doubt = question.form === "measure" ? answer.doubt : "";
  return note || confirmed || doubt
    ? {value, ...(confirmed && {confirmed: "yes"}), ...(doubt && {doubt}), ...(note && {note})}
    : value;
}

function present(fields) {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== "" && value));
}

/** The record as rules/README.md describes it, of all that was answered. `sheet` is what the engine asks. */
export function recordOf(record, sheet) {
  const trimmed = Object.fromEntries(
    Object.entries(record.head).map(([key, text]) => [key, text.trim()]));
  const {client, observer, date, label, marked, note} = trimmed;
  const shoe = present({label, marked});
  const made = {
    inspection: present(
      {rules: sheet.rules, date, observer, client, shoe: Object.keys(shoe).length ? shoe : "", note}),
    safety: {}, found: {}, ...record.other,
  };
  for (const question of sheet.sections.flatMap((section) => section.questions)) {
    const into = question.safety ? made.safety : made.found;
    const given = {};
    for (const side of question.sides) {
      const answer = record.answers[answerKey(question.name, side)];
      if (answer && !isBlank(answer)) {
        given[side] = recorded(answer, question);
      }
    }
    if (Object.keys(given).length) {
      const [first] = question.sides;
      into[question.name] = first === "" || record.alike[question.name] ? given[first] : given;
    }
  }
  for (const key of ["safety", "found"]) {
    if (!Object.keys(made[key]).length) {
      delete made[key];
    }
  }
  return made;
}

// A number and the unit behind it, where that is one of those to choose from.
function split(text, units) {
  const written = text.trim();
  const unit = [...units].sort((a, b) => b.length - a.length)
    .find((one) => one && written.endsWith(one) && /[0-9.\s]$/.test(written.slice(0, -one.length)));
  return unit ? [written.slice(0, -unit.length).trim(), unit] : [written, ""];
}

// Repeats share a unit where they were written with the same one, or with one at their end.
function readings(texts, units) {
  const parts = texts.map((text) => split(text, units));
  const unit = parts.at(-1)?.[1] || units[0] || "";
  const plain = parts.every(([, own]) => own === unit || (own === "" && parts.length > 1));
  return plain ? {texts: parts.map(([number]) => number), unit} : {texts, unit: units[0] ?? ""};
}

/** The record that a file holds, as the engine took it apart. */
export function recordOfFile(opened, sheet) {
  const {client = "", observer = "", date = "", shoe = {}, note = ""} = opened.inspection;
  const record = {
    head: {client, observer, date, label: shoe.label ?? "", marked: shoe.marked ?? "", note},
    answers: {},
    alike: {},
    other: opened.other,
  };
  const questions = new Map(
    sheet.sections.flatMap((section) => section.questions).map((one) => [one.name, one]));
  for (const one of opened.answers) {
    const question = questions.get(one.name);
    const measure = question?.form === "measure" ? readings(one.texts, question.units) : null;
    const texts = measure?.texts ?? one.texts;
    const sides = one.side ? [one.side] : question?.sides ?? [""];
    record.alike[one.name] = sides.length > 1;
    for (const side of sides) {
      record.answers[answerKey(one.name, side)] = {
        texts: texts.length ? [...texts] : [""], unit: measure?.unit ?? "",
        fibres: one.fibres.map(([fibre, share]) => [fibre, split(share, ["%"])[0]]),
        notSeen: one.not_seen, reason: one.reason, note: one.note,
        confirmed: one.confirmed, doubt: one.doubt,
      };
    }
  }
  return record;
}
