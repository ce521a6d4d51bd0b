// Graded pages in a real browser: on screens from 360 pixels, and on paper.
import assert from "node:assert/strict";
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {after, test} from "node:test";
import {browserFor, closes, fitsInWidth, isValid, openPage, seesNoBarrier, sides} from "./browser.mjs";
import {folderFor, heelrule, root} from "./command.mjs";

const browser = await browserFor(after);
const mostSheets = 7; // of an assessor's or student's page of an example; a client has one
const readers = ["assessor", "student", "client"];
const records = [
  ["everyday", "examples/office-worker/inspection.yaml"],
  ["child", "examples/child/inspection.yaml"],
  ["older-adult", "examples/older-adult/inspection.yaml"],
  ["examples/first-rule/toe-space.yaml", "examples/first-rule/inspection.yaml"],
].map(([rules, record]) => [rules.includes("/") ? join(root, rules) : rules, join(root, record)]);

function graded(folder, rules, record, ...options) {
  const path = join(folder, "page.html");
  heelrule("grade", rules, record, "--as", "html", "--to", path, "--replace", ...options);
  return path;
}

/** Fails if two texts of one picture lie on each other, or one leaves the page. */
async function picturesAreClear(page, where) {
  const faults = await page.evaluate(() => {
    const found = [];
    for (const picture of document.querySelectorAll("svg.picture")) {
      const texts = [...picture.querySelectorAll("text")]
        .map((text) => ({words: text.textContent, box: text.getBoundingClientRect()}));
      for (const [i, {words, box}] of texts.entries()) {
        if (box.left < -0.5 || box.right > document.documentElement.clientWidth + 0.5) {
          found.push(`${picture.querySelector("title").textContent}: "${words}" leaves the page`);
        }
        for (const other of texts.slice(i + 1)) {
          const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
          const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
          if (across > 1 && down > 3) {
            found.push(`${picture.querySelector("title").textContent}: "${words}" on "${other.words}"`);
          }
        }
      }
    }
    return found;
  });
  assert.deepEqual(faults, [], where);
}

/** Fails if two blocks of text lie on each other, or one is cut by what holds it. */
async function nothingIsCut(page, where) {
  const faults = await page.evaluate(() => {
    const found = [];
    const blocks = [...document.querySelectorAll("main p, main li, main h1, main h2, main h3, main td, main th")]
      .filter((block) => block.getClientRects().length > 0 && !block.closest("[class=unseen]") &&
        getComputedStyle(block.closest("thead") ?? block).clipPath === "none");
    for (const block of blocks) {
      if (block.scrollWidth > block.clientWidth + 1 && getComputedStyle(block).display !== "inline") {
        found.push(`cut: ${block.textContent.slice(0, 60)}`);
      }
    }
    const leaves = blocks.filter((block) => block.querySelector("p, li, td, th") === null);
    const boxes = leaves.flatMap((block) => [...block.getClientRects()].map((box) => ({block, box})))
      .sort((a, b) => a.box.top - b.box.top);
    for (const [i, {block, box}] of boxes.entries()) {
      for (const other of boxes.slice(i + 1)) {
        if (other.box.top >= box.bottom - 2) {
          break;
        }
        const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
        if (across > 2 && block !== other.block && !block.contains(other.block) && !other.block.contains(block)) {
          found.push(`${block.textContent.slice(0, 40)} | ${other.block.textContent.slice(0, 40)}`);
        }
      }
    }
    return found.slice(0, 5);
  });
  assert.deepEqual(faults, [], where);
}

/** Fails if something that is kept in one piece is higher than a sheet, for then it would be cut. */
async function fitsOnSheets(page, where) {
  // A4 and Letter leave 180 and 186 mm across and 247 mm down at the least, at 96 pixels an inch.
  await page.setViewportSize({width: Math.floor(180 / 25.4 * 96), height: 900});
  await page.emulateMedia({media: "print"});
  const high = await page.evaluate((most) => [...document.querySelectorAll("main *")]
    .filter((element) => getComputedStyle(element).breakInside === "avoid" &&
      element.getBoundingClientRect().height > most)
    .map((element) => `${element.className}: ${element.textContent.slice(0, 60)}`), 247 / 25.4 * 96);
  assert.deepEqual(high, [], where);
  await fitsInWidth(page, where);
  await picturesAreClear(page, where);
  await nothingIsCut(page, where);
  await page.emulateMedia({media: null});
}

/** Fails if anything of a page of that width is cut, lies on something else, or leaves the page. */
async function isWhole(page, width, name) {
  await page.setViewportSize({width, height: 900});
  const where = `${name} at ${width} pixels`;
  await fitsInWidth(page, where);
  await picturesAreClear(page, where);
  await nothingIsCut(page, where);
}

/**
 * Fails if a ruler shows, or tells those who do not see it, a reading that the words beside it do not have; or shows a
 * doubt where they name none, or none where they do. Gives how many rulers there were.
 */
async function rulersSayWhatWordsSay(page, where) {
  const {faults, count} = await page.evaluate(() => {
    const faults = [];
    const rulers = [...document.querySelectorAll("svg.ruler")];
    for (const ruler of rulers) {
      const finding = ruler.closest(".finding, tr");
      const read = finding.querySelector(".read")?.textContent ?? "";
      const told = ruler.querySelector("desc").textContent.match(/^Read: (.*?)\. On the ruler/)[1].split("; ")
        .filter((words) => !words.startsWith("earlier "));
      const drawn = [...ruler.querySelectorAll("text.notch-words")].map((text) => text.textContent);
      for (const words of [...told, ...drawn]) {
        if (!read.includes(words)) {
          faults.push(`${words} is not in "${read}"`);
        }
      }
      const named = finding.textContent.includes("(± ");
      if (named !== (ruler.querySelector(".notch.doubt") !== null)) {
        faults.push(`${finding.textContent.trim().slice(0, 60)}: ± ${named ? "in words alone" : "in the picture alone"}`);
      }
    }
    return {faults, count: rulers.length};
  });
  assert.deepEqual(faults, [], where);
  return count;
}

/** Fails if the bar of chances says anything that the words of its section do not, or does not fill its width. */
async function chancesAreThoseOfTheWords(page, where) {
  const bars = await page.evaluate(() => [...document.querySelectorAll("svg.chances")].map((bar) => ({
    wide: [...bar.querySelectorAll(".part")].reduce((sum, part) => sum + parseFloat(part.getAttribute("width")), 0),
    chosen: bar.querySelector("text.chosen").textContent.match(/(under |over )?[\d.]+ %/)[0],
    sentence: bar.closest(".sure").querySelector(".says").textContent,
  })));
  for (const {wide, chosen, sentence} of bars) {
    assert.ok(Math.abs(wide - 100) < 0.1, `${where}: ${wide} % of the bar`);
    assert.ok(sentence.includes(chosen), `${where}: ${chosen} in "${sentence}"`);
  }
}

for (const [rules, record] of records) {
  for (const reader of readers) {
    const name = `${record.split("/").at(-2)} for the ${reader}`;
    test(`${name}: whole at every width and on paper, open to all, and valid`, async (t) => {
      const path = graded(folderFor(t), rules, record, "--for", reader);
      isValid(path, name);
      const page = await openPage(browser, path);
      for (const width of [1280, 360]) {
        await isWhole(page, width, name);
      }
      await seesNoBarrier(page, name);
      const rulers = await rulersSayWhatWordsSay(page, name);
      assert.equal(rulers > 0, reader !== "client");
      await chancesAreThoseOfTheWords(page, name);
      await fitsOnSheets(page, `${name} on paper`);
      for (const format of ["A4", "Letter"]) {
        const count = await sides(page, format);
        if (reader === "client") {
          assert.equal(count, 1, `${name} on ${format}`);
        } else {
          assert.ok(count <= mostSheets, `${name} on ${format}: ${count} sheets`);
        }
      }
      await closes(page);
    });
  }
}

test("pages of several records stand together, with links that lead to them", async (t) => {
  const folder = folderFor(t);
  heelrule("grade", "everyday", join(root, "examples/office-worker/inspection.yaml"), "--as", "html",
    "--together", "--to", folder);
  const page = await openPage(browser, join(folder, "summary.html"));
  for (const width of [1280, 360]) {
    await isWhole(page, width, "summary");
  }
  await seesNoBarrier(page, "summary");
  await fitsOnSheets(page, "summary on paper");
  await page.getByRole("link", {name: "C-014"}).click();
  assert.equal(await page.locator("h1").textContent(), "A pair for every day");
  await page.context().close();
});

for (const reader of readers) {
  test(`a comparison of two dates for the ${reader} is whole at every width`, async (t) => {
    const path = graded(folderFor(t), "child", join(root, "examples/child/inspection.yaml"), "--for", reader,
      "--compare", join(root, "examples/child/earlier.yaml"));
    const page = await openPage(browser, path);
    const name = `comparison for the ${reader}`;
    for (const width of [1280, 360]) {
      await isWhole(page, width, name);
    }
    await seesNoBarrier(page, name);
    assert.equal(await rulersSayWhatWordsSay(page, name) > 0, reader !== "client");
    await fitsOnSheets(page, `${name} on paper`);
    if (reader === "client") {
      assert.equal(await sides(page, "A4"), 1);
    }
    await closes(page);
  });
}

test("the example of a school's own page is whole at every width", async (t) => {
  const page = await openPage(browser, graded(folderFor(t), "child", join(root, "examples/child/inspection.yaml"),
    "--template", join(root, "examples/own-page/page.mustache")));
  for (const width of [1280, 360]) {
    await isWhole(page, width, "own page");
  }
  await seesNoBarrier(page, "own page");
  await fitsOnSheets(page, "own page on paper");
  await closes(page);
});

/** Rules and a record with more to be careful about than a side of paper holds; each caution has its number in it. */
function muchToBeCarefulOf(folder, count) {
  const all = Array.from({length: count}, (_, i) => i);
  const words = "have the client look at the skin each evening and come back sooner than planned when it stays red or warm";
  const rules = join(folder, "house.yaml");
  writeFileSync(rules, [
    "title: A pair with many faults", "sections: {fit: {title: Fit}}", "safety:",
    ...all.slice(0, 9).map((i) => `  risk_${i}: {ask: Is sign ${i} there, per: client, referral: Sign ${i}; ${words}.}`),
    "traits:", ...all.map((i) => `  part_${i}: {ask: Does part ${i} hold, answer: yes or no}`),
    "rules:", ...all.map((i) => `  part_${i}: {section: fit, weight: 1, reads: part_${i}, because: It holds the foot.,
    source: common practice, caution: Caution ${i}; ${words}., advice: Mend part ${i}., levels: {yes: 100 %, no: 0}}`),
    "grades: {sound: {from: 60, means: Keep it.}, unfit: {from: 0, means: Leave this pair.}}",
    "cautions: {diagnosis: This is no diagnosis.}", ""].join("\n"));
  const record = join(folder, "record.json");
  writeFileSync(record, JSON.stringify({
    inspection: {rules: "house", client: "C-090"},
    safety: Object.fromEntries(all.slice(0, 9).map((i) => [`risk_${i}`, "yes"])),
    found: Object.fromEntries(all.map((i) => [`part_${i}`, "no"])),
  }));
  return [rules, record];
}

test("what is too much for one side goes on overleaf: between cautions, and after all that comes first", async (t) => {
  const folder = folderFor(t);
  const count = 60;
  const page = await openPage(browser, graded(folder, ...muchToBeCarefulOf(folder, count), "--for", "client"));
  assert.equal(await page.locator(".last li").count(), count + 2);
  assert.equal(await sides(page, "A4"), 2);
  await page.emulateMedia({media: "print"});
  await page.setViewportSize({width: Math.floor(184 / 25.4 * 96), height: 900});
  const {before, cut} = await page.evaluate(() => ({
    before: document.querySelector(".last").getBoundingClientRect().top,
    cut: [...document.querySelectorAll(".alarm li, .last li")]
      .filter((item) => getComputedStyle(item).breakInside !== "avoid").length,
  }));
  assert.ok(before < 275 / 25.4 * 96, "the cautions begin on the first side");
  assert.equal(cut, 0);
  await closes(page);
});

const hostile = "</style></title><script>document.title='taken'</script><img src=x onerror=alert(1)>\"'&{{title}}";

test("hostile text stays text, for every reader", async (t) => {
  const folder = folderFor(t);
  const record = join(folder, "record.json");
  const tower = "Z" + "\u0301".repeat(2000);
  writeFileSync(record, JSON.stringify({
    inspection: {rules: "everyday", client: hostile, observer: hostile, date: "2026-10-03", note: tower,
      shoe: {label: hostile}},
    found: {
      foot_length: {left: {value: "243 mm", note: hostile}, right: "246 mm"},
      insole_length: "250 mm",
      toes_lie: {"not seen": hostile},
      pressure_marks: {left: {value: "fading", note: tower}, right: "none"},
    },
  }));
  for (const reader of readers) {
    const page = await openPage(browser, graded(folder, "everyday", record, "--for", reader));
    page.on("dialog", () => page.faults.push("a dialog was opened"));
    assert.equal(await page.locator("script, img").count(), 0);
    assert.match(await page.title(), /<script>/);
    assert.ok((await page.locator("main").innerText()).includes("<img src=x onerror=alert(1)>"), reader);
    for (const width of [360, 1280]) {
      await page.setViewportSize({width, height: 900});
      await fitsInWidth(page, `hostile text for the ${reader} at ${width}`);
    }
    await closes(page);
  }
});

test("no template and no style of a school covers a referral or a caution", async (t) => {
  const folder = folderFor(t);
  const template = join(folder, "school.mustache");
  const record = join(root, "examples/older-adult/inspection.yaml");
  for (const style of [
    ".school { position: fixed; inset: 0; background: white; z-index: 99 }",
    ".school { margin: -9000px 0; background: white; height: 30000px; position: relative }",
    ":scope { position: absolute; top: -3000px; bottom: -3000px; left: 0; right: 0; background: red }",
    "main, .first, .last, body, html { display: none !important; visibility: hidden !important; color: white }",
    "p { box-shadow: 0 0 0 9999px white; outline: 9999px solid white; transform: scale(99) }",
  ]) {
    writeFileSync(template, `<style>${style}</style><p>Our own words</p>`);
    const page = await openPage(browser, graded(folder, "older-adult", record, "--template", template));
    for (const part of [".first .alarm li", ".last li"]) {
      for (const item of await page.locator(part).all()) {
        await item.scrollIntoViewIfNeeded();
        const isSeen = await item.evaluate((element) => {
          const box = element.getClientRects()[0];
          const there = document.elementFromPoint(box.left + Math.min(box.width / 2, 40), box.top + Math.min(box.height / 2, 8));
          const ink = getComputedStyle(element);
          return element.contains(there) && ink.color !== "rgb(255, 255, 255)" && parseFloat(ink.fontSize) >= 11;
        });
        assert.ok(isSeen, `${part} under ${style}`);
      }
    }
    await closes(page);
  }
});
