// Filling in a recording sheet as a person does: by its fields, with a keyboard, a mouse or a finger.
import {readFileSync} from "node:fs";

const fieldId = (...parts) => `[id="q-${parts.filter((part) => part !== "").join("-")}"]`;

/** What a page asks, as its engine lays it out. */
export async function questionsOf(page) {
  await page.locator("body.running").waitFor();
  return page.evaluate(() => [...document.querySelectorAll(".question")].map((one) => one.id.slice(2)));
}

async function fillReadings(page, name, side, value) {
  const texts = Array.isArray(value) ? value : [value];
  const measured = await page.locator(`${fieldId(name)} .measure .unit`).count();
  const unit = measured && /[^0-9.\s-][^0-9]*$/.exec(texts.at(-1))?.[0].trim();
  for (const [index, text] of texts.entries()) {
    if (!await page.locator(fieldId(name, side, index)).count()) {
      await page.locator(fieldId(name, "again")).click();
    }
    const bare = unit && text.endsWith(unit) ? text.slice(0, -unit.length).trim() : text;
    await page.locator(fieldId(name, side, index)).fill(bare);
  }
  const units = page.locator(fieldId(name, "unit"));
  if (unit && await units.count()) {
    await units.selectOption(unit);
  }
}

async function fillFibres(page, name, side, value) {
  for (const [index, [fibre, share]] of Object.entries(value).entries()) {
    if (!await page.locator(fieldId(name, side, index, "fibre")).count()) {
      await page.locator(fieldId(name, "again")).click();
    }
    await page.locator(fieldId(name, side, index, "fibre")).fill(fibre);
    await page.locator(fieldId(name, side, index, "share")).fill(share.replace("%", "").trim());
  }
}

async function fillValue(page, name, side, value) {
  const ticks = typeof value === "string"
    ? page.locator(`input[type=radio]${fieldId(name, side, value.replaceAll(" ", "_"))}`) : null;
  if (ticks && await ticks.count()) {
    await ticks.check();
  } else if (typeof value === "object" && !Array.isArray(value)) {
    await fillFibres(page, name, side, value);
  } else {
    await fillReadings(page, name, side, value);
  }
}

/** Gives one answer of a record as it is written there. */
export async function fillAnswer(page, name, side, answer) {
  const whole = typeof answer === "object" && !Array.isArray(answer);
  if (answer === "not seen" || (whole && "not seen" in answer)) {
    await page.locator(fieldId(name, "unseen", side)).check();
    if (whole && answer["not seen"]) {
      await page.locator(fieldId(name, side, "reason")).fill(answer["not seen"]);
    }
  } else {
    await fillValue(page, name, side, whole && "value" in answer ? answer.value : answer);
  }
  if (whole && answer.note) {
    const note = page.locator(fieldId(name, side, "note"));
    if (!await note.count()) {
      await page.locator(fieldId(name, "noting")).click();
    }
    await note.fill(answer.note);
  }
}

/**
 * Gives all answers of a record. Gives the record of what was typed: a value that the record has once for both
 * sides was typed on each, and so is two readings; and the sheet does not ask how much a reading is in doubt.
 */
export async function fillSheet(page, record) {
  const typed = structuredClone(record);
  const {client, observer, date, shoe, note} = record.inspection;
  const head = {client, observer, date, label: shoe?.label, marked: shoe?.marked, note};
  for (const [key, text] of Object.entries(head)) {
    if (text) {
      await page.locator(`#head-${key}`).fill(text);
    }
  }
  for (const [name, answer] of Object.entries({...record.safety, ...record.found})) {
    const sided = await page.locator(`${fieldId(name)}.sided`).count();
    const into = typed[name in record.found ? "found" : "safety"];
    delete into[name].doubt;
    const bySide = typeof answer === "object" && ("left" in answer || "right" in answer);
    if (sided && !bySide) {
      into[name] = {left: into[name], right: into[name]};
    }
    for (const side of sided ? ["left", "right"] : [""]) {
      const one = bySide ? answer[side] : answer;
      if (one !== undefined) {
        await fillAnswer(page, name, side, one);
      }
    }
  }
  return typed;
}

/** Saves the record; gives its name and its text. */
export async function saveSheet(page) {
  const waiting = page.waitForEvent("download");
  await page.locator("#save").click();
  const download = await waiting;
  return {name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8")};
}
