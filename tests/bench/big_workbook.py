#!/usr/bin/python3
"""A workbook of 10,000 rows of kit for exchange_benchmark: big_workbook.py FILE.xlsx [ROWS]"""
import datetime
import sys

import xlsxwriter

rows = int(sys.argv[2]) if len(sys.argv) > 2 else 10000
book = xlsxwriter.Workbook(sys.argv[1])
sheet = book.add_worksheet("Kit")
day = book.add_format({"num_format": "dd/mm/yyyy"})
sheet.write_row(0, 0, ["What", "Size", "Location", "Made", "Expiry", "Serial No.", "Status", "Remarks"])
for i in range(1, rows + 1):
    sheet.write_row(i, 0, [f"Kit type {i % 40}", "SML"[i % 3], f"Shelf {i % 200}"])
    sheet.write_datetime(i, 3, datetime.datetime(2015 + i % 10, 1 + i % 12, 1 + i % 28), day)
    sheet.write(i, 4, f"{1 + i % 12:02}.{2027 + i % 6}")
    if i % 2:
        sheet.write(i, 5, f"S-{i}")
    sheet.write_row(i, 6, ["ok" if i % 9 else "in repair", f"seen {i % 7} times, and noted"])
book.close()
