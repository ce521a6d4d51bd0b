"""An example record as a person would type it, and as they would write it on a blank sheet."""

import re

LINE = re.compile(r"^  (\w+): (.*?)\s*$")


def parts(text):
    """The pieces of a text between commas that stand in no bracket and no quotes."""
    depth, quoted, piece, found = 0, False, "", []
    for sign in text:
        quoted ^= sign == '"'
        depth += (sign in "{[") - (sign in "}]")
        if sign == "," and depth == 0 and not quoted:
            found.append(piece.strip())
            piece = ""
        else:
            piece += sign
    return found + [piece.strip()]


def pairs(text):
    """`{a: b, c: d}` as a dictionary."""
    return dict(part.split(": ", 1) for part in parts(text[1:-1]))


def typed(value):
    """A value of a record as it is typed."""
    if value.startswith('"'):
        return value[1:-1]
    if value.startswith("["):
        return value[1:-1]
    if not value.startswith("{"):
        return value
    inner = pairs(value)
    if "not seen" in inner:
        return f"skip {typed(inner['not seen'])}"
    if "value" in inner:
        line = typed(inner["value"])
        line += f" ± {inner['doubt']}" if "doubt" in inner else ""
        line += " !" if inner.get("confirmed") == "yes" else ""
        return line + (f" # {typed(inner['note'])}" if "note" in inner else "")
    return ", ".join(f"{fibre} {share}" for fibre, share in inner.items())


def values_of(path):
    """Each line of a record that holds a value: name and value as written."""
    lines = path.read_text(encoding="utf-8").splitlines()
    return dict(match.groups() for match in map(LINE.match, lines) if match)


def answers(blank, record):
    """The lines that are typed for a record, in the order of a blank sheet: head, then questions."""
    values = values_of(record)
    shoe = pairs(values["shoe"])
    lines = [values["date"], values["observer"], values["client"], shoe["label"], shoe["marked"], values.get("note", "")]
    in_order = [name for name in questions(blank)]
    for name, sided in in_order:
        value = values.get(name)
        if value is None:
            lines += ["", ""] if sided else [""]
        elif sided and value.startswith("{left:"):
            sides = pairs(value)
            lines += [typed(sides["left"]), typed(sides["right"])]
        elif sided:
            lines.append(f"both {typed(value)}")
        else:
            lines.append(typed(value))
    return lines


def questions(blank):
    """The questions of a blank sheet in order, each with whether it has sides."""
    body = blank[blank.index("\nsafety:"):]
    for match in filter(None, map(LINE.match, body.splitlines())):
        yield match[1], match[2].startswith("{left:")


def filled(blank, record):
    """A blank sheet with the values of a record written in by hand."""
    values = values_of(record)

    def line(text):
        match = LINE.match(text)
        name = match[1] if match else None
        return f"  {name}: {values[name]}" if name in values and name != "rules" else text

    return "\n".join(map(line, blank.splitlines())) + "\n"
