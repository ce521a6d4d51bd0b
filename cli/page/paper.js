// The filled sheet as it is printed: a table of questions and answers, with room to write where one is missing.
import {answerKey, isBlank} from "./record.js";
import {fill, make} from "./elements.js";

function words(answer, question) {
  if (!answer || isBlank(answer)) {
    return make("span", {class: "to-write"});
  }
  const value = answer.notSeen
    ? ["not seen", answer.reason].filter((one) => one.trim()).join(": ")
    : question.form === "fibres"
      ? answer.fibres.filter(([fibre]) => fibre.trim()).map(([fibre, share]) => `${fibre} ${share} %`).join(", ")
      : answer.texts.filter((text) => text.trim()).join(", ");
  const unit = !answer.notSeen && question.form === "measure" && /[0-9]$/.test(value) ? ` ${answer.unit}` : "";
  const confirmed = answer.confirmed ? " (looked at again)" : "";
  return [`${value}${unit}${confirmed}`,
    answer.note.trim() ? make("span", {class: "note"}, answer.note.trim()) : null];
}

function row(question, record) {
  const cells = question.sides.map((side) => make("td", question.sides.length > 1 ? {} : {colspan: 2},
    words(record.answers[answerKey(question.name, side)], question)));
  return make("tr", {}, make("th", {scope: "row"}, question.ask), cells);
}

function heads(section) {
  const sided = section.questions.some((question) => question.sides.length > 1);
  return sided
    ? [make("th", {scope: "col"}, "Left"), make("th", {scope: "col"}, "Right")]
    : make("th", {scope: "col", colspan: 2}, "Answer");
}

/** Writes the sheet into `element`. `first` is what stands above the answers: whom to see before anything else. */
export function writePaper(element, title, sheet, record, first) {
  const {client, observer, date, label, marked, note} = record.head;
  const about = [["Client", client], ["Date", date], ["Observer", observer], ["Shoe", label],
    ["Marked", marked], ["Note", note]];
  fill(element,
    make("h1", {}, title),
    make("dl", {}, about.map(([name, value]) => make("div", {},
      make("dt", {}, name), make("dd", {}, value.trim() || make("span", {class: "to-write"}))))),
    first,
    sheet.sections.map((section) => make("table", {},
      make("thead", {}, make("tr", {}, make("th", {scope: "col"}, section.title), heads(section))),
      make("tbody", {}, section.questions.map((question) => row(question, record))))),
    make("ul", {class: "cautions"}, sheet.cautions.map((one) => make("li", {}, one))));
}
