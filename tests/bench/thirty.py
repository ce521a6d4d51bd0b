"""Thirty rules over thirty traits, said once, for everything that is timed: thirty.py yaml|json|cpp.

`yaml` prints them as a rule set for heelrule, `json` as a table for the scripts that a school would
write, `cpp` as constants and straight-line code for the scorer that is written by hand. records.py
makes up records. All thresholds are made up for the timings and stand for nothing.
"""

import json
import sys

# name, unit, sides, plausible from and to, usual value, spread, step
MEASURES = [
    ("foot_length", "mm", "foot", 80, 340, 250, 14, 0.5),
    ("foot_width", "mm", "foot", 40, 140, 96, 6, 0.5),
    ("ball_girth", "mm", "foot", 120, 330, 242, 13, 1),
    ("instep_height", "mm", "foot", 30, 110, 62, 6, 0.5),
    ("insole_length", "mm", "shoe", 80, 380, 262, 14, 0.5),
    ("insole_width", "mm", "shoe", 40, 150, 94, 6, 0.5),
    ("heel_height", "mm", "shoe", 0, 120, 27, 8, 0.5),
    ("forefoot_height", "mm", "shoe", 0, 60, 15, 4, 0.5),
    ("toe_box_height", "mm", "shoe", 5, 60, 24, 3, 0.5),
    ("tread_depth", "mm", "shoe", 0, 15, 3.5, 1.3, 0.1),
    ("shoe_mass", "g", None, 50, 2000, 330, 70, 1),
    ("shoe_age", "months", None, 0, 240, 14, 9, 1),
    ("sock_age", "months", None, 0, 120, 9, 5, 1),
    ("lace_length", "mm", None, 100, 2000, 1150, 130, 10),
    ("sole_stiffness", "N·m/°", None, 0, 3, 0.28, 0.1, 0.01),
    ("break_angle", "°", None, 0, 90, 45, 9, 1),
]
# name, sides, levels, how often each is met
LEVELS = [
    ("heel_counter", "shoe", ["soft", "medium", "firm"], [2, 3, 5]),
    ("outsole_grip", None, ["worn smooth", "fair", "good"], [2, 4, 4]),
    ("lining", None, ["torn", "rubbed", "smooth"], [1, 3, 6]),
    ("insole_wear", None, ["deep hollows", "flat", "even"], [2, 3, 5]),
    ("twist", None, ["like a cloth", "some", "hardly"], [1, 4, 5]),
    ("shank", None, ["none", "plastic", "steel"], [2, 5, 3]),
    ("topline", None, ["cuts in", "loose", "snug"], [1, 3, 6]),
    ("sock_thickness", None, ["thin", "medium", "thick"], [3, 5, 2]),
]
CHOICES = [("fastening", None, ["laces", "hook and loop", "buckle", "none"], [6, 2, 1, 1])]
# name, how often yes
ANSWERS = [
    ("insole_comes_out", 0.8),
    ("seam_over_joint", 0.15),
    ("toe_cap_cracked", 0.1),
    ("laces_even", 0.85),
    ("heel_worn_slanted", 0.3),
]
DERIVED = [
    ("toe_allowance", "insole_length - foot_length", "insole_length", "foot_length"),
    ("width_allowance", "insole_width - foot_width", "insole_width", "foot_width"),
    ("heel_pitch", "heel_height - forefoot_height", "heel_height", "forefoot_height"),
]
TITLE = "Thirty rules for timings"
SECTIONS = [("fit", "Fit on the foot"), ("build", "How the shoe is built"),
            ("wear", "Wear and care"), ("socks", "Socks and fastening")]
GRADES = [("sound", 80, "Keep the pair."), ("usable", 55, "Keep the pair, and change what is listed."),
          ("unfit", 0, "Do not keep wearing this pair.")]
CAUTIONS = [("no_diagnosis", "This report is no diagnosis and replaces no licensed practitioner.")]
# What heelrule adds to the cautions of every rule set.
OWN_CAUTION = "This report follows house rules. Local codes and licensed practice come before them."


def bands(*cuts):
    """Bands from (name, cut, credit in percent): a cut is a number, or None for the last band."""
    return [{"name": name, "below": cut, "earns": earns} for name, cut, earns in cuts]


def rule(reads, section, weight, credit, because, **more):
    return {"reads": reads, "section": section, "weight": weight, "credit": credit,
            "because": because} | more


RULES = [
    rule("toe_allowance", "fit", 12,
         bands(("short", 6, 0), ("close", 10, 50), ("right", 16, 100), ("roomy", 22, 60), ("long", None, 20)),
         "The foot lengthens with each step, and toes that meet the wall deform over the years.",
         must="unfit", advice="Ask for half a size more, and try again on the insole.",
         say={"short": "{side}: {value} in front of the longest toe, {short_by} short of what the house asks for"},
         caution="Toes that touch the front lose their nails first and their feeling last."),
    rule("width_allowance", "fit", 9,
         bands(("tight", -6, 0), ("snug", -2, 60), ("right", 4, 100), ("wide", None, 60)),
         "A ball that is pressed together cannot spread when the heel leaves the ground.",
         say={"tight": "{side}: the insole is {value} against the ball, {short_by} less than the house allows"},
         advice="Try the wider fitting of the same last."),
    rule("heel_pitch", "build", 8,
         bands(("level", 4, 80), ("low", 15, 100), ("raised", 30, 50), ("high", None, 0)),
         "The higher the heel stands over the ball, the more of the weight comes to rest on the ball.",
         advice="Choose a lower heel for days of standing.", caution="A raised heel shortens the calf over time."),
    rule("foot_length", "fit", 2, bands(("child", 200, 70), ("usual", 300, 100), ("special", None, 70)),
         "Beyond the usual lengths few makers have lasts, and the choice of fit is small."),
    rule("foot_width", "fit", 2, bands(("narrow", 84, 70), ("usual", 108, 100), ("broad", None, 70)),
         "Narrow and broad feet need a maker who keeps widths, and time to find one."),
    rule("ball_girth", "fit", 5, bands(("slim", 215, 60), ("usual", 265, 100), ("full", None, 50)),
         "The girth at the ball decides whether the upper holds the foot or the foot holds the upper.",
         sides="mean"),
    rule("instep_height", "fit", 4, bands(("flat", 50, 60), ("usual", 72, 100), ("high", None, 60)),
         "A high instep is pressed by laces, and a flat one is not reached by them."),
    rule("insole_length", "build", 1, bands(("usual", 340, 100), ("long", None, 80)),
         "A very long shoe bends behind the joint of the toes and not below it."),
    rule("insole_width", "build", 2, bands(("narrow", 80, 60), ("usual", None, 100)),
         "What the foot stands on has to be as broad as the foot, or the upper becomes the floor."),
    rule("heel_height", "build", 6, bands(("low", 20, 100), ("medium", 35, 80), ("high", 50, 30), ("steep", None, 0)),
         "Height takes the ankle out of the position in which it is stable.",
         say={"steep": "the {side} heel stands {value} high, {over_by} over the highest that passes in part"},
         advice="Keep this pair for short occasions."),
    rule("forefoot_height", "build", 2, bands(("thin", 8, 60), ("usual", 24, 100), ("thick", None, 70)),
         "Below a thin sole each stone is felt, and on a thick one the ground is not felt at all."),
    rule("toe_box_height", "fit", 6, bands(("low", 20, 0), ("close", 23, 60), ("right", None, 100)),
         "Toes that cannot lie flat are pushed down at their ends and up at their joints.",
         advice="Look for a rounder toe box.", caution="Pressure on the nails goes unnoticed under thick socks."),
    rule("tread_depth", "wear", 7, bands(("smooth", 1.5, 0), ("low", 3, 50), ("deep", None, 100)),
         "Without depth in the tread water stays between sole and floor, and the shoe floats.", must="usable",
         say={"smooth": "{side} tread: {value} left, {short_by} under the limit of {limit}"},
         advice="Have the sole renewed before the wet months."),
    rule("shoe_mass", "build", 4, bands(("light", 300, 100), ("usual", 450, 80), ("heavy", None, 30)),
         "Each step lifts the shoe, some thousand times a day."),
    rule("shoe_age", "wear", 4, bands(("new", 12, 100), ("used", 24, 70), ("old", None, 20)),
         "Foams and glues age also in the cupboard.", advice="Look at the soles with a lamp, and plan for another pair."),
    rule("sock_age", "socks", 2, bands(("new", 12, 100), ("used", 24, 60), ("old", None, 20)),
         "Old fibres are thin at heel and toe, just where they are needed."),
    rule("lace_length", "socks", 1, bands(("short", 900, 50), ("right", 1300, 100), ("long", None, 70)),
         "Laces that are too short stay in the first holes, and those too long are stepped on."),
    rule("sole_stiffness", "build", 6, bands(("limp", 0.15, 40), ("lively", 0.35, 100), ("stiff", None, 50)),
         "A sole that bends anywhere supports nowhere, and one that does not bend must be lifted by the shin."),
    rule("break_angle", "build", 5, bands(("square", 35, 50), ("slanted", 55, 100), ("steep", None, 60)),
         "The sole should bend along the joints of the toes, and these lie on a slant."),
    rule("heel_counter", "build", 7, {"soft": 0, "medium": 60, "firm": 100},
         "A firm counter keeps the heel over the sole.", advice="Press the counters of other pairs and compare."),
    rule("outsole_grip", "wear", 7, {"worn smooth": 0, "fair": 60, "good": 100},
         "Slips begin where the heel meets a wet floor.", caution="On wet floors this pair needs short steps."),
    rule("lining", "wear", 3, {"torn": 0, "rubbed": 50, "smooth": 100},
         "A torn lining rubs, and what rubs makes blisters.", advice="Have the lining patched."),
    rule("insole_wear", "wear", 4, {"deep hollows": 0, "flat": 60, "even": 100},
         "Hollows hold the foot where it stood before, well or not.", advice="Change the insole."),
    rule("twist", "build", 5, {"like a cloth": 20, "some": 100, "hardly": 70},
         "Some twist lets forefoot and heel find the ground each by itself."),
    rule("shank", "build", 3, {"none": 30, "plastic": 80, "steel": 100},
         "Between heel and ball the sole hangs in the air, and the shank carries it."),
    rule("topline", "fit", 4, {"cuts in": 0, "loose": 50, "snug": 100},
         "The topline holds the shoe on the heel without pressing the tendon.",
         caution="Redness over the tendon calls for another topline."),
    rule("sock_thickness", "socks", 2, {"thin": 60, "medium": 100, "thick": 80},
         "The sock takes up room that was measured without it."),
    rule("fastening", "socks", 4, {"laces": 100, "hook and loop": 90, "buckle": 70, "none": 20},
         "What cannot be opened cannot be fitted to the instep."),
    rule("seam_over_joint", "fit", 5, {"no": 100, "yes": 0},
         "A seam over the joint of the big toe rubs with every step.",
         referral="Sore skin over a joint needs to be seen by a licensed practitioner."),
    rule("heel_worn_slanted", "wear", 4, {"no": 100, "yes": 40},
         "A slanted heel tilts the shoe the way it is worn already.", advice="Have the heel levelled."),
]


def trait_sides():
    two = {name: bool(per) for name, _, per, *_ in MEASURES}
    two |= {name: bool(per) for name, per, *_ in LEVELS + CHOICES}
    two |= {name: False for name, _ in ANSWERS}
    return two | {name: True for name, *_ in DERIVED}


def unit_of(name):
    return next((unit for known, unit, *_ in MEASURES if known == name), "mm")


def title(name):
    words = name.replace("_", " ")
    return words[0].upper() + words[1:]


def quoted(text):
    return json.dumps(text, ensure_ascii=False)


def with_unit(number, unit):
    return f"{number:g}{'' if unit == '°' else ' '}{unit}"


def yaml_traits():
    for name, unit, per, low, high, *_ in MEASURES:
        yield f"  {name}: {{ask: {quoted(title(name))}, measure: {unit}, per: {per or 'pair'}, " \
              f"plausible: {with_unit(low, unit)} .. {with_unit(high, unit)}}}"
    for kind, all_levels in (("scale", LEVELS), ("choice", CHOICES)):
        for name, per, levels, _ in all_levels:
            yield f"  {name}: {{ask: {quoted(title(name))}, {kind}: [{', '.join(map(quoted, levels))}], per: {per or 'pair'}}}"
    for name, _ in ANSWERS:
        yield f"  {name}: {{ask: {quoted(title(name))}, answer: yes or no}}"
    for name, formula, *_ in DERIVED:
        yield f"  {name}: {{ask: {quoted(title(name))}, derive: {quoted(formula)}, shown: mm}}"


def yaml_rule(one):
    yield f"  {one['reads']}:"
    yield f"    reads: {one['reads']}"
    yield f"    section: {one['section']}"
    yield f"    weight: {one['weight']}"
    if "must" in one:
        yield f"    must: {{caps: {one['must']}}}"
    if "sides" in one:
        yield f"    sides: {one['sides']}"
    if isinstance(one["credit"], dict):
        yield f"    levels: {{{', '.join(f'{quoted(level)}: {earns} %' for level, earns in one['credit'].items())}}}"
    else:
        yield "    bands:"
        for band in one["credit"]:
            cut = "" if band["below"] is None else f", below: {with_unit(band['below'], unit_of(one['reads']))}"
            say = one.get("say", {}).get(band["name"])
            words = f", say: {quoted(say)}" if say else ""
            yield f"      - {{name: {quoted(band['name'])}{cut}, earns: {band['earns']} %{words}}}"
    yield f"    because: {quoted(one['because'])}"
    yield "    source: common practice"
    for kind in ("advice", "caution", "referral"):
        if kind in one:
            yield f"    {kind}: {quoted(one[kind])}"


def yaml():
    yield f"title: {TITLE}"
    yield "sections:"
    yield from (f"  {name}: {{title: {quoted(words)}}}" for name, words in SECTIONS)
    yield "traits:"
    yield from yaml_traits()
    yield "rules:"
    for one in RULES:
        yield from yaml_rule(one)
    yield "grades:"
    yield from (f"  {name}: {{from: {start}, means: {quoted(means)}}}" for name, start, means in GRADES)
    yield "cautions:"
    yield from (f"  {name}: {quoted(words)}" for name, words in CAUTIONS)


def better_side(bands, at):
    """Where the better neighbour of a band lies: -1 below, 1 above, 0 nowhere."""
    earns = [band["earns"] for band in bands]
    below = earns[at - 1] if at > 0 else 0
    above = earns[at + 1] if at + 1 < len(bands) else 0
    if max(below, above) <= earns[at]:
        return 0
    return 1 if above >= below else -1


def table_band(one, at):
    """A band for the scripts: with the words for where it lies, and the limit to the better band."""
    bands, unit = one["credit"], unit_of(one["reads"])
    band = bands[at]
    cuts = [with_unit(known["below"], unit) for known in bands[:-1]]
    where = f"below {cuts[0]}" if at == 0 else f"{cuts[-1]} or more" if at == len(cuts) else \
        f"{cuts[at - 1]} to below {cuts[at]}"
    found = band | {"words": f"{band['name']} ({where})"}
    better = better_side(bands, at)
    if better:
        found |= {"limit": bands[at if better > 0 else at - 1]["below"],
                  "distance": "short_by" if better > 0 else "over_by"}
    if band["name"] in one.get("say", {}):
        found["say"] = one["say"][band["name"]]
    return found


def table_rule(one):
    if isinstance(one["credit"], dict):
        bands = [{"name": level, "earns": earns} for level, earns in one["credit"].items()]
    else:
        bands = [table_band(one, at) for at in range(len(one["credit"]))]
    kept = {key: value for key, value in one.items() if key not in ("credit", "say")}
    return {"sides": "worse"} | kept | {"source": "common practice", "bands": bands}


def table_traits():
    two_sided = trait_sides()
    parts = {name: [a, b] for name, _, a, b in DERIVED}
    recorded_names = [name for name, *_ in recorded()]
    units = {name: unit for name, _, unit, *_ in recorded()} | {name: "mm" for name in parts}
    for name in recorded_names + list(parts):
        trait = {"title": title(name), "unit": units[name], "sides": ["left", "right"] if two_sided[name] else [""]}
        if name in parts:
            trait["difference"] = parts[name]
        trait["needs"] = sorted(parts.get(name, [name]), key=recorded_names.index)
        yield name, trait


def table():
    return {"set": {"name": "thirty.yaml", "title": TITLE, "edition": ""},
            "traits": dict(table_traits()), "rules": [table_rule(one) for one in RULES],
            "sections": [{"name": name, "title": words} for name, words in SECTIONS],
            "grades": [{"name": name, "from": start, "means": means} for name, start, means in GRADES],
            "cautions": [*(words for _, words in CAUTIONS), OWN_CAUTION]}


def literal(text):
    return json.dumps(text, ensure_ascii=False)


def stored(number, unit):
    return number * 1000 if unit == "N·m/°" else number



def cpp_bands(one):
    """The bands of a rule as C++: cut point or infinity, credit in millionths, name, own words."""
    unit = unit_of(one["reads"])
    if isinstance(one["credit"], dict):
        for level, earns in one["credit"].items():
            yield f'{{infinity, {earns * 10000}, {literal(level)}, ""}}'
        return
    for band in one["credit"]:
        cut = "infinity" if band["below"] is None else repr(float(stored(band["below"], unit)))
        say = one.get("say", {}).get(band["name"], "")
        yield f'{{{cut}, {band["earns"] * 10000}, {literal(band["name"].replace("_", " "))}, {literal(say)}}}'


def cpp_band_of(index, one):
    """Which band a value lies in, as one expression."""
    if isinstance(one["credit"], dict):
        return f"inline int band_{index}(double value) {{ return static_cast<int>(value); }}"
    unit = unit_of(one["reads"])
    steps = "".join(f"value < {float(stored(band['below'], unit))!r} ? {i} : "
                    for i, band in enumerate(one["credit"][:-1]))
    return f"inline int band_{index}(double value) {{ return {steps}{len(one['credit']) - 1}; }}"


def recorded():
    """Each recorded trait: name, whether it has sides, unit or none, levels."""
    for name, unit, per, *_ in MEASURES:
        yield name, bool(per), unit, []
    for name, per, levels, _ in LEVELS + CHOICES:
        yield name, bool(per), "", levels
    for name, _ in ANSWERS:
        yield name, False, "", ["no", "yes"]


def cpp():
    two_sided = trait_sides()
    names = [name for name, *_ in recorded()] + [name for name, *_ in DERIVED]
    places = {name: i for i, name in enumerate(names)}
    yield "// Made by thirty.py."
    yield "#pragma once\n\n#include <array>\n#include <limits>\n#include <string_view>\n#include <vector>\n"
    yield "namespace thirty {\n\nconstexpr double infinity = std::numeric_limits<double>::infinity();\n"
    yield "struct TraitFacts {\n  std::string_view name, title;\n  bool has_sides;\n  std::string_view unit;"
    yield "  double per_unit;\n  std::vector<std::string_view> levels;\n};"
    yield "struct BandFacts {\n  double below, credit;\n  std::string_view name, say;\n};"
    yield "struct RuleFacts {\n  int trait;\n  std::string_view section;\n  double weight;\n  int cap;\n  bool is_mean;"
    yield "  std::vector<BandFacts> bands;\n  std::string_view because, advice, caution, referral;\n};"
    yield "struct DerivedFacts {\n  int result, a, b;\n};\n"
    yield f"constexpr int recorded_count = {len(list(recorded()))};\nconstexpr int trait_count = {len(names)};"
    yield f"constexpr int rule_count = {len(RULES)};\n"
    yield "inline const std::array<TraitFacts, trait_count> traits{{"
    for name, sides, unit, levels in recorded():
        per_unit = 1000 if unit == "N·m/°" else 1
        yield f"    {{{literal(name)}, {literal(title(name))}, {str(sides).lower()}, {literal(unit)}, {per_unit}, " \
              f"{{{', '.join(map(literal, levels))}}}}},"
    for name, *_ in DERIVED:
        yield f'    {{{literal(name)}, {literal(title(name))}, true, "mm", 1, {{}}}},'
    yield "}};"
    yield f"inline const std::array<DerivedFacts, {len(DERIVED)}> derived{{{{"
    yield from (f"    {{{places[name]}, {places[a]}, {places[b]}}}," for name, _, a, b in DERIVED)
    yield "}};"
    yield f"inline const std::array<std::array<std::string_view, 2>, {len(SECTIONS)}> sections{{{{"
    yield from (f"    {{{literal(name)}, {literal(words)}}}," for name, words in SECTIONS)
    yield "}};"
    yield "struct GradeFacts {\n  std::string_view name;\n  double from;\n  std::string_view means;\n};"
    yield f"inline const std::array<GradeFacts, {len(GRADES)}> grades{{{{"
    yield from (f"    {{{literal(name)}, {start}, {literal(means)}}}," for name, start, means in GRADES)
    yield "}};"
    yield f"inline const std::array<std::string_view, {len(CAUTIONS)}> cautions{{{', '.join(literal(words) for _, words in CAUTIONS)}}};"
    grade_names = [name for name, *_ in GRADES]
    yield "inline const std::array<RuleFacts, rule_count> rules{{"
    for one in RULES:
        cap = grade_names.index(one["must"]) if "must" in one else 0
        words = ", ".join(literal(one.get(kind, "")) for kind in ("because", "advice", "caution", "referral"))
        yield f"    {{{places[one['reads']]}, {literal(one['section'])}, {one['weight']}, {cap}, " \
              f"{str(one.get('sides') == 'mean').lower()}, {{{', '.join(cpp_bands(one))}}}, {words}}},"
    yield "}};\n"
    yield from (cpp_band_of(i, one) for i, one in enumerate(RULES))
    yield "inline int band_of(int rule, double value) {\n  switch (rule) {"
    yield from (f"    case {i}:\n      return band_{i}(value);" for i in range(len(RULES)))
    yield "    default:\n      return 0;\n  }\n}\n"
    yield "// Earned and weight of one row. Values stand by trait and side: none or left, right."
    yield "inline void score(const double* values, double& earned, double& weight) {\n  earned = weight = 0;"
    for i, one in enumerate(RULES):
        at = 2 * places[one["reads"]]
        credits = [earns * 10000 for earns in one["credit"].values()] if isinstance(one["credit"], dict) else \
            [band["earns"] * 10000 for band in one["credit"]]
        yield f"  {{\n    static constexpr double credits[]{{{', '.join(map(str, credits))}}};"
        yield f"    const double a = values[{at}];"
        if not two_sided[one["reads"]]:
            yield f"    if (a == a) {{\n      earned += {one['weight'] * 1000} * credits[band_{i}(a)];\n      weight += {one['weight'] * 1000};\n    }}\n  }}"
            continue
        yield f"    const double b = values[{at + 1}];"
        yield f"    const double x = a == a ? credits[band_{i}(a)] : -1, y = b == b ? credits[band_{i}(b)] : -1;"
        joined = "(x + y) / 2" if one.get("sides") == "mean" else "x < y ? x : y"
        decided = "x >= 0 && y >= 0" if one.get("sides") == "mean" else "(x >= 0 && y >= 0) || x == 0 || y == 0"
        zero = joined if one.get("sides") == "mean" else "(x == 0 || y == 0) ? 0 : (x < y ? x : y)"
        yield f"    if ({decided}) {{\n      earned += {one['weight'] * 1000} * ({zero});\n      weight += {one['weight'] * 1000};\n    }}\n  }}"
    yield "}\n\n}  // namespace thirty"


PRINTERS = {
    "yaml": yaml,
    "json": lambda: [json.dumps(table(), ensure_ascii=False, indent=1)],
    "cpp": cpp,
}

if __name__ == "__main__":
    print("\n".join(PRINTERS[sys.argv[1]]()))
