// What a school would write for Node: school.js TABLE RECORDS; the same verdicts as heelrule's, one a line.
const fs = require("fs");
const readline = require("readline");

const { set, traits, rules, sections, grades, cautions } = JSON.parse(fs.readFileSync(process.argv[2], "utf8"));

const sum = (numbers) => numbers.reduce((a, b) => a + b, 0);
const settle = (number) => Math.round(number * 1e9) / 1e9;

// A number, the name of a level, or null where nothing was seen.
function readValue(answer, trait) {
  const text = answer.value || answer;
  if (text === "not seen") return null;
  return trait.unit ? parseFloat(text) : text;
}

// The values of each trait, one for each of its sides.
function readValues(found) {
  const values = {};
  for (const [name, trait] of Object.entries(traits)) {
    if (trait.difference) {
      const [a, b] = trait.difference.map((part) => values[part]);
      values[name] = a.map((x, i) => (x === null || b[i] === null ? null : settle(x - b[i])));
    } else {
      const answer = found[name] || "not seen";
      values[name] = trait.sides.map((side) => readValue(answer[side] || answer, trait));
    }
  }
  return values;
}

// 231.5 mm, 36°, 1 month, firm.
function inWords(value, unit) {
  if (!unit) return value;
  const space = unit === "°" ? "" : " ";
  return `${value}${space}${unit === "months" && value === 1 ? "month" : unit}`;
}

function findBand(bands, value) {
  if (typeof value === "string") return bands.find((band) => band.name === value);
  return bands.find((band) => band.below === null || value < band.below);
}

function judgeSide(rule, unit, side, value) {
  const band = findBand(rule.bands, value);
  const reading = { side, value: inWords(value, unit) };
  if (unit) Object.assign(reading, { number: value, unit });
  Object.assign(reading, { band: band.name, credit: band.earns / 100 });
  const distance = "limit" in band ? settle(Math.abs(value - band.limit)) : 0;
  if ("limit" in band) Object.assign(reading, { limit: band.limit, [band.distance]: distance });
  return { reading, band, distance };
}

// The worse side or the mean; a side that fails settles the worse one alone.
function joinSides(how, earned, isComplete) {
  if (how === "mean") return isComplete ? sum(earned) / earned.length : null;
  return isComplete || earned.includes(0) ? Math.min(...earned) : null;
}

function missingOf(trait, values) {
  return trait.needs.flatMap((name) =>
    traits[name].sides.map((side) => ({ trait: name, side })).filter((_, i) => values[name][i] === null));
}

// What a rule came to; the credit in percent is null where what was seen does not settle it.
function judge(rule, values) {
  const trait = traits[rule.reads];
  const found = values[rule.reads];
  const seen = trait.sides
    .map((side, i) => found[i] !== null && judgeSide(rule, trait.unit, side, found[i]))
    .filter(Boolean);
  const credit = joinSides(rule.sides, seen.map((one) => one.band.earns), seen.length === found.length);
  return { rule, trait, seen, credit, missing: credit === null ? missingOf(trait, values) : [], gain: 0 };
}

// What to look at, each trait once, with its side where the other one was seen.
function questions(missing) {
  const sides = new Map();
  for (const { trait, side } of missing) sides.set(trait, (sides.get(trait) || new Set()).add(side));
  return [...sides].map(([name, lacking]) => {
    const { title, sides: all } = traits[name];
    return lacking.size === all.length ? title : `${title} (${[...lacking][0]})`;
  });
}

function decisiveOf([first, second]) {
  if (!second || first.band.earns < second.band.earns) return first;
  return second.band.earns < first.band.earns || second.distance > first.distance ? second : first;
}

function sentence({ trait, seen, credit, missing }) {
  if (credit === null) return `It needs: ${questions(missing).join("; ")}.`;
  if (!trait.unit) return "";
  const { reading, band, distance } = decisiveOf(seen);
  const isAlike = seen.length === 2 && seen[0].reading.value === seen[1].reading.value;
  const side = isAlike ? "both" : reading.side;
  const limit = "limit" in band ? inWords(band.limit, trait.unit) : "";
  const away = inWords(distance, trait.unit);
  if (band.say) {
    const slots = { side, value: reading.value, limit, short_by: away, over_by: away };
    return band.say.replace(/\{(\w+)\}/g, (_, slot) => slots[slot]);
  }
  const start = side && `${side[0].toUpperCase()}${side.slice(1)}: `;
  const end = limit && `, ${away} ${band.distance === "short_by" ? "short of" : "over"} ${limit}`;
  return `${start}${reading.value} is ${band.words}${end}.`;
}

function status(credit) {
  if (credit === null) return "not seen";
  return credit === 100 ? "pass" : credit === 0 ? "fail" : "part";
}

function finding(result, notes) {
  const { rule, trait, seen, credit, missing } = result;
  return {
    rule: rule.reads, title: trait.title, section: rule.section, reads: rule.reads,
    status: status(credit), weight: rule.weight,
    credit: credit === null ? null : credit / 100, gain: credit === null ? null : result.gain,
    must: "must" in rule, caps_at: credit === 0 && rule.must ? rule.must : null,
    readings: seen.map((one) => one.reading), missing,
    sentence: sentence(result), because: rule.because, source: rule.source,
    notes: trait.needs.filter((name) => name in notes).map((name) => notes[name]),
  };
}

// What was earned, the weight of what was seen, and that of what is open.
function sums(results) {
  const seen = results.filter((one) => one.credit !== null);
  const weight = sum(seen.map((one) => one.rule.weight));
  const earned = sum(seen.map((one) => one.rule.weight * one.credit));
  return [earned, weight, sum(results.map((one) => one.rule.weight)) - weight];
}

function score(results) {
  const [earned, seen, open] = sums(results);
  return {
    points: seen ? earned / seen : null,
    lowest: earned / (seen + open), highest: (earned + 100 * open) / (seen + open),
    weight_seen: seen, weight_open: open,
  };
}

function certainty(names, stands, isComplete) {
  const others = names.slice(0, -1);
  const last = names.at(-1);
  if (stands) return `The grade stands${isComplete ? ": all that counts was seen" : ", whatever was not seen"}.`;
  if (others.length === 0) {
    return `The grade is provisional: a must was not seen. Even so, it can only come out as ${last}.`;
  }
  return `The grade is provisional: with what was not seen it can still become ${others.join(", ")} or ${last}.`;
}

function capWords(byScore, capping) {
  if (capping.length === 0) return "";
  const musts = capping.map(({ rule, trait }) => `${trait.title} (at best ${rule.must})`);
  const failed = musts.length === 1 ? "a must failed" : "musts failed";
  return `The score alone would give ${byScore}, but ${failed}: ${musts.join("; ")}.`;
}

function giveGrade(results) {
  const [earned, seen, open] = sums(results);
  const reached = (points, weight) => grades.findIndex((grade) => points >= grade.from * weight);
  const names = grades.map((grade) => grade.name);
  const capOf = ({ rule }) => names.indexOf(rule.must);
  const musts = results.filter((one) => one.rule.must);
  const failed = musts.filter((one) => one.credit === 0);
  const unsettled = musts.filter((one) => one.credit === null);
  const byScore = reached(earned, seen);
  const given = Math.max(byScore, ...failed.map(capOf));
  const worst = Math.max(reached(earned, seen + open), ...failed.map(capOf), ...unsettled.map(capOf));
  const best = Math.max(reached(earned + 100 * open, seen + open), ...failed.map(capOf));
  const stands = worst === best && unsettled.length === 0;
  return {
    name: names[given], means: grades[given].means, stands,
    by_score_alone: names[byScore], worst_possible: names[worst], best_possible: names[best],
    certainty: certainty(names.slice(best, worst + 1), stands, open === 0),
    caps: capWords(names[byScore], failed.filter((one) => capOf(one) > byScore)),
  };
}

// The words of a kind of all rules that any side falls short of.
function said(results, kind) {
  return results
    .filter(({ rule, seen }) => rule[kind] && seen.some((one) => one.band.earns < 100))
    .map(({ rule, trait, gain }) => ({ rule: rule.reads, title: trait.title, words: rule[kind], gain }));
}

// Failed musts first, then what gains most.
function advice(results) {
  const isFailedMust = (one) => Boolean(one.rule.must) && one.credit === 0;
  const settled = results.filter((one) => one.credit !== null);
  return said(settled.sort((a, b) => isFailedMust(b) - isFailedMust(a) || b.gain - a.gain), "advice");
}

function wouldSettle(results, grade) {
  if (grade.stands) return [];
  const isOpen = grade.worst_possible !== grade.best_possible;
  const unsettled = results.filter((one) => one.credit === null && (isOpen || one.rule.must));
  unsettled.sort((a, b) => ("must" in b.rule) - ("must" in a.rule) || b.rule.weight - a.rule.weight);
  return questions(unsettled.flatMap((one) => one.missing));
}

function verdict({ inspection, found }) {
  const noted = Object.entries(found).filter(([, answer]) => answer.note);
  const notes = Object.fromEntries(noted.map(([name, answer]) => [name, answer.note]));
  const values = readValues(found);
  const results = rules.map((rule) => judge(rule, values));
  const whole = score(results);
  for (const one of results) {
    if (one.credit !== null) one.gain = (one.rule.weight * (100 - one.credit)) / whole.weight_seen;
  }
  const grade = giveGrade(results);
  const referrals = said(results, "referral");
  const advised = advice(results);
  const { date, observer, client, shoe } = inspection;
  return {
    format: "heelrule verdict", version: 1, rules: set,
    inspection: { rules: inspection.rules, date, observer, client, shoe: shoe.label, marked: "", note: "" },
    see_practitioner_first: referrals.length > 0, safety: [], referrals, grade, score: whole,
    sections: sections.map((section) => (
      { ...section, score: score(results.filter((one) => one.rule.section === section.name)) })),
    findings: results.map((one) => finding(one, notes)),
    cautions: said(results, "caution"),
    advice: referrals.length ? [] : advised, advice_held_back: referrals.length ? advised : [],
    would_settle: wouldSettle(results, grade), usual_cautions: cautions,
  };
}

const lines = readline.createInterface({ input: fs.createReadStream(process.argv[3]) });
lines.on("line", (line) => process.stdout.write(JSON.stringify(verdict(JSON.parse(line))) + "\n"));
