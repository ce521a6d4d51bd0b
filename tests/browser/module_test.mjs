// The engine of a page by itself, without a browser: it says what the command says, to the byte.
import assert from "node:assert/strict";
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {test} from "node:test";
import {examples, folderFor, heelrule, pageOf, partOf, recordIn, root, shipped} from "./command.mjs";

const {startEngine} = await import(join(root, "cli/page/engine.js"));

async function engineOf(page) {
  const {rules} = JSON.parse(partOf(page, "page-data"));
  return startEngine(Buffer.from(partOf(page, "page-engine"), "base64"), JSON.stringify(rules));
}

// As much of a record as a rule set asks for.
function within(record, sheet) {
  const asked = new Set(sheet.sections.flatMap((section) => section.questions).map((one) => one.name));
  const kept = (values) => Object.fromEntries(
    Object.entries(values ?? {}).filter(([name]) => asked.has(name)));
  return {inspection: record.inspection, safety: kept(record.safety), found: kept(record.found)};
}

function same(engine, rules, record, folder, ...languages) {
  const path = join(folder, "record.json");
  writeFileSync(path, JSON.stringify(record));
  const options = languages.flatMap((language) => ["--language", language]);
  engine.speak(JSON.stringify(languages));
  assert.equal(engine.verdict(JSON.stringify(record)),
    heelrule("grade", rules, path, "--as", "json", "--exactly", ...options));
}

test("every rule set that ships grades every example on its page as the command does", async (t) => {
  const folder = folderFor(t);
  for (const rules of shipped) {
    const engine = await engineOf(pageOf(folder, rules));
    const sheet = JSON.parse(engine.questions(""));
    for (const [, path] of examples) {
      same(engine, rules, within(recordIn(path), sheet), folder);
    }
    same(engine, rules, {inspection: {rules}}, folder);
  }
});

test("an example leaves nothing unseen on its own page, and no fault", async (t) => {
  const folder = folderFor(t);
  const engine = await engineOf(pageOf(folder, "everyday"));
  const record = recordIn("examples/office-worker/inspection.yaml");
  const answers = JSON.parse(engine.answers(JSON.stringify(record)));
  assert.deepEqual(answers.faults, []);
  assert.ok(answers.derived.length > 5);
  assert.ok(answers.sizes.some((section) => section.table.length > 0));
});

test("an answer that cannot be taken is told of in the words of the command, and the rest is graded", async (t) => {
  const folder = folderFor(t);
  const engine = await engineOf(pageOf(folder, "everyday"));
  const record = recordIn("examples/office-worker/inspection.yaml");
  const faulty = structuredClone(record);
  faulty.found.foot_length = {left: "24 mm", right: "246 mm"};
  const {faults} = JSON.parse(engine.answers(JSON.stringify(faulty)));
  assert.equal(faults.length, 1);
  assert.equal(faults[0].side, "left");
  assert.equal(faults[0].unusual, true);
  const path = join(folder, "faulty.json");
  writeFileSync(path, JSON.stringify(faulty));
  assert.throws(() => heelrule("grade", "everyday", path),
    (fault) => fault.status === 65 && fault.stderr.includes(faults[0].message));
  const rest = structuredClone(faulty);
  delete rest.found.foot_length.left;
  writeFileSync(path, JSON.stringify(rest));
  assert.equal(engine.verdict(JSON.stringify(faulty)), heelrule("grade", "everyday", path, "--as", "json", "--exactly"));
});

test("a record that is saved and opened again is the same record", async (t) => {
  const folder = folderFor(t);
  for (const [rules, path] of examples) {
    const engine = await engineOf(pageOf(folder, rules));
    const record = recordIn(path);
    const file = engine.file(JSON.stringify(record));
    assert.deepEqual(JSON.parse(file), record);
    const opened = JSON.parse(engine.opened(file));
    assert.deepEqual(opened.inspection, record.inspection);
    const saved = join(folder, "saved.json");
    writeFileSync(saved, file);
    assert.equal(heelrule("grade", rules, saved, "--as", "json", "--exactly"),
      heelrule("grade", rules, join(root, path), "--as", "json", "--exactly"));
  }
});

test("a file that is no record of these rules is refused at its place", async (t) => {
  const engine = await engineOf(pageOf(folderFor(t), "everyday"));
  const refused = (text) => JSON.parse(engine.opened(text)).errors[0];
  assert.deepEqual(refused('{"inspection": {},\n "found": {"foot_lenght": "243 mm"}}'), {
    line: 2, column: 13, message: "`everyday` asks for no trait `foot_lenght`",
    hint: "did you mean `foot_length`?",
  });
  assert.equal(refused("inspection: {rules: everyday}").line, 1);
  assert.equal(refused("\u0000").line, 1);
});

test("the engine answers nonsense without stopping", async (t) => {
  const engine = await engineOf(pageOf(folderFor(t), "child"));
  for (const text of ["", "[", "null", '{"found": 7}', '{"found": {"child_age": {"left": {"left": []}}}}',
    "[".repeat(100_000), `{"found": {"child_age": "${"9".repeat(10_000)}"}}`]) {
    assert.ok(engine.verdict(text).startsWith('{\n  "format": "heelrule verdict"'));
    JSON.parse(engine.answers(text));
    JSON.parse(engine.opened(text));
  }
});
