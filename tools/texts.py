#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The texts in the sources that a person reads in the window or on a sheet.

texts.py FOLDER prints them as JSON, one a line.

In the rooms with Qt a text is what is handed to tr(), translate() and the like. The engine has no such
function (docs/decisions/0003-source-sentences.md): there every literal of two words or more is a text,
and a single word where it is a whole message. Words that fill the gaps of a sentence, such as muscles,
are kept apart, in the context "words": a name that a coach gave is looked up there only.
"""
import json
import re
import sys
from pathlib import Path
from typing import NamedTuple

# Rooms of src.
ENGINE = ("core", "interchange", "store", "edit")
WITH_QT = ("sheets", "desk")
# The function, and which of its arguments is the text.
CALLS = {"tr": 0, "sheetSay": 0, "QT_TR_NOOP": 0, "translate": 1,
         "QT_TRANSLATE_NOOP": 1}
# Every literal of these files is such a word.
WORD_LISTS = ("include/blockwright/model/vocabulary.hpp", "src/core/model/vocabulary.cpp",
              "src/core/rules/book/large_muscles.hpp")
# Units of limits and the like, which are a word wherever they stand.
UNITS = {"sets", "weeks", "months", "days", "none"}
# What is written for machines, and the names of papers.
LEFT_OUT = ("src/interchange/calendar.cpp", "src/core/ledger/formula.cpp",
            "src/core/model/board_text.cpp")
NO_TEXT_IN = {"logic_error", "runtime_error", "QStringLiteral", "QLatin1String", "setProperty"}
PHRASE = re.compile(r"^\d \([a-z ]+\)$|(^|[^<])\b[A-Za-z%][^\s]* +[A-Za-z%“(0-9–-]")
WORD = re.compile(r"[A-Za-z][A-Za-z -]*")
LETTER = re.compile(r"[^\W\d_]")
FOR_MACHINES = re.compile(
    r"^\s*(SELECT|INSERT|DROP|DELETE|UPDATE|PRAGMA|CREATE|VACUUM|BEGIN|SQLite)\b|[@<>]|^[ ,;]| $")

TOKEN = re.compile(r'''
    //[^\n]*|/\*.*?\*/                                  # left out
  | R"(?P<mark>[^(\s"]*)\((?P<raw>.*?)\)(?P=mark)"
  | "(?P<text>(?:[^"\\\n]|\\.)*)"
  | '(?:[^'\\\n]|\\.)+'
  | ^[ \t]*\#[^\n]*
  | [A-Za-z_]\w*|\d[\w.']*|::|->|[^\s]
''', re.VERBOSE | re.DOTALL | re.MULTILINE)


class Text(NamedTuple):
    context: str  # "texts" or "words"
    text: str
    remark: str = ""
    plural: bool = False


ESCAPE = re.compile(rb"\\(x[0-9a-fA-F]{1,2}|u[0-9a-fA-F]{4}|[0-7]{1,3}|.)", re.DOTALL)
PLAIN = {b"n": b"\n", b"t": b"\t", b"r": b"\r"}


def unescaped(text):
    def one(m):
        code = m.group(1)
        if code[:1] == b"x" and len(code) > 1:
            return bytes([int(code[1:], 16)])
        if code[:1] == b"u" and len(code) == 5:
            return chr(int(code[1:], 16)).encode()
        if code[:1].isdigit():
            return bytes([int(code, 8)])
        return PLAIN.get(code, code)
    return ESCAPE.sub(one, text.encode()).decode("utf-8", "replace")


def tokens(source):
    """Literals as ("text", value), all else as itself; neighbouring literals are one."""
    out = []
    for m in TOKEN.finditer(source):
        word = m.group(0)
        if word.startswith(("//", "/*")) or word.lstrip().startswith("#"):
            continue
        if m.group("text") is not None or m.group("raw") is not None:
            value = m.group("raw") if m.group("raw") is not None else unescaped(m.group("text"))
            if out and isinstance(out[-1], tuple):
                out[-1] = ("text", out[-1][1] + value)
            else:
                out.append(("text", value))
        else:
            out.append(word)
    return out


def closing(seen, at):
    """Where the bracket opened at `at` closes."""
    depth = 0
    for i in range(at, len(seen)):
        if seen[i] in ("(", "{", "["):
            depth += 1
        elif seen[i] in (")", "}", "]"):
            depth -= 1
            if depth == 0:
                return i
    return len(seen)


def arguments(seen, at):
    """The tokens of each argument of the call whose bracket is at `at`."""
    out, depth = [[]], 0
    for i in range(at, closing(seen, at)):
        if seen[i] in ("(", "{", "["):
            depth += 1
        elif seen[i] in (")", "}", "]"):
            depth -= 1
        if seen[i] == "," and depth == 1:
            out.append([])
        elif i > at:
            out[-1].append(seen[i])
    return out


def literals(part):
    return [t[1] for t in part if isinstance(t, tuple)]


def words_of(part):
    return {t for t in part if isinstance(t, str)}


def called_texts(seen):
    """What is handed to CALLS. The remark beside a text counts where it has no word of its own."""
    for i, word in enumerate(seen[:-1]):
        if not isinstance(word, str) or word not in CALLS or seen[i + 1] != "(":
            continue
        at, args = CALLS[word], arguments(seen, i + 1)
        if len(args) <= at:
            continue
        plural = len(args) > at + 2
        remark = "".join(literals(args[at + 1])) if len(args) > at + 1 else ""
        for text in literals(args[at]) if CALLS.keys().isdisjoint(words_of(args[at])) else []:
            wordless = not LETTER.search(re.sub(r"%[\dn]", "", text))
            if not wordless or remark:
                yield Text("texts", text, remark if wordless else "", plural)


def engine_texts(seen):
    handed = 0  # the end of a call, whose texts are told already
    for i, token in enumerate(seen):
        if not isinstance(token, tuple):
            if token in CALLS and seen[i + 1:i + 2] == ["("]:
                handed = max(handed, closing(seen, i + 1))
            continue
        text, before, after = token[1], seen[max(0, i - 2):i], seen[i + 1:i + 4]
        if i < handed:
            continue
        if len(before) == 2 and before[1] in ("(", "{") and before[0] in NO_TEXT_IN:
            continue
        if "+" in (before[-1:] + after[:1]) or FOR_MACHINES.search(text):
            continue
        if text in UNITS:
            yield Text("words", text)
        elif before[-1:] == ["return"] and after[:1] == [";"] and WORD.fullmatch(text):
            yield Text("words", text.replace("-", " "))
        elif PHRASE.search(text) and LETTER.search(re.sub(r"%\d", "", text)):
            yield Text("texts", text)
        elif before[-1:] == ["{"] and after == [",", "{", "}"] and LETTER.search(text):
            yield Text("texts", text)


def texts_of(folder):
    """{text: files it stands in} of the sources below `folder`, sorted."""
    found = {}
    for path in sorted([*Path(folder).glob("src/**/*.[ch]pp"), *Path(folder).glob("include/**/*.hpp")]):
        name = path.relative_to(folder).as_posix()
        room = name.split("/")[1]
        if name in LEFT_OUT or room not in ENGINE + WITH_QT and name not in WORD_LISTS:
            continue
        seen = tokens(path.read_text(encoding="utf-8"))
        pairs = [] if name in WORD_LISTS else list(engine_texts(seen))
        if room in WITH_QT:
            pairs += called_texts(seen)
        if name in WORD_LISTS:
            pairs += [Text("words", word.replace("-", " ")) for word in literals(seen)]
        for text in pairs:
            found.setdefault(text, set()).add(name)
    plural = {t.text for t in found if t.plural}
    return {t: sorted(found[t]) for t in sorted(found) if t.plural or t.text not in plural}


if __name__ == "__main__":
    for text, files in texts_of(Path(sys.argv[1])).items():
        print(json.dumps({**text._asdict(), "files": files}, ensure_ascii=False))
