#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads an iCalendar file with python3-icalendar and says its events as lines of JSON.

Exit 3 when that package is missing.
"""
import json
import sys

try:
    from icalendar import Calendar
except ImportError:
    sys.exit(3)

with open(sys.argv[1], "rb") as file:
    calendar = Calendar.from_ical(file.read())
for event in calendar.walk("VEVENT"):
    print(json.dumps({
        "uid": str(event["UID"]),
        "stamp": event["DTSTAMP"].dt.isoformat(),
        "start": event["DTSTART"].dt.isoformat(),
        "minutes": event["DURATION"].dt.total_seconds() / 60 if "DURATION" in event else None,
        "summary": str(event["SUMMARY"]),
        "location": str(event.get("LOCATION", "")),
        "description": str(event["DESCRIPTION"]),
        "errors": [str(error) for error in event.errors],
    }))
