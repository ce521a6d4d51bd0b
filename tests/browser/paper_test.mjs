// Blank sheets on paper, in a real browser: a leaf to fill in, and how to take each on the other side or another leaf.
import assert from "node:assert/strict";
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {after, test} from "node:test";
import {browserFor, closes, fitsInWidth, openPage, seesNoBarrier, sides} from "./browser.mjs";
import {folderFor, heelrule, root, shipped} from "./command.mjs";

const browser = await browserFor(after);
const toeSpace = join(root, "examples/first-rule/toe-space.yaml");
// What is recorded of a client from the first question to the last; the others are parts of it.
const whole = ["at-risk-foot", "child", "everyday", "older-adult", "work"];
// The shorter paper has no room for the last lines of this one.
const spills = ["build on Letter"];
const margins = 22; // mm, left and right together, as paper_sheet.css has them
const papers = [["A4", 210], ["Letter", 215.9]];
const pixels = 96 / 25.4; // of a millimetre, in CSS

/** What is too small for a pen, or reaches out of its question or over what stands beside it; sizes in pixels. */
function hardToFillIn(least) {
  const found = [];
  for (const question of document.querySelectorAll(".question")) {
    const told = question.querySelector(".ask").textContent;
    const room = question.getBoundingClientRect();
    const parts = [...question.querySelectorAll(".ask, .choice, .line, .unit, .side, svg")];
    const boxes = parts.map((part) => part.getBoundingClientRect());
    for (const [i, part] of parts.entries()) {
      const box = boxes[i];
      if (box.left < room.left - 1 || box.right > room.right + 1) {
        found.push(`${told}: "${part.textContent}" leaves its question`);
      }
      if (part.matches(".line") && (box.width < least.line || box.height < least.high)) {
        found.push(`${told}: a line of ${box.width} by ${box.height}`);
      }
      if (part.matches(".choice") && part.querySelector(".box").getBoundingClientRect().width < least.box) {
        found.push(`${told}: a small box`);
      }
      for (const other of boxes.slice(i + 1)) {
        const across = Math.min(box.right, other.right) - Math.max(box.left, other.left);
        const down = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
        if (across > 1 && down > 3) {
          found.push(`${told}: "${part.textContent}" lies on its neighbour`);
        }
      }
    }
  }
  return found.slice(0, 5);
}

for (const rules of [...shipped, toeSpace]) {
  const name = rules === toeSpace ? "toe-space" : rules;
  test(`${name}: as few sides as it needs, nothing cut, and room for a pen`, async (t) => {
    const path = join(folderFor(t), "sheet.html");
    writeFileSync(path, heelrule("sheet", rules, "--as", "paper"));
    const page = await openPage(browser, path);
    assert.equal(await page.locator("script").count(), 0);
    for (const width of [360, 1280]) {
      await page.setViewportSize({width, height: 900});
      await fitsInWidth(page, `${name} at ${width} pixels`);
      await seesNoBarrier(page, `${name} at ${width} pixels`);
    }
    for (const [format, wide] of papers) {
      const due = whole.includes(rules) ? 4 : spills.includes(`${rules} on ${format}`) ? 3 : 2;
      assert.equal(await sides(page, format), due, `${name} on ${format}`);
      await page.emulateMedia({media: "print"});
      await page.setViewportSize({width: Math.floor((wide - margins) * pixels), height: 1000});
      await fitsInWidth(page, `${name} on ${format}`);
      const least = {line: 17 * pixels, high: 3.2 * pixels, box: 2 * pixels};
      assert.deepEqual(await page.evaluate(hardToFillIn, least), [], `${name} on ${format}`);
      await page.emulateMedia({media: null});
    }
    await closes(page);
  });
}
