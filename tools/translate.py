#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Keeps resources/translations/*.ts in step with the sources; docs/translating.md says how to use it.

translate.py           writes the .ts files anew: new texts come in unfinished, with the translation
                       of a similar text that has gone where there is one; what has gone leaves
translate.py --check   changes nothing; says what is missing, unfinished or broken, and exits 1
translate.py --list    the unfinished texts only, one a line: language, context, text
--folder FOLDER        another tree than this one

blockwright_en.ts holds the plural forms only: all other English is in the sources.
"""
import argparse
import difflib
import re
import sys
from pathlib import Path
from xml.etree import ElementTree
from xml.sax.saxutils import escape

from texts import texts_of

MARKS = re.compile(r"%(?:L?\d|n)")
ALT = re.compile(r"(?<!&)&(?=[^\s&])")
FORMS = 2  # of a plural, in the languages there are


class Entry:
    def __init__(self, forms, done):
        self.forms, self.done = forms, done


def language_of(path):
    return path.stem.split("_", 1)[1]


def wanted_in(path, texts):
    return {t: f for t, f in texts.items() if t.plural or language_of(path) != "en"}


def read(path):
    """{(context, text, remark): Entry}; empty when there is no file yet."""
    entries = {}
    if not path.exists() or not path.read_text(encoding="utf-8").strip():
        return entries
    for context in ElementTree.parse(path).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            forms = [form.text or "" for form in translation.iter("numerusform")]
            key = (context.findtext("name"), message.findtext("source"),
                   message.findtext("comment") or "")
            entries[key] = Entry(forms or [translation.text or ""],
                                 translation.get("type") != "unfinished")
    return entries


def merged(wanted, old):
    """An entry for each wanted text, and how many are new."""
    kept = {(t.context, t.text, t.remark) for t in wanted}
    gone = {key[1]: e for key, e in old.items() if key not in kept}
    out, fresh = {}, 0
    for text in wanted:
        entry = old.get((text.context, text.text, text.remark))
        if entry is None:
            fresh += 1
            like = difflib.get_close_matches(text.text, gone, 1, 0.8)
            entry = Entry(list(gone[like[0]].forms) if like else [""], False)
        if text.plural:
            entry.forms = (entry.forms + [""] * FORMS)[:FORMS]
        out[text] = entry
    return out, fresh


def xml(text):
    return escape(text, {'"': "&quot;", "'": "&apos;"})


def written(language, entries, files):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{language}" sourcelanguage="en">']
    for context in ("texts", "words"):
        lines += ["<context>", f"    <name>{context}</name>"]
        for text, entry in entries.items():
            if text.context != context:
                continue
            lines.append('    <message numerus="yes">' if text.plural else "    <message>")
            lines += [f'        <location filename="../../{name}"/>' for name in files[text]]
            lines.append(f"        <source>{xml(text.text)}</source>")
            if text.remark:
                lines.append(f"        <comment>{xml(text.remark)}</comment>")
            state = "" if entry.done else ' type="unfinished"'
            body = xml(entry.forms[0])
            if text.plural:
                forms = [f"            <numerusform>{xml(f)}</numerusform>" for f in entry.forms]
                body = "\n" + "\n".join(forms) + "\n        "
            lines += [f"        <translation{state}>{body}</translation>", "    </message>"]
        lines.append("</context>")
    return "\n".join(lines + ["</TS>", ""])


def ends(text):
    return (len(text) - len(text.lstrip()), len(text) - len(text.rstrip()), text.count("\n"))


def breach(text, form):
    """What a translation may not change, or nothing."""
    if set(MARKS.findall(form)) - {"%n"} != set(MARKS.findall(text.text)) - {"%n"}:
        return "other marks such as %1"
    if not text.plural and "%n" in text.text and "%n" not in form:
        return "no %n"
    if len(ALT.findall(form)) != len(ALT.findall(text.text)):
        return "& where the source has none, or none where it has one"
    if ends(form) != ends(text.text):
        return "other blanks at an end, or other lines"
    return None


def check(path, texts):
    old, faults = read(path), []
    wanted = wanted_in(path, texts)
    for text in wanted:
        entry = old.pop((text.context, text.text, text.remark), None)
        shown = f"{path.name}, {text.context}: “{text.text}”"
        if entry is None:
            faults.append(f"{shown} is missing ({wanted[text][0]}); run tools/translate.sh")
        elif not entry.done or not all(entry.forms) or text.plural != (len(entry.forms) == FORMS):
            faults.append(f"{shown} is not translated")
        else:
            faults += {f"{shown} → “{f}”: {breach(text, f)}" for f in entry.forms if breach(text, f)}
    faults += [f"{path.name}, {key[0]}: “{key[1]}” is in no source any more; run tools/translate.sh"
               for key in old]
    return faults


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--check", action="store_true")
    parser.add_argument("--list", action="store_true")
    parser.add_argument("--folder", type=Path, default=Path(__file__).resolve().parent.parent)
    asked = parser.parse_args()
    texts = texts_of(asked.folder)
    files = sorted((asked.folder / "resources/translations").glob("blockwright_*.ts"))
    if asked.check:
        faults = [fault for path in files for fault in check(path, texts)]
        print("\n".join(faults) if faults else f"{len(texts)} texts, {len(files)} languages")
        return 1 if faults or not files else 0
    for path in files:
        wanted = wanted_in(path, texts)
        entries, fresh = merged(wanted, read(path))
        undone = [t for t, e in entries.items() if not e.done or not all(e.forms)]
        if asked.list:
            for t in undone:
                print(language_of(path), t.context, t.text.replace("\n", "\\n"), sep="\t")
            continue
        path.write_text(written(language_of(path), entries, wanted), encoding="utf-8")
        print(f"{path.name}: {len(entries)} texts, {fresh} new, {len(undone)} unfinished")
    return 0


if __name__ == "__main__":
    sys.exit(main())
