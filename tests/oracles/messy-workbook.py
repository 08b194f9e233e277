"""Makes messy-workbook.xlsx with openpyxl, and messy-workbook-saved.xlsx of it with Gnumeric.

A checklist as people keep one: title rows above the headings, merged cells, numbers kept as text and
as numbers, a date that was typed as 1/2, errors, formulas, stray spaces, a hidden sheet, totals.
Run: python3 tests/oracles/messy-workbook.py; ssconvert tests/oracles/messy-workbook.xlsx
tests/oracles/messy-workbook-saved.xlsx
"""

import datetime
from pathlib import Path

from openpyxl import Workbook

HERE = Path(__file__).parent
book = Workbook()
sheet = book.active
sheet.title = "Cards"
sheet["A1"] = "The Lake, series one"
sheet.merge_cells("A1:G1")
sheet.append([])
sheet.append(["Subset ", "No.", " NAME\u00a0", "Copy", "SP?", "Berth", "Print run", "Sketch", None])

ROWS = [
    ["Base", "3", "\u00a0 The Weir \u200b", "Water over \u201cthe sill\u201d.", "yes", "Lock two", 250],
    [None, 4, "The Bell", "First line.\n\nSecond line.", "no", "007", 1000],
    [None, "5", "The Rope", "Hemp.", None, "1/2", None],
    [None, 6, "The Ferry", "Padded.", None, None, None],
    [None, datetime.date(2027, 2, 1), "The Date", "Typed as 1/2.", None, None, None],
    [None, "7", "The Oar", "#REF!", None, None, None],
    [None, "8", "The Sluice", "=1+1", None, None, None],
    [None, "9", "The\u200bGate", "Hidden sign.", None, None, None],
    [None, "10", "The Post", "'=A1", None, None, None],
    [],
    ["Extra", "X-2", "The Map", "Ink.", "YES", None, None],
    ["../../etc", "X-3", "The Path", "Out.", None, None, None],
    ["Extar", "X-3", "The Slip", "Misspelt subset.", None, None, None],
    ["Extra", "X-2", "The Map again", "Twice.", None, None, None],
    ["Total", 12, None, None, None, None, 1250],
]
for row in ROWS:
    sheet.append(row)
sheet.merge_cells("A4:A12")
sheet["B7"].number_format = "000"
sheet["B8"].number_format = "d/m"
sheet["D9"].data_type = "e"
for address in ("B4", "F5", "F6", "D13"):
    sheet[address].number_format = "@"
sheet["D13"].data_type = "s"
sheet["D10"] = '="Water, " & "twice"'

hidden = book.create_sheet("Old")
hidden.sheet_state = "hidden"
hidden.append(["Number", "Name"])
hidden.append(["11", "The Old One"])
notes = book.create_sheet("Notes")
notes.append(["Call the printer"])
book.save(HERE / "messy-workbook.xlsx")
