"""Files that cannot be read at all; each has its readable twin in tables.py."""
import io
import os
import struct
import zipfile

import openpyxl
from odf import opendocument, table, text


def good_xlsx(rows=40):
    book = openpyxl.Workbook()
    book.active.append(["What", "Note"])
    for i in range(rows):
        book.active.append(["Knife", f"number {i}"])
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def written(make):
    def write(path):
        with open(path, "wb") as out:
            out.write(make())
    return write


def changed_parts(changes):
    """The good workbook with some parts replaced by what the function makes of them."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(good_xlsx())) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            new.writestr(name, changes.get(name, lambda part: part)(old.read(name)))
    return out.getvalue()


SHEET = "xl/worksheets/sheet1.xml"


def of_sheet(change):
    return lambda: changed_parts({SHEET: lambda part: change(part.decode()).encode()})


def flipped():
    """One bit of a stored part, which unpacks without complaint: only the CRC-32 knows."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(good_xlsx())) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_STORED) as new:
        for name in old.namelist():
            new.writestr(name, old.read(name))
    data = bytearray(out.getvalue())
    data[data.index(b"number 7")] ^= 1
    return bytes(data)


def directory_entry(data, name):
    """Where the entry of that part begins in the central directory."""
    at = data.rindex(name.encode())
    return at - 46


def with_size(size):
    data = bytearray(good_xlsx())
    struct.pack_into("<I", data, directory_entry(data, SHEET) + 24, size)
    return bytes(data)


def locked():
    data = bytearray(good_xlsx())
    at = directory_entry(data, SHEET) + 8
    struct.pack_into("<H", data, at, struct.unpack_from("<H", data, at)[0] | 1)
    return bytes(data)


def bomb():
    """120 MB of blanks in a cell, which 120 kB hold."""
    return changed_parts({SHEET: lambda part: part.replace(b"number 7", b" " * (120 << 20) + b"x")})


def compound(stream):
    return b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(1024) + stream.encode("utf-16-le") + bytes(1024)


def encrypted_ods():
    plain = io.BytesIO()
    book = opendocument.OpenDocumentSpreadsheet()
    book.spreadsheet.addElement(table.Table(name="Kit"))
    book.save(plain)
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(plain.getvalue())) as old, zipfile.ZipFile(out, "w") as new:
        for name in old.namelist():
            part = old.read(name)
            if name == "META-INF/manifest.xml":
                part = part.replace(b"</manifest:manifest>", b'<manifest:file-entry manifest:full-path="content.xml">'
                                    b'<manifest:encryption-data manifest:checksum="x"/></manifest:file-entry></manifest:manifest>')
            new.writestr(name, part if name != "content.xml" else os.urandom(200))
    return out.getvalue()


def ods_repeating(attribute):
    book = opendocument.OpenDocumentSpreadsheet()
    sheet = table.Table(name="Kit")
    row = table.TableRow(numberrowsrepeated=2000000000) if attribute == "rows" else table.TableRow()
    cell = table.TableCell(valuetype="string", **({"numbercolumnsrepeated": 2000000000} if attribute == "columns" else {}))
    cell.addElement(text.P(text="What"))
    row.addElement(cell)
    sheet.addElement(row)
    book.spreadsheet.addElement(sheet)
    out = io.BytesIO()
    book.write(out)
    return out.getvalue()


def empty_xlsx():
    out = io.BytesIO()
    openpyxl.Workbook().save(out)
    return out.getvalue()


def far(cell):
    book = openpyxl.Workbook()
    book.active["A1"] = "What"
    book.active[cell] = "far away"
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def many_merges():
    merges = "".join(f'<mergeCell ref="A2:A{200000 - i}"/>' for i in range(30000))
    rows = "".join(f'<row r="{i}"><c r="B{i}"><v>1</v></c></row>' for i in range(100, 5000))
    return of_sheet(lambda part: part.replace("</sheetData>", f"{rows}</sheetData><mergeCells>{merges}</mergeCells>"))()


def many_sheets_of_one_part():
    """Ten thousand sheets that are all the same part of 2 MB."""
    big = b'<worksheet><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData><!--' + b"x" * (2 << 20) + b"--></worksheet>"
    sheet = b'<sheet xmlns="a" name="K" sheetId="1" id="rId1"/>'
    return changed_parts({SHEET: lambda part: big, "xl/workbook.xml": lambda part: part.replace(b"</sheets>", sheet * 9000 + b"</sheets>")})


def fails(code, **more):
    return {"as": "items", "error": code, **more}


UNREADABLE = fails("SpreadsheetUnreadable")
CASES = [
    ("good.xlsx", written(good_xlsx), {"as": "items", "rows": [{"kit_type": "Knife", "note": f"number {i}"} for i in range(40)]}),
    ("cut_short.xlsx", written(lambda: good_xlsx()[:-300]), UNREADABLE),
    ("without_start.xlsx", written(lambda: good_xlsx()[200:]), UNREADABLE),
    ("flipped.xlsx", written(flipped), UNREADABLE),
    ("size_too_small.xlsx", written(lambda: with_size(500)), UNREADABLE),
    ("size_too_large.xlsx", written(lambda: with_size(400 << 20)), UNREADABLE),
    ("claims_too_much.xlsx", written(lambda: with_size(600 << 20)), fails("SpreadsheetTooLarge")),
    ("locked_part.xlsx", written(locked), fails("SpreadsheetProtected")),
    ("bomb.xlsx", written(bomb), UNREADABLE),
    ("long_text.xlsx", written(of_sheet(lambda part: part.replace("number 7", "long " * 500))),
     {"as": "items", "refused": [["B9", "TextTooLong"]]}),
    # As Excel saves a formula whose value is an empty text.
    ("empty_formula.xlsx", written(of_sheet(lambda part: part.replace(
        "</sheetData>", '<row r="99"><c r="A99" t="inlineStr"><is><t>Flare</t></is></c><c r="B99" t="str"><f>A1</f><v></v></c></row></sheetData>'))),
     {"as": "items", "rows": [{"kit_type": "Flare"}] + [{"kit_type": "Knife", "note": f"number {i}"} for i in range(40)]}),
    ("encrypted.xlsx", written(lambda: compound("EncryptedPackage")), fails("SpreadsheetProtected")),
    ("encrypted.ods", written(encrypted_ods), fails("SpreadsheetProtected")),
    ("old.xls", written(lambda: compound("Workbook")), fails("SpreadsheetOldKind")),
    ("empty.xlsx", written(empty_xlsx), fails("SpreadsheetEmpty")),
    ("empty.csv", written(lambda: b""), fails("SpreadsheetEmpty")),
    ("blank.csv", written(lambda: b" ;;\r\n\r\n"), fails("SpreadsheetEmpty")),
    ("letter.pdf", written(lambda: b"%PDF-1.4\n"), fails("SpreadsheetOtherKind")),
    ("text.xlsx", written(lambda: b"What,Note\n"), UNREADABLE),
    ("binary.csv", written(lambda: b"What,Note\x00\x01\x02,abc"), UNREADABLE),
    ("no_zip_of_ours.xlsx", written(lambda: zipped("a.txt")), fails("SpreadsheetOtherKind")),
    ("no_xml.xlsx", written(of_sheet(lambda part: part.replace("</row>", "<row>"))), UNREADABLE),
    ("document_type.xlsx", written(of_sheet(lambda part: '<!DOCTYPE x SYSTEM "a">' + part)), UNREADABLE),
    ("backwards.xlsx", written(of_sheet(lambda part: part.replace('r="9"', 'r="2"').replace('r="A9"', 'r="A2"').replace('r="B9"', 'r="B2"'))),
     UNREADABLE),
    ("no_number.xlsx", written(of_sheet(lambda part: part.replace("</sheetData>", '<row r="99"><c r="A99"><v>1e</v></c></row></sheetData>'))),
     UNREADABLE),
    ("no_such_text.xlsx", written(of_sheet(lambda part: part.replace("</sheetData>", '<row r="99"><c r="A99" t="s"><v>77</v></c></row></sheetData>'))),
     UNREADABLE),
    ("too_wide.xlsx", written(lambda: far("IW1")), fails("SpreadsheetTooWide")),
    ("wide.xlsx", written(lambda: far("IV1")), {"as": "items", "rows": []}),
    ("too_long.xlsx", written(lambda: far("B200001")), fails("SpreadsheetTooLong")),
    ("long.xlsx", written(lambda: far("B200000")), {"as": "items", "rows": []}),
    ("repeated_rows.ods", written(lambda: ods_repeating("rows")), fails("SpreadsheetTooLong")),
    ("repeated_columns.ods", written(lambda: ods_repeating("columns")), fails("SpreadsheetTooWide")),
    ("one_part_often.xlsx", written(many_sheets_of_one_part), fails("SpreadsheetTooLarge")),
    ("many_columns.csv", written(lambda: b"What" + b"," * 1000000 + b"\r\nKnife\r\n"),
     {"as": "items", "rows": [{"kit_type": "Knife"}]}),
    ("too_many_columns.csv", written(lambda: b"What" + b"," * 1000000 + b"x,,\r\nKnife\r\n"), fails("SpreadsheetTooWide")),
    ("too_many_things.csv", written(lambda: b"What;Qty\r\n" + b"Knife;1000\r\n" * 201), fails("TooManyThings")),
    ("many_merges.xlsx", written(many_merges), fails("SpreadsheetTooManyCells")),
]


def zipped(name):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as new:
        new.writestr(name, b"abc")
    return out.getvalue()
