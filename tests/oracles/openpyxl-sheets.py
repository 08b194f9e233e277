# Reads a workbook from standard input with openpyxl and prints what it found as JSON.
import io
import json
import sys

from openpyxl import load_workbook

book = load_workbook(io.BytesIO(sys.stdin.buffer.read()))
sheets = [
    {
        "title": sheet.title,
        "frozen": sheet.freeze_panes,
        "widths": {key: column.width for key, column in sheet.column_dimensions.items()},
        "cells": [
            [[cell.data_type, cell.value] for cell in row] for row in sheet.iter_rows()
        ],
        "wrapped": [
            bool(cell.alignment.wrap_text) for row in sheet.iter_rows(2, 2) for cell in row
        ],
    }
    for sheet in book.worksheets
]
json.dump(sheets, sys.stdout)
