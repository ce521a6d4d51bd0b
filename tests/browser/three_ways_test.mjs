// One inspection entered three ways: on the page, at the terminal, and by hand on the blank sheet.
import assert from "node:assert/strict";
import {execFileSync} from "node:child_process";
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {after, test} from "node:test";
import {parse} from "yaml";
import {browserFor, closes, openPage} from "./browser.mjs";
import {examples, folderFor, heelrule, pageOf, recordIn} from "./command.mjs";
import {fillSheet, saveSheet} from "./sheet.mjs";

const browser = await browserFor(after);

/** An answer as it is typed at a question. */
function typedLine(answer) {
  if (answer === undefined) {
    return "";
  }
  if (answer === "not seen") {
    return "skip";
  }
  if (typeof answer === "string") {
    return answer;
  }
  if (Array.isArray(answer)) {
    return answer.join(", ");
  }
  if ("not seen" in answer) {
    return `skip ${answer["not seen"]}`;
  }
  if ("value" in answer) {
    return typedLine(answer.value) + (answer.confirmed ? " !" : "") + (answer.note ? ` # ${answer.note}` : "");
  }
  return Object.entries(answer).map(([fibre, share]) => `${fibre} ${share}`).join(", ");
}

/** All that is typed for a record: the head, then each question of the blank sheet, the left side before the right. */
function typedLines(blank, {inspection, safety, found}) {
  const {date, observer, client, shoe, note} = inspection;
  const lines = [date, observer, client, shoe?.label, shoe?.marked, note];
  const asked = parse(blank, {schema: "failsafe"});
  for (const [name, place] of Object.entries({...asked.safety, ...asked.found})) {
    const answer = safety[name] ?? found[name];
    lines.push(...typeof place === "object"
      ? [typedLine(answer?.left), typedLine(answer?.right)] : [typedLine(answer)]);
  }
  return [...lines.map((line) => line ?? ""), "finish", ""].join("\n");
}

/** A value as a person writes it into a line of YAML. */
function written(value) {
  if (Array.isArray(value)) {
    return `[${value.map(written).join(", ")}]`;
  }
  if (typeof value === "object") {
    return `{${Object.entries(value).map(([key, one]) => `${key}: ${written(one)}`).join(", ")}}`;
  }
  return /[,:#"[\]{}]/.test(value) ? JSON.stringify(value) : value;
}

/** The blank sheet with each answer in its place, and nothing else changed. */
function filledByHand(blank, {inspection, safety, found}) {
  const answers = {...safety, ...found, ...inspection};
  delete answers.rules;
  return blank.replaceAll(/^ {2}(\w+): .*$/gm, (line, name) =>
    answers[name] === undefined ? line : `  ${name}: ${written(answers[name])}`);
}

for (const [rules, path] of examples.filter(([, path]) => path.endsWith("inspection.yaml"))) {
  test(`${path} entered three ways has one verdict, to the byte`, async (t) => {
    const folder = folderFor(t);
    const verdict = (name) => heelrule("grade", rules, join(folder, name), "--as", "json");
    const page = await openPage(browser, pageOf(folder, rules));
    const record = await fillSheet(page, recordIn(path));
    await page.locator("#head-date").dispatchEvent("change");
    await page.waitForTimeout(400);
    writeFileSync(join(folder, "page.json"), (await saveSheet(page)).text);
    await closes(page);

    const blank = heelrule("sheet", rules);
    execFileSync(process.env.HEELRULE, ["record", rules, "--to", join(folder, "terminal.yaml")],
      {input: typedLines(blank, record), stdio: ["pipe", "ignore", "inherit"]});
    writeFileSync(join(folder, "hand.yaml"), filledByHand(blank, record));

    const onPage = verdict("page.json");
    assert.ok(JSON.parse(onPage).findings.length > 40);
    assert.equal(verdict("terminal.yaml"), onPage);
    assert.equal(verdict("hand.yaml"), onPage);
  });
}
