// The recording sheet in a real browser.
import assert from "node:assert/strict";
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import {after, test} from "node:test";
import {browserFor, closes, fitsInWidth, openPage, seesNoBarrier, sides} from "./browser.mjs";
import {examples, folderFor, heelrule, pageOf, recordIn, root, shipped} from "./command.mjs";
import {fillAnswer, fillSheet, questionsOf, saveSheet} from "./sheet.mjs";

const browser = await browserFor(after);

function verdictOf(folder, rules, text, ...options) {
  const path = join(folder, "record.json");
  writeFileSync(path, text);
  return heelrule("grade", rules, path, "--as", "json", ...options);
}

async function settled(page) {
  await page.locator("#head-date").dispatchEvent("change");
  await page.waitForTimeout(400);
}

for (const [rules, path] of examples.filter(([rules]) => rules !== "child")) {
  test(`${path} typed into the page is saved as the same record, with the same verdict`, async (t) => {
    const folder = folderFor(t);
    const page = await openPage(browser, pageOf(folder, rules));
    const typed = await fillSheet(page, recordIn(path));
    await settled(page);
    assert.deepEqual(await page.locator(".fault:not(:empty)").allTextContents(), []);
    const {name, text} = await saveSheet(page);
    const {client, date} = recordIn(path).inspection;
    assert.equal(name, `${client}-${date}.json`);
    const verdict = verdictOf(folder, rules, text);
    assert.equal(verdict, verdictOf(folder, rules, JSON.stringify(typed)));
    assert.equal(verdictOf(folder, rules, text, "--exactly"),
      heelrule("grade", rules, join(root, path), "--as", "json", "--exactly"));
    assert.equal(await page.locator("#verdict .grade .name").textContent(), JSON.parse(verdict).grade.name);
    await page.locator("#file").setInputFiles({name, mimeType: "application/json", buffer: Buffer.from(text)});
    await page.getByText(`${name} is open.`).waitFor();
    assert.equal((await saveSheet(page)).text, text);
    await closes(page);
  });
}

test("what was typed is offered again after a reload and after a crash, and is gone once saved", async (t) => {
  const path = pageOf(folderFor(t), "everyday");
  let page = await openPage(browser, path);
  await page.locator("#head-client").fill("C-099");
  await page.locator("#q-foot_length-left-0").pressSequentially("243");
  await fillAnswer(page, "heel_counter", "left", "firm");
  await page.reload();
  assert.match(await page.locator("#kept").textContent(), /C-099: 2 answers/);
  assert.equal(await page.locator("#q-foot_length-left-0").inputValue(), "");
  const context = page.context();
  await page.goto("chrome://crash").catch(() => {});
  page = await openPage(browser, path, {context});
  await page.getByRole("button", {name: "Go on"}).click();
  assert.equal(await page.locator("#q-foot_length-left-0").inputValue(), "243");
  assert.ok(await page.locator("#q-heel_counter-left-firm").isChecked());
  assert.equal(await page.locator("#head-client").inputValue(), "C-099");
  await page.locator("#q-foot_length-right-0").fill("246");
  const {text} = await saveSheet(page);
  assert.deepEqual(JSON.parse(text).found, {
    foot_length: {left: "243 mm", right: "246 mm"}, heel_counter: {left: "firm"},
  });
  await page.reload();
  assert.ok(await page.locator("#kept").isHidden());
  await closes(page);
});

test("answers that were left behind can be thrown away, with a second thought", async (t) => {
  const path = pageOf(folderFor(t), "everyday");
  const page = await openPage(browser, path);
  await page.locator("#head-client").fill("C-098");
  await page.reload();
  await page.getByRole("button", {name: "Throw away"}).click();
  assert.ok(await page.locator("#kept").isVisible());
  await page.getByRole("button", {name: "Really throw away?"}).click();
  assert.ok(await page.locator("#kept").isHidden());
  await page.reload();
  assert.ok(await page.locator("#kept").isHidden());
  await closes(page);
});

test("a saved record is opened again, field by field, and another one is refused at its place", async (t) => {
  const folder = folderFor(t);
  const page = await openPage(browser, pageOf(folder, "everyday"));
  const record = recordIn("examples/office-worker/inspection.yaml");
  record.found.tread_depth = {left: {"not seen": "sole was wet", note: "look again"}, right: "not seen"};
  record.found.foot_width = {left: {value: "141 mm", confirmed: "yes", doubt: "2 mm"}, right: "95 mm"};
  await page.locator("#file").setInputFiles({
    name: "C-014.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(record)),
  });
  await page.getByText("C-014.json is open.").waitFor();
  assert.equal(await page.locator("#q-tread_depth-left-reason").inputValue(), "sole was wet");
  assert.equal(await page.locator("#q-tread_depth-left-note").inputValue(), "look again");
  assert.equal(await page.locator("#q-foot_length-right-2").inputValue(), "246");
  const {text} = await saveSheet(page);
  assert.equal(verdictOf(folder, "everyday", text), verdictOf(folder, "everyday", JSON.stringify(record)));
  assert.deepEqual(JSON.parse(text).found.foot_width, record.found.foot_width);
  await page.locator("#file").setInputFiles({
    name: "other.json", mimeType: "application/json", buffer: Buffer.from('{"inspection": {},\n "found": {"wings": "2"}}'),
  });
  await page.locator("#open-faults").waitFor();
  assert.match(await page.locator("#open-faults").textContent(),
    /other\.json cannot be opened.*Line 2, column 13: everyday asks for no trait wings/);
  assert.equal(await page.locator("#q-foot_length-right-2").inputValue(), "246");
  await page.locator("#file").setInputFiles({
    name: "pair.yaml", mimeType: "application/yaml", buffer: Buffer.from("inspection: {rules: everyday}"),
  });
  await page.getByText("heelrule sheet everyday --as page --with pair.yaml >sheet.html").waitFor();
  await closes(page);
});

test("a page made with a record in YAML begins with its answers, and saves the same record", async (t) => {
  const folder = folderFor(t);
  const path = "examples/older-adult/inspection.yaml";
  const page = await openPage(browser, pageOf(folder, "older-adult", "--with", join(root, path)));
  await page.locator("body.running").waitFor();
  assert.ok(await page.locator("#kept").isHidden());
  assert.equal(await page.locator("#of-rules").textContent(), "Rules older-adult, edition 2026-11.");
  const {text} = await saveSheet(page);
  assert.equal(verdictOf(folder, "older-adult", text), heelrule("grade", "older-adult", join(root, path), "--as", "json"));
  await closes(page);
});

test("a reading is checked as it is typed, and nothing faulty is saved", async (t) => {
  const page = await openPage(browser, pageOf(folderFor(t), "everyday"));
  const field = page.locator("#q-foot_length-left-0");
  await field.pressSequentially("24");
  await page.locator("#q-foot_length-left-fault").getByText("24 mm is outside what is plausible").waitFor();
  assert.equal(await field.getAttribute("aria-invalid"), "true");
  assert.match(await page.locator("#said").textContent(), /24 mm is outside/);
  await page.locator("#save").click();
  assert.match(await page.locator("#state").textContent(), /^1 answer to look at/);
  assert.equal(await page.evaluate(() => document.activeElement.id), "q-foot_length-left-0");
  await page.keyboard.press("End");
  await page.keyboard.type("3");
  await page.waitForFunction(() => document.querySelector("#q-foot_length-left-fault").textContent === "");
  await field.fill("9.6 in");
  await settled(page);
  assert.equal(await page.locator("#q-foot_length-left-fault").textContent(), "");
  await field.fill("400");
  await settled(page);
  await page.locator("#q-foot_length-left-confirmed").check();
  await settled(page);
  assert.equal(await page.locator("#q-foot_length-left-fault").textContent(), "");
  const {text} = await saveSheet(page);
  assert.deepEqual(JSON.parse(text).found.foot_length, {left: {value: "400 mm", confirmed: "yes"}});
  await closes(page);
});

test("the keyboard alone suffices", async (t) => {
  const page = await openPage(browser, pageOf(folderFor(t), "everyday"));
  await page.locator("#head-client").focus();
  await page.keyboard.type("C-014");
  for (const text of ["S-07", ""]) {
    await page.keyboard.press("Enter");
    await page.keyboard.type(text);
  }
  await page.locator("#q-numb_feet-yes").focus();
  await page.keyboard.press("ArrowDown");
  assert.ok(await page.locator("#q-numb_feet-no").isChecked());
  await page.keyboard.press("Enter");
  assert.notEqual(await page.evaluate(() => document.activeElement.name), "q-numb_feet");
  await page.locator("#q-foot_length-left-0").focus();
  await page.keyboard.type("243");
  await page.keyboard.press("Enter");
  await page.keyboard.type("246");
  assert.equal(await page.locator("#q-foot_length-right-0").inputValue(), "246");
  await page.locator("#q-foot_length-again").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.type("244");
  assert.equal(await page.locator("#q-foot_length-left-1").inputValue(), "244");
  // Every field that can be used can be reached.
  const unreachable = await page.evaluate(() => [...document.querySelectorAll("#sheet input, #sheet select, #sheet button, #sheet summary")]
    .filter((one) => one.checkVisibility() && !one.disabled && one.tabIndex < 0 && !one.classList.contains("told"))
    .map((one) => one.id));
  assert.deepEqual(unreachable, []);
  await closes(page);
});

test("a finger alone suffices, and one tap answers both sides", async (t) => {
  const page = await openPage(browser, pageOf(folderFor(t), "everyday"),
    {viewport: {width: 360, height: 740}, hasTouch: true, isMobile: true});
  await page.locator("#q-heel_counter").getByRole("button", {name: "Both: firm"}).tap();
  assert.ok(await page.locator("#q-heel_counter-left-firm").isChecked());
  assert.ok(await page.locator("#q-heel_counter-right-firm").isChecked());
  await page.locator("#brief-button").tap();
  assert.ok(await page.locator("#verdict .grade").isVisible());
  const small = await page.evaluate(() => [...document.querySelectorAll("#sheet button, #sheet select, .dot, .level, .check, summary, #sections a")]
    .filter((one) => one.checkVisibility()).map((one) => [one.className || one.id, one.getBoundingClientRect()])
    .filter(([, box]) => box.height < 24 || box.width < 24).map(([name]) => name));
  assert.deepEqual(small, []); // WCAG 2.2, 2.5.8: 24 by 24
  await closes(page);
});

async function isWhole(page, where) {
  for (const width of [360, 768, 1280, 1920]) {
    await page.setViewportSize({width, height: 900});
    await fitsInWidth(page, `${where} at ${width}`);
  }
}

test("no barrier and no overflow from 360 to 1920 pixels, blank, in mid work, and with everything told", async (t) => {
  const page = await openPage(browser, pageOf(folderFor(t), "child"));
  await page.locator("body.running").waitFor();
  await isWhole(page, "blank");
  await page.locator("#q-foot_length-left-0").fill("24");
  await page.locator("#q-numb_feet-yes").check();
  await page.locator("#q-foot_width-unseen-left").check();
  await page.locator("#q-foot_width-noting").click();
  await page.locator("#q-foot_length-again").click();
  await settled(page);
  await page.evaluate(() => {
    document.querySelectorAll("details").forEach((one) => {
      one.open = true;
    });
    document.querySelector("#panel").classList.add("open");
  });
  await isWhole(page, "in mid work");
  await seesNoBarrier(page, "in mid work at 1920");
  await page.setViewportSize({width: 360, height: 900});
  await seesNoBarrier(page, "in mid work at 360");
  await page.reload();
  await page.locator("#kept li").waitFor();
  await isWhole(page, "kept");
  await seesNoBarrier(page, "kept at 1920");
  await closes(page);
});

test("a blind sheet tells of referrals and of nothing else", async (t) => {
  const page = await openPage(browser, pageOf(folderFor(t), "everyday", "--blind"));
  await fillAnswer(page, "foot_length", "left", "243 mm");
  await fillAnswer(page, "insole_length", "left", "230 mm");
  await settled(page);
  assert.equal((await page.locator("#verdict").textContent()).trim(), "");
  assert.ok(await page.locator("#panel").isHidden());
  await page.locator("#q-foot_length-right-0").fill("24");
  await settled(page);
  assert.match(await page.locator("#q-foot_length-right-fault").textContent(), /outside what is plausible/);
  await page.locator("#q-numb_feet-yes").check();
  assert.match(await page.locator("#panel").textContent(), /See a licensed practitioner first/);
  assert.ok(await page.locator("#verdict .alarm").isVisible());
  await seesNoBarrier(page, "blind");
  await closes(page);
});

test("every rule set that ships makes a page that asks for all that it records", async (t) => {
  const folder = folderFor(t);
  for (const rules of shipped) {
    const page = await openPage(browser, pageOf(folder, rules));
    const asked = await questionsOf(page);
    assert.ok(asked.length > 3, rules);
    assert.equal(new Set(asked).size, asked.length);
    await closes(page);
  }
});

const bilingual = `title: {en: "House </script><img src=x onerror=alert(1)>", es: Casa}
languages: [en, es]
sections: {fit: {title: {en: "Fit & <b>more</b>", es: Ajuste}}}
traits:
  gap: {ask: {en: "Gap <script>alert(1)</script>", es: Espacio}, measure: mm, per: foot}
rules:
  space:
    section: fit
    weight: 1
    reads: gap
    bands: [{name: short, below: 6 mm, earns: 0}, {name: right, earns: 100 %}]
    because: Toes need room.
    source: common practice
grades: {sound: {from: 50, means: Keep it.}, unfit: {from: 0, means: Leave it.}}
`;

test("a trainer's own rules get their own page, in all their languages, and hostile words stay words", async (t) => {
  const folder = folderFor(t);
  const rules = join(folder, "house.yaml");
  writeFileSync(rules, bilingual);
  const path = join(folder, "house.html");
  writeFileSync(path, heelrule("sheet", rules, "--as", "page"));
  const page = await openPage(browser, path);
  assert.equal(await page.locator("h1").first().textContent(), "House </script><img src=x onerror=alert(1)>");
  assert.equal(await page.locator("#q-gap legend").textContent(), "Gap <script>alert(1)</script>");
  await page.locator("#q-gap-left-0").fill("12");
  await page.locator("#head-client").fill("<img src=x onerror=alert(1)>");
  await page.locator("#language").selectOption("es");
  assert.equal(await page.locator("h1").first().textContent(), "Casa");
  assert.equal(await page.locator("#q-gap legend").textContent(), "Espacio");
  assert.equal(await page.locator("#q-gap-left-0").inputValue(), "12");
  assert.equal(await page.locator("html").getAttribute("lang"), "es");
  await page.reload();
  assert.match(await page.locator("#kept").textContent(), /<img src=x onerror=alert\(1\)>/);
  await closes(page);
});

test("printed, the sheet is a filled form of a few pages", async (t) => {
  const page = await openPage(browser,
    pageOf(folderFor(t), "everyday", "--with", join(root, "examples/office-worker/inspection.yaml")));
  await page.locator("body.running").waitFor();
  assert.equal(await sides(page, "A4"), 2);
  const paper = await page.locator("#paper").textContent();
  assert.match(paper, /C-014/);
  assert.match(paper, /246, 247, 246 mm/);
  assert.match(paper, /cotton 80 %/);
  assert.doesNotMatch(paper, /licensed practitioner first/);
  await page.locator("#q-numb_feet-yes").check();
  await page.pdf({preferCSSPageSize: false, format: "Letter"});
  assert.match(await page.locator("#paper .alarm").textContent(), /See a licensed practitioner first/);
  await closes(page);
});

test("nothing but the page's own script runs", async (t) => {
  const page = await openPage(browser, pageOf(folderFor(t), "sole"));
  const ran = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "globalThis.strange = true";
    document.body.append(script);
    return globalThis.strange === true;
  });
  assert.equal(ran, false);
  assert.equal(page.faults.length, 1); // the browser says that it was refused
  page.faults.length = 0;
  await closes(page);
});
