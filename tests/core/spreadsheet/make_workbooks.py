#!/usr/bin/python3
"""Writes workbooks with writers that share no code with the project (openpyxl, XlsxWriter, odfpy), and truth.json: how each
is to be read and what must come of it. make_workbooks.py FOLDER

The register that they meet stands in club_sheet_test.cpp: boats Heron, Dabchick; places Boat shed, Store; kit types Life jacket
(S, M, L), Helmet, Flare, Knife, Throw line; people Anna Berg, Ben Carter."""
import json
import os
import sys

from workbook_cases import files, spoiled, tables

folder = sys.argv[1]
os.makedirs(folder, exist_ok=True)
truth = []
for module in (tables, files, spoiled):
    for name, write, expected in module.CASES:
        write(os.path.join(folder, name))
        truth.append({"file": name, **expected})
assert len({each["file"] for each in truth}) == len(truth), "two cases of one name"
with open(os.path.join(folder, "truth.json"), "w", encoding="utf-8") as out:
    json.dump(truth, out, ensure_ascii=False, indent=1)
