// Pages of marks in a real browser: on screens from 360 pixels, and on paper.
import assert from "node:assert/strict";
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {after, test} from "node:test";
import {browserFor, closes, fitsInWidth, isValid, openPage, seesNoBarrier} from "./browser.mjs";
import {folderFor, heelrule, root} from "./command.mjs";

const browser = await browserFor(after);
const lesson = join(root, "examples/marking");
const students = ["S-21", "S-22", "S-23", "S-24"];

function marked(folder, references, records) {
  heelrule("mark", join(lesson, "lesson.yaml"), ...references.flatMap((path) => ["--reference", path]), ...records,
    "--marks", join(lesson, "marks.yaml"), "--as", "html", "--to", folder, "--replace");
}

// A table of questions and students may be wider than a phone: then it scrolls by itself, and the page does not.
async function fits(page, where) {
  if (await page.locator(".grid").count() === 0) {
    await fitsInWidth(page, where);
  }
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), 0,
    where);
}

async function isWhole(path, where) {
  isValid(path, where);
  const page = await openPage(browser, path);
  for (const width of [360, 768, 1280]) {
    await page.setViewportSize({width, height: 900});
    await fits(page, `${where} at ${width} pixels`);
    await seesNoBarrier(page, `${where} at ${width} pixels`);
  }
  await page.setViewportSize({width: Math.floor(176 / 25.4 * 96), height: 900});
  await page.emulateMedia({media: "print"});
  await fits(page, `${where} on paper`);
  await page.emulateMedia({media: null});
  return page;
}

test("each student has a page, and all together one that leads there", async (t) => {
  const folder = folderFor(t);
  marked(folder, ["reference", "second-reference", "third-reference"].map((name) => join(lesson, `${name}.yaml`)),
    students.map((name) => join(lesson, `${name}.yaml`)));
  for (const name of students) {
    await closes(await isWhole(join(folder, `${name}.html`), name));
  }
  const all = await isWhole(join(folder, "marks.html"), "all records");
  assert.equal(await all.locator("table.wide tbody tr").count(), students.length);
  await all.getByRole("link", {name: "S-23"}).click();
  assert.equal(await all.locator("h1").textContent(), "Mark of S-23");
  assert.match(await all.locator(".alarm").innerText(), /diabetes/);
  await all.context().close();
});

test("each reading stands on its ruler where it is said to stand: in the frame where it is right", async (t) => {
  const folder = folderFor(t);
  marked(folder, [join(lesson, "reference.yaml")], [join(lesson, "S-21.yaml"), join(lesson, "S-24.yaml")]);
  for (const [name, isRight] of [["S-21", true], ["S-24", false]]) {
    const page = await openPage(browser, join(folder, `${name}.html`));
    const found = await page.evaluate(() => [...document.querySelectorAll(".finding svg.ruler")].map((ruler) => {
      const frame = ruler.querySelector(".window").getBoundingClientRect();
      const notch = ruler.querySelector("line.notch:not(.earlier)").getBoundingClientRect();
      return notch.left >= frame.left - 1 && notch.right <= frame.right + 1;
    }));
    assert.ok(found.length >= 3, name);
    assert.ok(found.every((inFrame) => inFrame === isRight), `${name}: ${found}`);
    await closes(page);
  }
});

test("hostile text stays text", async (t) => {
  const folder = folderFor(t);
  const hostile = "</style></title><script>document.title='taken'</script><img src=x onerror=alert(1)>\"'&{{title}}";
  const paths = ["reference.json", "record.json"].map((name) => join(folder, name));
  for (const [path, found] of [[paths[0], {shank: {"not seen": hostile}, heel_counter: "firm"}],
    [paths[1], {shank: "stiff", heel_counter: {"not seen": hostile}}]]) {
    writeFileSync(path, JSON.stringify({
      inspection: {rules: "lesson", client: hostile, observer: hostile, shoe: {label: hostile}}, found}));
  }
  heelrule("mark", join(lesson, "lesson.yaml"), "--reference", paths[0], paths[1], "--as", "html", "--to",
    join(folder, "page.html"));
  const page = await openPage(browser, join(folder, "page.html"));
  page.on("dialog", () => page.faults.push("a dialog was opened"));
  assert.equal(await page.locator("script, img").count(), 0);
  assert.match(await page.title(), /<script>/);
  await fitsInWidth(page, "hostile text");
  await closes(page);
});
