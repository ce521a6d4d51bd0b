"""What a school would write in Python: school.py TABLE RECORDS; one verdict a line, with its words."""

import json
import re
import sys

NUMBER = re.compile(r"^([0-9.]+) ?(.*)$")


def read_value(text, name, table):
    """A number, the index of a level, or None where nothing was seen."""
    if isinstance(text, dict):
        text = text["value"]
    if text == "not seen":
        return None
    if name in table["levels"]:
        return table["levels"][name].index(text)
    if text in ("yes", "no"):
        return ["no", "yes"].index(text)
    return float(NUMBER.match(text)[1])


def read_record(record, table):
    values = {}
    for name, text in record["found"].items():
        if isinstance(text, dict) and "left" in text:
            values[name] = [read_value(text["left"], name, table), read_value(text["right"], name, table)]
        else:
            value = read_value(text, name, table)
            values[name] = [value, value] if table["two_sided"][name] else [value]
    for name, _, a, b in table["derived"]:
        pairs = zip(values.get(a, [None, None]), values.get(b, [None, None]))
        values[name] = [None if x is None or y is None else round(x - y, 9) for x, y in pairs]
    return values


def judge_value(rule, value):
    """The band of a value and its credit in percent."""
    credit = rule["credit"]
    if isinstance(credit, dict):
        name = list(credit)[int(value)]
        return name, credit[name]
    for band in credit:
        if band["below"] is None or value < band["below"]:
            return band["name"], band["earns"]
    return None


def sentence(rule, unit, sides, value, band):
    name, earns = band
    side = {0: "", 1: "left: ", 2: "right: ", 3: "both: "}[sides]
    words = f"{side}{value:g} {unit} is {name}, which earns {earns} %"
    if earns < 100:
        words += f"; {rule['because']}"
    return words + "."


def find(rule, values, table):
    values = values or ([None, None] if table["two_sided"][rule["reads"]] else [None])
    seen = [None if value is None else judge_value(rule, value) for value in values]
    credits = [one[1] for one in seen if one is not None]
    missing = len(credits) < len(values)
    if not credits or (missing and (rule.get("sides") == "mean" or min(credits) > 0)):
        return {"rule": rule["reads"], "status": "not seen"}
    mean = rule.get("sides") == "mean"
    credit = sum(credits) / len(credits) if mean else min(credits)
    at = next(i for i, one in enumerate(seen) if one is not None and one[1] == min(credits))
    alike = len(values) == 2 and values[0] == values[1]
    sides = 0 if len(values) == 1 else 3 if alike else at + 1
    status = "pass" if credit == 100 else "fail" if credit == 0 else "part"
    return {
        "rule": rule["reads"], "status": status, "credit": credit, "weight": rule["weight"],
        "value": values, "sentence": sentence(rule, table["units"][rule["reads"]], sides, values[at], seen[at]),
        "because": rule["because"], "advice": rule.get("advice", "") if status != "pass" else "",
    }


def verdict(record, table):
    values = read_record(record, table)
    findings = [find(rule, values.get(rule["reads"]), table) for rule in table["rules"]]
    judged = [one for one in findings if "credit" in one]
    earned = sum(one["weight"] * one["credit"] for one in judged)
    weight = sum(one["weight"] for one in judged)
    names = [name for name, *_ in table["grades"]]
    grade = next(i for i, (_, start, _) in enumerate(table["grades"]) if earned >= start * weight)
    for rule, one in zip(table["rules"], findings):
        if "must" in rule and one["status"] == "fail":
            grade = max(grade, names.index(rule["must"]))
    return {
        "client": record["inspection"]["client"], "grade": names[grade], "points": earned / weight,
        "findings": findings,
    }


def main(table_file, records_file):
    with open(table_file, encoding="utf-8") as file:
        table = json.load(file)
    with open(records_file, encoding="utf-8") as lines:
        for line in lines:
            print(json.dumps(verdict(json.loads(line), table), ensure_ascii=False, separators=(",", ":")))


if __name__ == "__main__":
    main(*sys.argv[1:])
