#!/usr/bin/python3
"""lists.py ROUNDLAY FOLDER DOCUMENT...: lists.xlsx as another program (openpyxl) reads it.

Every cell is what the CSV beside it has, numbers as numbers; each formula, worked out anew here from the cells that it
names, gives the sum that is shown; headers stay in sight and have filters. Prints what is wrong; exits 1 then.
"""

import csv
import pathlib
import re
import subprocess
import sys

import openpyxl
from openpyxl.utils import range_boundaries

ROUNDLAY, FOLDER, DOCUMENTS = sys.argv[1], pathlib.Path(sys.argv[2]), sys.argv[3:]
FILES = ["cut-list", "pieces", "pegs", "order-list", "totals", "taking-down", "raising", "openings", "bores", "floors"]
wrong = []
compared = []  # sums of weights with the totals, for each document


def check(holds, what):
    if not holds:
        wrong.append(what)


def numbers_in(sheet, cells):
    left, top, right, bottom = range_boundaries(cells)
    return [sheet.cell(row, column).value for row in range(top, bottom + 1) for column in range(left, right + 1)]


def worked_out(sheet, formula, hidden=()):
    """As a spreadsheet does with those rows hidden by a filter: SUBTOTAL leaves them out, all else does not."""

    def in_sight(cells):
        left, top, right, bottom = range_boundaries(cells)
        return [0 if row in hidden else sheet.cell(row, left).value or 0 for row in range(top, bottom + 1)]

    if plain := re.fullmatch(r"=SUBTOTAL\(109,([A-Z0-9:]+)\)", formula):
        return sum(in_sight(plain[1]))
    if each := re.fullmatch(r"=SUMPRODUCT\(SUBTOTAL\(109,OFFSET\(([A-Z]+2),ROW\((\1:[A-Z0-9]+)\)-ROW\(\1\),0\)\),([A-Z0-9:]+)\)", formula):
        return sum(a * (b or 0) for a, b in zip(in_sight(each[2]), numbers_in(sheet, each[3])))
    raise ValueError(formula)


def is_same(cell, text):
    """A number may stand in the sheet without zeros behind its point."""
    if isinstance(cell, (int, float)):
        return text != "" and float(text) == cell
    return (cell or "") == text.replace("\r\n", "\n")


def check_rows(sheet, path, where):
    rows = list(csv.reader(path.open(encoding="utf-8", newline="")))
    for r, row in enumerate(rows, 1):
        for c, text in enumerate(row, 1):
            cell = sheet.cell(r, c).value
            check(is_same(cell, text) or isinstance(cell, str) and cell == text.replace(" ", "; "),
                  f"{where}, row {r}, column {c}: {cell!r} where the CSV has {text!r}")
    check(sheet.freeze_panes == "B2", f"{where}: its header does not stay in sight")
    if len(rows) > 1:
        check(sheet.auto_filter.ref is not None, f"{where}: no filter")


def check_filtered(sheet, sum_cell, where):
    """Half of the rows hidden: the sum is that of the other half."""
    last = sum_cell.row - 2
    hidden = set(range(2, last + 1, 2))
    odd = {row: sheet.cell(row, sum_cell.column).value or 0 for row in range(2, last + 1) if row not in hidden}
    heads = [cell.value for cell in sheet[1]]
    if "quantity" in heads and heads[sum_cell.column - 1] != "quantity":
        odd = {row: value * sheet.cell(row, heads.index("quantity") + 1).value for row, value in odd.items()}
    check(abs(worked_out(sheet, sum_cell.value, hidden) - sum(odd.values())) <= 1e-9 * (1 + abs(sum(odd.values()))),
          f"{where} {sum_cell.coordinate}: {sum_cell.value} of half of the rows is not their sum")


def check_sums(sheet, shown, where):
    formulas = 0
    for row in sheet.iter_rows():
        for cell in row:
            if not isinstance(cell.value, str) or not cell.value.startswith("="):
                continue
            formulas += 1
            sum_shown = shown[cell.coordinate].value
            check(abs(worked_out(sheet, cell.value) - sum_shown) <= 1e-9 * abs(sum_shown),
                  f"{where} {cell.coordinate}: {cell.value} is not {sum_shown}")
            check_filtered(sheet, cell, where)
    return formulas


def check_weights(shown, out, where):
    """The sum of all pieces by the sheet holds the range of totals.csv and is no wider than that is rounded."""
    totals = {row["what"] + " " + row["unit"]: row for row in csv.DictReader((out / "totals.csv").open(encoding="utf-8", newline=""))}
    sheet = shown.worksheets[FILES.index("cut-list")]
    heads = [cell.value for cell in sheet[1]]
    last = max(cell.row for cell in sheet["A"] if cell.value == "total")
    compared = 0
    for end, way in (("low", 1), ("high", -1)):
        told = totals.get(f"estimated {end} weight of all pieces kg")
        if not told or not told["amount"]:
            continue
        summed = sheet.cell(last, heads.index(f"estimated_weight_each_{end}_kg") + 1).value
        over = way * (summed - float(told["amount"]))
        check(-0.01 * last <= over < 5.01, f"{where}: the {end} sum is {summed}, the totals say {told['amount']}")
        compared += 1
    return compared


def check_document(document):
    out = FOLDER / pathlib.Path(document).stem
    made = subprocess.run([ROUNDLAY, "export", document, "--to", str(out), "--only", "list", "--force"],
                          capture_output=True, text=True, check=False)
    check(made.returncode == 0, f"{document}: {made.stderr}")
    book, shown = (openpyxl.load_workbook(out / "lists.xlsx", data_only=values) for values in (False, True))
    files = [name for name in FILES if (out / f"{name}.csv").exists()]
    check(len(files) == len(book.sheetnames), f"{document}: sheets {book.sheetnames} for {files}")
    formulas = 0
    for name, sheet in zip(files, book):
        check_rows(sheet, out / f"{name}.csv", f"{document}, {sheet.title}")
        formulas += check_sums(sheet, shown[sheet.title], f"{document}, {sheet.title}")
    check(formulas > 10, f"{document}: {formulas} sums")
    compared.append(check_weights(shown, out, document))
    return formulas


FOLDER.mkdir(parents=True, exist_ok=True)
sums = sum(check_document(document) for document in DOCUMENTS)
check(max(compared) == 2, "no sum of weights was compared")
print("\n".join(wrong[:20]) if wrong else f"{len(DOCUMENTS)} documents, {sums} sums")
sys.exit(1 if wrong else 0)
