#!/usr/bin/python3
"""check.py ROUNDLAY FOLDER: another program's reader and writer of XLSX (openpyxl) against `roundlay survey`.

It reads the rows to fill in as that program sees them, fills them in with its own habits (numbers as numbers, texts in
line, dates, formulas, merged cells, a second sheet), and looks at what comes back, cell by cell. Prints what is wrong;
exits 1 then.
"""

import datetime
import pathlib
import subprocess
import sys

import openpyxl

ROUNDLAY, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
HUT = """roundlay = 1
[shell]
name = "Tarnfold hut"
thickness = "7 in"
units = "imperial"
[[wall]]
name = "A"
toward = "east"
length = "18 ft"
[[wall]]
name = "B"
toward = "north"
length = "14 ft"
[[wall]]
name = "C"
toward = "west"
length = "18 ft"
[[wall]]
name = "D"
toward = "south"
length = "14 ft"
[rounds]
count = 8
pitch = "9 1/2 in"
gap = "1 in"
full_first = "A"
[notch]
kind = "full dovetail"
slope = "1:8"
[record]
denominator = 4
two_fields = "feet and inches"
numbers_in = "in"
"""
wrong = []


def check(holds, what):
    if not holds:
        wrong.append(what)


def roundlay(*words):
    return subprocess.run([ROUNDLAY, *words], cwd=FOLDER, capture_output=True, text=True, check=False)


def rows_of(sheet):
    names = [cell.value for cell in sheet[1]]
    return names, [dict(zip(names, [cell.value for cell in row])) for row in sheet.iter_rows(min_row=2)]


def first_log(sheet):
    """The rows of the house stand over it."""
    return next(r for r in range(2, sheet.max_row + 1) if sheet.cell(r, 1).value == "log")


def looks(sheet, names, rows):
    """How the rows to fill in look to the other program."""
    check(sheet.freeze_panes == "C2", f"header and tags do not stay in sight: {sheet.freeze_panes}")
    check(names[:2] == ["row", "tag"], f"columns begin with {names[:2]}")
    logs = [row for row in rows if row["row"] == "log"]
    check(len(logs) == 34, f"{len(logs)} logs instead of 34")
    check(all(row["tag"] for row in rows if row["row"] in ("log", "end", "wall")), "a row has no tag")
    log = first_log(sheet)
    height = names.index("height") + 1
    check(sheet.column_dimensions[openpyxl.utils.get_column_letter(height)].width > 6, "a column has no width")
    for cell in (sheet.cell(log, 2), sheet.cell(log, names.index("round") + 1)):
        check(cell.data_type == "s" and cell.number_format == "@", f"{cell.coordinate} is no text")
    lists = {v.formula1 for v in sheet.data_validations.dataValidation if v.type == "list"}
    check('"outside,inside,top,under"' in lists, f"no list of faces among {lists}")
    check(any('log,end,station' in one for one in lists), f"no list of rows among {lists}")


def fill_in(sheet, names):
    """As somebody types into it who knows nothing of formats; and where that is."""
    at = {name: names.index(name) + 1 for name in names}
    places = {}
    end_rows = [r for r in range(2, sheet.max_row + 1) if sheet.cell(r, 1).value == "end"]

    def put(row, column, value, style="General"):
        cell = sheet.cell(row, at[column])
        cell.number_format = style
        cell.value = value
        places[column, row] = cell.coordinate

    put(end_rows[0], "height", 7)
    put(end_rows[1], "height", "0.8.2")
    put(end_rows[2], "height", "=8+1/2")
    put(end_rows[3], "height", datetime.date(2026, 10, 3), "yyyy-mm-dd")
    put(end_rows[4], "height", 3.1)
    put(end_rows[5], "height", 9)
    put(end_rows[6], "note", "rot < 2 in & \"soft\", é")
    sheet.merge_cells(start_row=end_rows[7], end_row=end_rows[7] + 1, start_column=at["joint"], end_column=at["joint"])
    last = sheet.max_row + 1
    for column, value in (("row", "moisture"), ("tag", sheet.cell(first_log(sheet), at["tag"]).value), ("percent", 18.5)):
        put(last, column, value)
    tag = sheet.cell(first_log(sheet), at["tag"]).value
    for row, (percent, style) in enumerate(((0.31, "0%"), (0.185, "0.0%")), last + 1):
        put(row, "row", "moisture")
        put(row, "tag", tag)
        put(row, "percent", percent, style)
        put(row, "on", datetime.date(2026, 10, 3), "d mmmm yyyy")
    return end_rows, places


def taken(end_rows, names):
    """What the document has now, told as CSV by the program that is looked at."""
    table = roundlay("survey", "found.roundlay", "--to", "out.xlsx", "--force")
    check(table.returncode == 0, "the record cannot be written again: " + table.stderr)
    _, rows = rows_of(openpyxl.load_workbook(FOLDER / "out.xlsx").active)
    heights = [row.get("height") for row in rows if row["row"] == "end"]
    check(heights[:6] == ["7", "0.8.2", None, None, "3.1", "9"], f"heights came back as {heights[:6]}")
    notes = [row.get("note") for row in rows if row["row"] == "end"]
    check(notes[6] == "rot < 2 in & \"soft\", é", f"a note came back as {notes[6]}")
    check([row.get("percent") for row in rows if row["row"] == "moisture"] == ["18.5", "31", "18.5"], "a moisture is lost")
    dates = [row.get("on") for row in rows if row["row"] == "moisture"]
    check(dates == [None, "2026-10-03", "2026-10-03"], f"dates came back as {dates}")


def told(told_text, end_rows, places):
    for row, column, words in ((end_rows[2], "height", "is a formula (=8+1/2)"),
                               (end_rows[3], "height", "made a date or a time"),
                               (end_rows[4], "height", "3.1 was typed as a number")):
        where = f"filled.xlsx:{row}: "
        line = next((line for line in told_text.splitlines() if line.startswith(where) and words in line), None)
        check(line is not None, f"nothing tells {words!r} at {where}")
        check(line is None or f'sheet "survey", {places[column, row]}: ' in line, f"its cell is not told: {line}")
    check("these cells are merged" in told_text, "merged cells are not told")
    check('sheet "remarks" is left out' in told_text, "a second sheet is not told")


def main():
    FOLDER.mkdir(parents=True, exist_ok=True)
    (FOLDER / "hut.roundlay").write_text(HUT)
    blank = roundlay("survey", "hut.roundlay", "--blank", "--to", "blank.xlsx", "--force")
    check(blank.returncode == 0, "no rows to fill in: " + blank.stderr)
    book = openpyxl.load_workbook(FOLDER / "blank.xlsx")
    sheet = book.active
    names, rows = rows_of(sheet)
    looks(sheet, names, rows)
    end_rows, places = fill_in(sheet, names)
    book.create_sheet("remarks")["A1"] = "seen from the ladder"
    book.save(FOLDER / "filled.xlsx")
    book.epoch = openpyxl.utils.datetime.CALENDAR_MAC_1904
    book.save(FOLDER / "from-1904.xlsx")
    took = roundlay("survey", "hut.roundlay", "--rows", "from-1904.xlsx", "--to", "found.roundlay", "--force")
    taken(end_rows, names)
    took = roundlay("survey", "hut.roundlay", "--rows", "filled.xlsx", "--to", "found.roundlay", "--force")
    check(took.returncode == 1, f"exit code {took.returncode}")
    told(took.stderr, end_rows, places)
    taken(end_rows, names)
    for line in wrong:
        print(line)
    if not wrong:
        print("openpyxl and roundlay read one another")
    return 1 if wrong else 0


sys.exit(main())
