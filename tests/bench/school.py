"""What a school would write in Python: school.py TABLE RECORDS; the same verdicts as heelrule's, one a line."""

import json
import re
import sys
from collections import namedtuple
from dataclasses import dataclass

NUMBER = re.compile(r"[0-9.]+")

Seen = namedtuple("Seen", "reading band distance")


@dataclass
class Result:
    """What a rule came to; the credit in percent is None where what was seen does not settle it."""
    rule: dict
    trait: dict
    seen: list
    credit: float | None
    missing: list
    gain: float = 0


def read_value(answer, trait):
    """A number, the name of a level, or None where nothing was seen."""
    text = answer["value"] if isinstance(answer, dict) else answer
    if text == "not seen":
        return None
    return float(NUMBER.match(text)[0]) if trait["unit"] else text


def read_values(found, table):
    """The values of each trait, one for each of its sides."""
    values = {}
    for name, trait in table["traits"].items():
        if "difference" in trait:
            a, b = trait["difference"]
            values[name] = [None if x is None or y is None else round(x - y, 9) for x, y in zip(values[a], values[b])]
        else:
            answer = found.get(name, "not seen")
            by_side = isinstance(answer, dict) and "left" in answer
            values[name] = [read_value(answer[side] if by_side else answer, trait) for side in trait["sides"]]
    return values


def in_words(value, unit):
    """231.5 mm, 36°, 1 month, firm."""
    if not unit:
        return value
    space = "" if unit == "°" else " "
    return f"{value:g}{space}{'month' if unit == 'months' and value == 1 else unit}"


def find_band(bands, value):
    if isinstance(value, str):
        return next(band for band in bands if band["name"] == value)
    return next(band for band in bands if band["below"] is None or value < band["below"])


def judge_side(rule, unit, side, value):
    band = find_band(rule["bands"], value)
    reading = {"side": side, "value": in_words(value, unit)}
    if unit:
        reading |= {"number": value, "unit": unit}
    reading |= {"band": band["name"], "credit": band["earns"] / 100}
    distance = round(abs(value - band["limit"]), 9) if "limit" in band else 0
    if "limit" in band:
        reading |= {"limit": band["limit"], band["distance"]: distance}
    return Seen(reading, band, distance)


def join_sides(how, earned, is_complete):
    """The worse side or the mean; a side that fails settles the worse one alone."""
    if how == "mean":
        return sum(earned) / len(earned) if is_complete else None
    return min(earned) if is_complete or 0 in earned else None


def missing_of(trait, values, table):
    return [{"trait": name, "side": side} for name in trait["needs"]
            for side, value in zip(table["traits"][name]["sides"], values[name]) if value is None]


def judge(rule, values, table):
    trait = table["traits"][rule["reads"]]
    found = values[rule["reads"]]
    seen = [judge_side(rule, trait["unit"], side, value)
            for side, value in zip(trait["sides"], found) if value is not None]
    credit = join_sides(rule["sides"], [one.band["earns"] for one in seen], len(seen) == len(found))
    return Result(rule, trait, seen, credit, missing_of(trait, values, table) if credit is None else [])


def questions(missing, table):
    """What to look at, each trait once, with its side where the other one was seen."""
    sides = {}
    for one in missing:
        sides.setdefault(one["trait"], set()).add(one["side"])
    asked = [(table["traits"][name], lacking) for name, lacking in sides.items()]
    return [trait["title"] if len(lacking) == len(trait["sides"]) else f"{trait['title']} ({lacking.pop()})"
            for trait, lacking in asked]


def sentence(result, table):
    if result.credit is None:
        return f"It needs: {'; '.join(questions(result.missing, table))}."
    unit = result.trait["unit"]
    if not unit:
        return ""
    reading, band, distance = max(result.seen, key=lambda one: (-one.band["earns"], one.distance))
    is_alike = len(result.seen) == 2 and result.seen[0].reading["value"] == result.seen[1].reading["value"]
    side, value = "both" if is_alike else reading["side"], reading["value"]
    limit = in_words(band["limit"], unit) if "limit" in band else ""
    away = in_words(distance, unit)
    if "say" in band:
        return band["say"].format(side=side, value=value, limit=limit, short_by=away, over_by=away)
    start = f"{side.capitalize()}: " if side else ""
    end = f", {away} {'short of' if band['distance'] == 'short_by' else 'over'} {limit}" if limit else ""
    return f"{start}{value} is {band['words']}{end}."


def status(credit):
    return "not seen" if credit is None else {100: "pass", 0: "fail"}.get(credit, "part")


def finding(result, notes, table):
    rule, credit = result.rule, result.credit
    return {
        "rule": rule["reads"], "title": result.trait["title"], "section": rule["section"], "reads": rule["reads"],
        "status": status(credit), "weight": rule["weight"],
        "credit": None if credit is None else credit / 100, "gain": None if credit is None else result.gain,
        "must": "must" in rule, "caps_at": rule.get("must") if credit == 0 else None,
        "readings": [one.reading for one in result.seen], "missing": result.missing,
        "sentence": sentence(result, table), "because": rule["because"], "source": rule["source"],
        "notes": [notes[name] for name in result.trait["needs"] if name in notes],
    }


def sums(results):
    """What was earned, the weight of what was seen, and that of what is open."""
    seen = [one for one in results if one.credit is not None]
    weight = sum(one.rule["weight"] for one in seen)
    earned = sum(one.rule["weight"] * one.credit for one in seen)
    return earned, weight, sum(one.rule["weight"] for one in results) - weight


def score(results):
    earned, seen, unseen = sums(results)
    return {
        "points": earned / seen if seen else None,
        "lowest": earned / (seen + unseen), "highest": (earned + 100 * unseen) / (seen + unseen),
        "weight_seen": seen, "weight_open": unseen,
    }


def certainty(names, stands, is_complete):
    *others, last = names
    if stands:
        return f"The grade stands{': all that counts was seen' if is_complete else ', whatever was not seen'}."
    if not others:
        return f"The grade is provisional: a must was not seen. Even so, it can only come out as {last}."
    return f"The grade is provisional: with what was not seen it can still become {', '.join(others)} or {last}."


def cap_words(by_score, capping):
    if not capping:
        return ""
    musts = [f"{one.trait['title']} (at best {one.rule['must']})" for one in capping]
    failed = "a must failed" if len(musts) == 1 else "musts failed"
    return f"The score alone would give {by_score}, but {failed}: {'; '.join(musts)}."


def give_grade(results, table):
    grades = table["grades"]
    names = [grade["name"] for grade in grades]

    def reached(earned, weight):
        return next(place for place, grade in enumerate(grades) if earned >= grade["from"] * weight)

    earned, seen, unseen = sums(results)
    musts = [(one, names.index(one.rule["must"])) for one in results if "must" in one.rule]
    failed = [cap for one, cap in musts if one.credit == 0]
    unsettled = [cap for one, cap in musts if one.credit is None]
    by_score = reached(earned, seen)
    given = max([by_score, *failed])
    worst = max([reached(earned, seen + unseen), *failed, *unsettled])
    best = max([reached(earned + 100 * unseen, seen + unseen), *failed])
    stands = worst == best and not unsettled
    return {
        "name": names[given], "means": grades[given]["means"], "stands": stands,
        "by_score_alone": names[by_score], "worst_possible": names[worst], "best_possible": names[best],
        "certainty": certainty(names[best:worst + 1], stands, unseen == 0),
        "caps": cap_words(names[by_score], [one for one, cap in musts if one.credit == 0 and cap > by_score]),
    }


def said(results, kind):
    """The words of a kind of all rules that any side falls short of."""
    return [{"rule": one.rule["reads"], "title": one.trait["title"], "words": one.rule[kind], "gain": one.gain}
            for one in results if kind in one.rule and any(side.band["earns"] < 100 for side in one.seen)]


def advice(results):
    """Failed musts first, then what gains most."""
    settled = [one for one in results if one.credit is not None]
    return said(sorted(settled, key=lambda one: (one.credit > 0 or "must" not in one.rule, -one.gain)), "advice")


def would_settle(results, grade, table):
    if grade["stands"]:
        return []
    is_open = grade["worst_possible"] != grade["best_possible"]
    unsettled = [one for one in results if one.credit is None and (is_open or "must" in one.rule)]
    unsettled.sort(key=lambda one: ("must" not in one.rule, -one.rule["weight"]))
    return questions([lacking for one in unsettled for lacking in one.missing], table)


def verdict(record, table):
    about, found = record["inspection"], record["found"]
    notes = {name: answer["note"] for name, answer in found.items() if isinstance(answer, dict) and "note" in answer}
    values = read_values(found, table)
    results = [judge(rule, values, table) for rule in table["rules"]]
    whole = score(results)
    for one in results:
        if one.credit is not None:
            one.gain = one.rule["weight"] * (100 - one.credit) / whole["weight_seen"]
    grade = give_grade(results, table)
    referrals = said(results, "referral")
    advised = advice(results)
    return {
        "format": "heelrule verdict", "version": 1, "rules": table["set"],
        "inspection": {
            "rules": about["rules"], "date": about["date"], "observer": about["observer"], "client": about["client"],
            "shoe": about["shoe"]["label"], "marked": "", "note": "",
        },
        "see_practitioner_first": bool(referrals), "safety": [], "referrals": referrals,
        "grade": grade, "score": whole,
        "sections": [section | {"score": score([one for one in results if one.rule["section"] == section["name"]])}
                     for section in table["sections"]],
        "findings": [finding(one, notes, table) for one in results],
        "cautions": said(results, "caution"),
        "advice": [] if referrals else advised, "advice_held_back": advised if referrals else [],
        "would_settle": would_settle(results, grade, table), "usual_cautions": table["cautions"],
    }


def main(table_file, records_file):
    with open(table_file, encoding="utf-8") as file:
        table = json.load(file)
    with open(records_file, encoding="utf-8") as lines:
        for line in lines:
            print(json.dumps(verdict(json.loads(line), table), ensure_ascii=False, separators=(",", ":")))


if __name__ == "__main__":
    main(*sys.argv[1:])
