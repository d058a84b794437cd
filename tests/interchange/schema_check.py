# SPDX-License-Identifier: GPL-3.0-or-later
"""schema_check.py SCHEMA LIST: for each line of LIST, one bundle as JSON, prints "yes" when the schema
accepts it, else "no" and why. Ends with 77 when the jsonschema module is not installed."""
import json
import sys

try:
    from jsonschema import Draft202012Validator
except ImportError:
    sys.exit(77)


def verdict(validator, line):
    try:
        bundle = json.loads(line)
    except ValueError as fault:
        return "no, not JSON: %s" % fault
    fault = next(validator.iter_errors(bundle), None)
    return "yes" if fault is None else "no, %s: %s" % (fault.json_path, fault.message[:200])


with open(sys.argv[1], encoding="utf-8") as file:
    schema = json.load(file)
Draft202012Validator.check_schema(schema)
with open(sys.argv[2], encoding="utf-8") as file:
    for each in file:
        print(json.dumps(verdict(Draft202012Validator(schema), each)))
