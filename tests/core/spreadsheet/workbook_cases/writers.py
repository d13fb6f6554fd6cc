"""The three writers behind one function each: rows of cells into a file. None leaves a cell empty."""
import datetime

import openpyxl
import xlsxwriter
from odf import opendocument, style, table, text, number


class Cell:
    """A value with a number format, or merged over more rows and columns."""

    def __init__(self, value, format=None, rows=1, columns=1):
        self.value, self.format, self.rows, self.columns = value, format, rows, columns


def cell(value):
    return value if isinstance(value, Cell) else Cell(value)


def by_openpyxl(rows, title="Kit", **more):
    return lambda path: openpyxl_book([(title, rows)], path, **more)


def openpyxl_book(sheets, path, hidden=(), from1904=False):
    book = openpyxl.Workbook()
    book.remove(book.active)
    if from1904:
        book.epoch = openpyxl.utils.datetime.CALENDAR_MAC_1904
    for title, rows in sheets:
        sheet = book.create_sheet(title)
        if title in hidden:
            sheet.sheet_state = "hidden"
        for r, row in enumerate(rows, 1):
            for c, each in enumerate(map(cell, row), 1):
                if each.value is None:
                    continue
                there = sheet.cell(r, c, each.value)
                if each.format:
                    there.number_format = each.format
                if each.rows > 1 or each.columns > 1:
                    sheet.merge_cells(start_row=r, start_column=c, end_row=r + each.rows - 1, end_column=c + each.columns - 1)
    book.save(path)


def by_xlsxwriter(rows, title="Kit", **more):
    return lambda path: xlsxwriter_book([(title, rows)], path, **more)


def xlsxwriter_book(sheets, path, hidden=(), **options):
    book = xlsxwriter.Workbook(path, options)
    for title, rows in sheets:
        sheet = book.add_worksheet(title)
        for r, row in enumerate(rows):
            for c, each in enumerate(map(cell, row)):
                if each.value is not None:
                    put(book, sheet, r, c, each)
        if title in hidden:
            sheet.hide()
    if hidden:
        book.worksheets()[-1].activate()
        book.worksheets()[-1].set_first_sheet()
    book.close()


def put(book, sheet, r, c, each):
    form = book.add_format({"num_format": each.format} if each.format else {})
    if isinstance(each.value, (datetime.date, datetime.datetime)) and not each.format:
        form = book.add_format({"num_format": "yyyy-mm-dd"})
    if each.rows > 1 or each.columns > 1:
        sheet.merge_range(r, c, r + each.rows - 1, c + each.columns - 1, each.value, form)
    elif isinstance(each.value, tuple) and each.value[0] == "rich":
        bold = book.add_format({"bold": True})
        sheet.write_rich_string(r, c, bold, each.value[1], each.value[2])
    elif isinstance(each.value, tuple):
        sheet.write_formula(r, c, each.value[0], form, each.value[1])
    else:
        sheet.write(r, c, each.value, form)


def by_odfpy(rows, title="Kit"):
    return lambda path: odfpy_book([(title, rows)], path)


def odf_date_style(book, name, parts):
    date = number.DateStyle(name=name + "format")
    for part in parts:
        date.addElement(part())
    book.automaticstyles.addElement(date)
    book.automaticstyles.addElement(style.Style(name=name, family="table-cell", datastylename=name + "format"))


def odfpy_book(sheets, path):
    book = opendocument.OpenDocumentSpreadsheet()
    odf_date_style(book, "day", [number.Day, number.Month, number.Year])
    odf_date_style(book, "month", [number.Month, number.Year])
    for title, rows in sheets:
        sheet = table.Table(name=title)
        # As office programs do: what is empty is repeated to the end of the sheet.
        for row in rows:
            line = table.TableRow()
            for each in map(cell, row):
                line.addElement(odf_cell(each))
            line.addElement(table.TableCell(numbercolumnsrepeated=1000))
            sheet.addElement(line)
        last = table.TableRow(numberrowsrepeated=1000000)
        last.addElement(table.TableCell(numbercolumnsrepeated=1024))
        sheet.addElement(last)
        book.spreadsheet.addElement(sheet)
    book.save(path)


def odf_cell(each):
    value, more = each.value, {}
    if each.rows > 1 or each.columns > 1:
        more = {"numberrowsspanned": each.rows, "numbercolumnsspanned": each.columns}
    if each.format:
        more["stylename"] = each.format
    if value is None:
        return table.TableCell()
    if value == "covered":
        return table.CoveredTableCell()
    if isinstance(value, tuple):
        more["formula"], value = "of:=" + value[0], value[1]
    if isinstance(value, bool):
        return table.TableCell(valuetype="boolean", booleanvalue="true" if value else "false", **more)
    if isinstance(value, (int, float)):
        return table.TableCell(valuetype="float", value=value, **more)
    if isinstance(value, datetime.date):
        return table.TableCell(valuetype="date", datevalue=value.isoformat(), **more)
    made = table.TableCell(valuetype="string", **more)
    for line in value.split("\n"):
        made.addElement(text.P(text=line))
    return made
