// Makes the pictures of the README: node picture.mjs, in the folder that `run` has set up.
// HEELRULE, HEELRULE_ROOT and CHROMIUM are as for the tests.
import {mkdtempSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {browserFor, openPage} from "./browser.mjs";
import {heelrule, root} from "./command.mjs";

const closing = [];
const browser = await browserFor((close) => closing.push(close));
const folder = mkdtempSync(join(tmpdir(), "heelrule-"));
const record = join(root, "examples/child/inspection.yaml");

async function take(reader, name, size, first) {
  const path = join(folder, `${reader}.html`);
  heelrule("grade", "child", record, "--as", "html", "--for", reader, "--to", path, "--replace");
  const page = await openPage(browser, path, {viewport: size, deviceScaleFactor: 1});
  if (first) {
    await page.locator(first).first().scrollIntoViewIfNeeded();
    await page.evaluate((where) => document.querySelector(where).scrollIntoView({block: "start"}), first);
  }
  await page.screenshot({path: join(root, "examples", name)});
  await page.context().close();
}

await take("assessor", "assessor-page.png", {width: 900, height: 1000}, ".groups, .findings");
await take("client", "client-page.png", {width: 900, height: 1100});
const sheet = join(folder, "sheet.html");
writeFileSync(sheet, heelrule("sheet", "child", "--as", "page", "--with", record));
const page = await openPage(browser, sheet, {viewport: {width: 1180, height: 820}});
await page.locator("body.running").waitFor();
await page.locator("#q-foot_length-left-0").fill("17");
await page.waitForTimeout(500);
await page.evaluate(() => document.querySelector("#section-feet_standing").scrollIntoView());
await page.screenshot({path: join(root, "examples", "recording-page.png")});
await page.context().close();
for (const close of closing) {
  await close();
}
