// A browser for tests of pages, which lets nothing out.
import assert from "node:assert/strict";
import {readFileSync} from "node:fs";
import {createRequire} from "node:module";
import {pathToFileURL} from "node:url";
import {HtmlValidate} from "html-validate";
import {chromium} from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** A browser for the tests of one file; it is closed after them. */
export async function browserFor(after) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM,
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking",
      "--disable-component-update", "--disable-sync", "--no-first-run"],
  });
  after(() => browser.close());
  return browser;
}

/**
 * Opens a page made by heelrule, with the network switched off. Gives the page; `page.left` lists the
 * requests for anything but the file itself, and `page.faults` what its scripts complained of.
 */
export async function openPage(browser, path, options = {}) {
  const context = options.context ?? await browser.newContext({
    viewport: {width: 1280, height: 900}, offline: true, locale: "en-GB", acceptDownloads: true, ...options,
  });
  context.setDefaultTimeout(120_000); // a machine that does other work too
  const page = await context.newPage();
  const address = pathToFileURL(path).href;
  page.left = [];
  page.faults = [];
  page.on("request", (request) => {
    if (request.url() !== address && !/^(blob|data):/.test(request.url())) {
      page.left.push(request.url());
    }
  });
  page.on("console", (message) => {
    if (message.type() === "error") {
      page.faults.push(message.text());
    }
  });
  page.on("pageerror", (fault) => page.faults.push(String(fault)));
  await page.goto(address);
  return page;
}

/** Closes a page. Fails if it asked for anything, or complained. */
export async function closes(page) {
  assert.deepEqual(page.left, []);
  assert.deepEqual(page.faults, []);
  await page.context().close();
}

// One report is one file, so how it is written is a matter of ours, and only what it is of HTML.
const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y"],
  rules: {"no-inline-style": "error", "void-style": "off"},
});

/** Fails if the file is no valid HTML, or holds a script. */
export function isValid(path, where) {
  const html = readFileSync(path, "utf8");
  assert.doesNotMatch(html, /<script/, where);
  assert.deepEqual(validator.validateStringSync(html).results.flatMap((result) => result.messages.map((fault) =>
    `${fault.line}:${fault.column} ${fault.ruleId}: ${fault.message}`)).slice(0, 5), [], where);
}

/** How many sides of paper a page is printed on. */
export async function sides(page, format) {
  const pdf = (await page.pdf({format, preferCSSPageSize: false, printBackground: false})).toString("latin1");
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g).length;
}

/** Fails if axe-core finds anything at all to object to. */
export async function seesNoBarrier(page, where) {
  // What stands still covers what is scrolled under it, and would be blamed for that.
  await page.evaluate(() => {
    for (const one of document.querySelectorAll(".top, #panel")) {
      one.style.position = "static";
    }
  });
  await page.evaluate(axe);
  const {violations} = await page.evaluate(() => globalThis.axe.run(document, {
    runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  }));
  assert.deepEqual(violations.map((one) =>
    `${where}: ${one.id}: ${one.nodes.slice(0, 3).map((node) => `${node.target} ${node.failureSummary}`).join(" | ")}`), []);
}

/** Fails if anything reaches beyond the edge of the page. */
export async function fitsInWidth(page, where) {
  const found = await page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const hidden = (element) => element.closest(".unseen, [hidden], datalist, #paper") !== null ||
      getComputedStyle(element).clipPath !== "none";
    const beyond = [...document.body.querySelectorAll("*")].filter((element) => {
      const box = element.getBoundingClientRect();
      return box.width > 0 && !hidden(element) && !element.closest("svg") &&
        (box.right > wide + 0.5 || box.left < -0.5);
    });
    return {
      scrolls: document.documentElement.scrollWidth - wide,
      beyond: beyond.slice(0, 5).map((element) => `${element.tagName}.${element.className} ${element.id}`),
    };
  });
  assert.deepEqual(found, {scrolls: 0, beyond: []}, where);
}
