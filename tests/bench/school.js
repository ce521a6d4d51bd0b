// What a school would write for Node: school.js TABLE RECORDS; one verdict a line, with its words.
const fs = require("fs");
const readline = require("readline");

const table = JSON.parse(fs.readFileSync(process.argv[2], "utf8"));

// A number, the index of a level, or null where nothing was seen.
function readValue(text, name) {
  if (typeof text === "object") text = text.value;
  if (text === "not seen") return null;
  if (table.levels[name]) return table.levels[name].indexOf(text);
  if (text === "yes" || text === "no") return text === "yes" ? 1 : 0;
  return parseFloat(text);
}

function readRecord(record) {
  const values = {};
  for (const [name, text] of Object.entries(record.found)) {
    if (typeof text === "object" && "left" in text) {
      values[name] = [readValue(text.left, name), readValue(text.right, name)];
    } else {
      const value = readValue(text, name);
      values[name] = table.two_sided[name] ? [value, value] : [value];
    }
  }
  for (const [name, , a, b] of table.derived) {
    values[name] = [0, 1].map((side) => {
      const x = (values[a] || [null, null])[side];
      const y = (values[b] || [null, null])[side];
      return x === null || y === null ? null : Math.round((x - y) * 1e9) / 1e9;
    });
  }
  return values;
}

// The band of a value and its credit in percent.
function judgeValue(rule, value) {
  if (!Array.isArray(rule.credit)) {
    const name = Object.keys(rule.credit)[value];
    return { name, earns: rule.credit[name] };
  }
  return rule.credit.find((band) => band.below === null || value < band.below);
}

function sentence(rule, side, value, band) {
  let words = `${side}${value} ${table.units[rule.reads]} is ${band.name}, which earns ${band.earns} %`;
  if (band.earns < 100) words += `; ${rule.because}`;
  return words + ".";
}

function find(rule, given) {
  const values = given || (table.two_sided[rule.reads] ? [null, null] : [null]);
  const seen = values.map((value) => (value === null ? null : judgeValue(rule, value)));
  const credits = seen.filter((one) => one !== null).map((one) => one.earns);
  const missing = credits.length < values.length;
  const least = Math.min(...credits);
  if (credits.length === 0 || (missing && (rule.sides === "mean" || least > 0))) {
    return { rule: rule.reads, status: "not seen" };
  }
  const credit = rule.sides === "mean" ? credits.reduce((a, b) => a + b) / credits.length : least;
  const at = seen.findIndex((one) => one !== null && one.earns === least);
  const alike = values.length === 2 && values[0] === values[1];
  const side = values.length === 1 ? "" : alike ? "both: " : at === 0 ? "left: " : "right: ";
  const status = credit === 100 ? "pass" : credit === 0 ? "fail" : "part";
  return {
    rule: rule.reads, status, credit, weight: rule.weight, value: values,
    sentence: sentence(rule, side, values[at], seen[at]), because: rule.because,
    advice: status !== "pass" ? rule.advice || "" : "",
  };
}

function verdict(record) {
  const values = readRecord(record);
  const findings = table.rules.map((rule) => find(rule, values[rule.reads]));
  let earned = 0;
  let weight = 0;
  for (const one of findings) {
    if ("credit" in one) {
      earned += one.weight * one.credit;
      weight += one.weight;
    }
  }
  let grade = table.grades.findIndex(([, start]) => earned >= start * weight);
  table.rules.forEach((rule, i) => {
    if (rule.must && findings[i].status === "fail") {
      grade = Math.max(grade, table.grades.findIndex(([name]) => name === rule.must));
    }
  });
  return { client: record.inspection.client, grade: table.grades[grade][0], points: earned / weight, findings };
}

const lines = readline.createInterface({ input: fs.createReadStream(process.argv[3]) });
lines.on("line", (line) => process.stdout.write(JSON.stringify(verdict(JSON.parse(line))) + "\n"));
