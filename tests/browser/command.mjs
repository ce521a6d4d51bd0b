// The command under test, and what the tests feed it.
import {execFileSync} from "node:child_process";
import {mkdtempSync, readFileSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {parse} from "yaml";

export const root = process.env.HEELRULE_ROOT;

/** What the command prints. */
export function heelrule(...words) {
  return execFileSync(process.env.HEELRULE, words, {encoding: "utf8", maxBuffer: 1 << 28});
}

/** A folder for one test, which goes with it. */
export function folderFor(test) {
  const folder = mkdtempSync(join(tmpdir(), "heelrule-"));
  test.after(() => rmSync(folder, {recursive: true, force: true}));
  return folder;
}

/** The page of a rule set, as a file. */
export function pageOf(folder, rules, ...options) {
  const path = join(folder, `${rules.replaceAll("/", "_")}.html`);
  writeFileSync(path, heelrule("sheet", rules, "--as", "page", ...options));
  return path;
}

/** A part of a page that a script reads. */
export function partOf(page, id) {
  const html = readFileSync(page, "utf8");
  return html.match(new RegExp(`<script type="[a-z/]+" id="${id}">([^<]*)</script>`))[1];
}

/** A record in YAML as an object of texts: nothing in it is taken for a number or an answer. */
export function recordIn(path) {
  return parse(readFileSync(join(root, path), "utf8"), {schema: "failsafe"});
}

/** The rule sets that ship, and a record of each that is recorded in full, where there is one. */
export const shipped = [
  "at-risk-foot", "build", "child", "everyday", "feet", "fit", "hosiery", "older-adult", "safety",
  "sole", "wear", "work",
];

export const examples = [
  ["everyday", "examples/office-worker/inspection.yaml"],
  ["child", "examples/child/inspection.yaml"],
  ["child", "examples/child/earlier.yaml"],
  ["older-adult", "examples/older-adult/inspection.yaml"],
];
