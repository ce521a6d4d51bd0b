// Makes the pictures of the README:
//     bash tests/browser/run build/release/cli/heelrule build/browser picture.mjs
import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {after} from "node:test";
import {browserFor, openPage} from "./browser.mjs";
import {heelrule, root} from "./command.mjs";

const browser = await browserFor(after);
const folder = mkdtempSync(join(tmpdir(), "heelrule-"));

// A graded page from `first` on, or from its head.
async function take(rules, client, reader, name, viewport, first = "body") {
  const path = join(folder, `${reader}.html`);
  heelrule("grade", rules, join(root, "examples", client, "inspection.yaml"), "--as", "html", "--for", reader, "--to", path);
  const page = await openPage(browser, path, {viewport});
  await page.locator(first).first().evaluate((element) => element.scrollIntoView());
  await page.screenshot({path: join(root, "examples", name)});
  await page.context().close();
}

await take("older-adult", "older-adult", "assessor", "assessor-page.png", {width: 900, height: 1420}, ".heading");
await take("child", "child", "client", "client-page.png", {width: 840, height: 1060});

const sheet = join(folder, "sheet.html");
const record = join(root, "examples/child/inspection.yaml");
writeFileSync(sheet, heelrule("sheet", "child", "--as", "page", "--with", record));
const page = await openPage(browser, sheet, {viewport: {width: 1180, height: 820}});
await page.locator("body.running").waitFor();
await page.locator("#q-foot_length-left-0").fill("17");
await page.waitForTimeout(500);
await page.evaluate(() => document.querySelector("#section-feet_standing").scrollIntoView());
await page.screenshot({path: join(root, "examples", "recording-page.png")});
await page.context().close();
rmSync(folder, {recursive: true});
