// What the answers come to, beside the questions. Every word of it comes from the engine.
import {counted, fill, make} from "./elements.js";
import {reachRuler} from "./reach.js";

const headings = [
  ["fail", "Failed"], ["part", "In part"], ["pass", "Passed"],
];

function pointsWords(score) {
  const shown = (points) => points.toFixed(1);
  const open = shown(score.lowest) === shown(score.highest)
    ? "" : ` It can still become ${shown(score.lowest)} to ${shown(score.highest)}.`;
  return score.points === null
    ? "Nothing that counts was seen yet."
    : `Score ${shown(score.points)} of 100 so far.${open}`;
}

function readingsWords(finding) {
  return finding.readings.map((one) => [one.side, one.value].filter(Boolean).join(" "))
    .join(", ");
}

function finding(one) {
  return make("li", {},
    make("strong", {}, one.title),
    make("span", {class: "read"}, readingsWords(one)),
    one.sentence ? make("span", {class: "says"}, one.sentence) : null);
}

function folded(title, count, inside, open = false) {
  return count
    ? make("details", {class: "group", open}, make("summary", {}, `${title} (${count})`), inside)
    : null;
}

function list(items) {
  return make("ul", {}, items.map((item) => make("li", {}, item)));
}

/** The referrals of a verdict; null where there is none. */
export function practitionerFirst(verdict) {
  const asked = verdict.safety.filter((one) => one.answer === "yes");
  const words = [...asked.map((one) => one.referral), ...verdict.referrals.map((one) => one.words)];
  return words.length
    ? make("section", {class: "alarm"},
      make("h3", {}, "See a licensed practitioner first"), list([...new Set(words)]))
    : null;
}

/** The part that the trainer can switch off is all but the referrals. */
export class VerdictPanel {
  constructor(element, blind) {
    this.element = element;
    this.blind = blind;
    this.open = new Map();
  }

  // Which groups the reader has opened stays so.
  remember() {
    for (const group of this.element.querySelectorAll("details")) {
      this.open.set(group.dataset.name, group.open);
    }
  }

  group(title, items, inside, open) {
    const group = folded(title, items.length, inside, this.open.get(title) ?? open);
    if (group) {
      group.dataset.name = title;
    }
    return group;
  }

  /** `grades` are those of the sheet; `answers` and `verdict` what the engine said last. */
  show(grades, answers, verdict) {
    this.remember();
    if (this.blind) {
      fill(this.element, practitionerFirst(verdict));
      return;
    }
    const {grade, score, findings} = verdict;
    fill(this.element,
      practitionerFirst(verdict),
      make("div", {class: grade.name ? "grade" : "grade none"},
        grade.name ? make("p", {class: "small"}, "Grade so far") : null,
        make("p", {class: "name"}, grade.name ?? "Nothing graded yet"),
        make("p", {class: "means"}, grade.means),
        make("p", {class: "certainty"}, grade.certainty)),
      reachRuler(grades, score, pointsWords(score)),
      score.points === null ? null : make("p", {class: "small"}, pointsWords(score)),
      grade.caps ? make("p", {class: "small"}, grade.caps) : null,
      this.group("Would settle the grade", score.points === null ? [] : answers.settle,
        make("ul", {}, answers.settle.slice(0, 8).map((one) =>
          make("li", {}, make("a", {href: `#q-${one.name}`}, one.words))),
        answers.settle.length > 8 ? make("li", {}, `and ${answers.settle.length - 8} more`) : null), true),
      headings.map(([status, title]) => {
        const some = findings.filter((one) => one.status === status);
        return this.group(title, some, make("ul", {class: "findings"}, some.map(finding)), status === "fail");
      }),
      this.group("Advice", verdict.advice, list(verdict.advice.map((one) => one.words)), false),
      verdict.advice_held_back.length
        ? make("p", {class: "small"}, `${counted(verdict.advice_held_back.length, "piece")} of advice held back: a practitioner comes first.`)
        : null,
      this.group("Cautions", verdict.cautions, list(verdict.cautions.map((one) => `${one.title}: ${one.words}`)), false),
      this.group("Worked out", answers.derived, make("ul", {}, answers.derived.map((one) =>
        make("li", {}, `${one.ask}${one.side ? ` (${one.side})` : ""}: `, make("strong", {}, one.value)))), false),
      this.group("Sizes", answers.sizes, answers.sizes.map((section) => make("section", {class: "size"},
        make("h4", {}, section.title), list(section.lines),
        section.table.length
          ? make("table", {}, section.table.map(([size, how]) =>
            make("tr", {}, make("th", {scope: "row"}, size), make("td", {}, how))))
          : null)), false),
      make("p", {class: "small"}, "How sure all this is, for readings are never exact, is told by the graded report of the saved record."));
  }

  /** The grade in a few words, for the line at the foot of a small screen. */
  static brief(verdict) {
    const {grade, score} = verdict;
    return score.points === null ? "Nothing graded yet"
      : `${grade.name}${grade.stands ? "" : ", not settled"}`;
  }
}
