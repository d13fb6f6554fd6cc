"""Workbooks that are read, and those of which single rows are refused."""
from datetime import date, datetime

from .writers import Cell, by_odfpy, by_openpyxl, by_xlsxwriter, openpyxl_book, xlsxwriter_book

JACKET, HELMET, FLARE, KNIFE, LINE = "Life jacket", "Helmet", "Flare", "Knife", "Throw line"


def items(*rows, **more):
    return {"as": "items", "rows": list(rows), **more}


def dated(*days):
    """One flare for each day, in the column `stamped`."""
    return items(*({"kit_type": FLARE, "stamped": day} for day in days))


def refused(cell, code, **more):
    return {"as": "items", "refused": [[cell, code]], **more}


HEADINGS = ["What", "Size", "Location", "Made", "Expiry", "Serial No.", "Status", "Remarks"]
ENGLISH = [HEADINGS,
           [JACKET, "M", "Boat shed", date(2020, 5, 17), None, "A-100", "ok", "bought with the grant"],
           [HELMET, None, "heron", None, None, None, "in repair", None],
           [FLARE, None, "Store", None, "2027-03", 4711, "good", None]]
ENGLISH_ROWS = [
    {"kit_type": JACKET, "size": "M", "place": "Boat shed", "made": "2020-05-17", "serial": "A-100", "state": "serviceable",
     "note": "bought with the grant"},
    {"kit_type": HELMET, "boat": "Heron", "state": "unserviceable"},
    {"kit_type": FLARE, "place": "Store", "stamped": "2027-03", "serial": "4711", "state": "serviceable"}]
GERMAN = [["Gegenstand", "Größe", "Standort", "Baujahr", "Ablaufdatum", "Seriennummer", "Zustand", "Bemerkung", "Farbe"],
          [JACKET, "L", "Dabchick", 2019, None, "X1", "einsatzbereit", "Grün & \"neu\"", "rot"],
          [KNIFE, None, "Store", None, None, None, "fehlt", None, None],
          [FLARE, None, "Boat shed", None, "März 2028", None, "beschädigt", None, "rot"]]
GERMAN_ROWS = [
    {"kit_type": JACKET, "size": "L", "boat": "Dabchick", "made": "2019", "serial": "X1", "state": "serviceable",
     "note": "Grün & \"neu\""},
    {"kit_type": KNIFE, "place": "Store", "state": "missing"},
    {"kit_type": FLARE, "place": "Boat shed", "stamped": "2028-03", "state": "unserviceable"}]
GERMAN_LAYOUT = {"heading_row": 1, "left_out": ["Farbe"],
                 "columns": {"Gegenstand": "kit_type", "Größe": "size", "Standort": "home", "Baujahr": "made",
                             "Ablaufdatum": "stamped", "Seriennummer": "serial", "Zustand": "state", "Bemerkung": "note"}}
NOTES = [["Who wants what", None], ["Anna", "new gloves"]]
FORMATTED = [["What", "Expiry"], [FLARE, Cell(date(2027, 3, 14), "yyyy-mm-dd")], [FLARE, Cell(date(2027, 4, 1), "d.m.yy")],
             [FLARE, Cell(date(2027, 5, 1), "mmm-yy")], [FLARE, Cell(date(2027, 5, 9), "mm.yyyy")],
             [FLARE, Cell(date(2028, 1, 1), "yyyy")], [FLARE, Cell(datetime(2029, 6, 7, 8, 30), "d/m/yyyy h:mm")],
             [FLARE, Cell(date(2030, 2, 3), "[$-407]d. mmmm yyyy;@")]]
FORMATTED_DAYS = ["2027-03-14", "2027-04-01", "2027-05", "2027-05-09", "2028", "2029-06-07", "2030-02-03"]
OLD_DAYS = [["What", "Made"], [KNIFE, Cell(1, "d.m.yyyy")], [KNIFE, Cell(59, "d.m.yyyy")], [KNIFE, Cell(61, "d.m.yyyy")],
            [KNIFE, Cell(367, "d.m.yyyy")]]
SPANS = [[Cell("Our kit, spring", columns=4)], [], [None, "As of", date(2026, 3, 1)],
         ["What", "Location", Cell("Dates", columns=2)], [None, None, "Made", "Expiry"],
         [Cell(FLARE, rows=3), "Heron", 2023, 2027], [None, "Dabchick", 2024, 2028], [None, "Store", 2025, 2029],
         [Cell("Aboard Heron", columns=4)], [KNIFE, "Heron"]]
SPANS_ROWS = [{"kit_type": FLARE, "boat": "Heron", "made": "2023", "stamped": "2027"},
              {"kit_type": FLARE, "boat": "Dabchick", "made": "2024", "stamped": "2028"},
              {"kit_type": FLARE, "place": "Store", "made": "2025", "stamped": "2029"}, {"kit_type": KNIFE, "boat": "Heron"}]
COUNTED = [["Item", "Qty", "Where"], [FLARE, 3, "Heron"], [KNIFE, 0, "Heron"], [LINE, None, "Dabchick"], [HELMET, "2 pcs", "Store"],
           ["Total", 5, None]]
WORDS = [["Item", "State"], [KNIFE, "OK"], [KNIFE, "u/s"], [KNIFE, "Lost"], [KNIFE, "scrapped"], [KNIFE, "i.O."],
         [KNIFE, "außer Betrieb"], [KNIFE, "-"], [KNIFE, True], [KNIFE, "Written off"]]
STATES = ["serviceable", "unserviceable", "missing", "written off", "serviceable", "unserviceable", None, "serviceable",
          "written off"]
CREW = [["Name", "Role", "Weight (kg)", "Chest cm"], ["Cara Diaz", "helm", "75,5 kg", 102], ["Anna Berg", "Coxswain", 61.25, None],
        ["Dan Ek", "quartermaster", None, "98 cm"]]
CREW_ROWS = [{"person": "Anna Berg", "role": "driver", "mass_kg": "61.25"}, {"person": "Ben Carter", "role": "crew"},
             {"person": "Cara Diaz", "role": "driver", "mass_kg": "75.5", "chest_cm": "102"},
             {"person": "Dan Ek", "role": "gear officer", "chest_cm": "98"}]
GERMAN_CREW = [["Mitglied", "Funktion", "Gewicht"], ["Cara Diaz", "Bootsführerin", 75.5], ["Anna Berg", "Rettungsschwimmer", None],
               ["Dan Ek", "Gerätewart", "80"]]
FLEET = [["Boat", "Class", "Berth", "Check every (days)"], ["Heron", "Inshore", "Store", 7], ["Teal", "Inshore", None, None]]


def days_of(states):
    return [{"kit_type": KNIFE, **({"state": state} if state else {})} for state in states]


def rows_and_cell(rows, row, column, value):
    changed = [list(each) for each in rows]
    changed[row][column] = value
    return changed


CASES = [
    ("english.openpyxl.xlsx", by_openpyxl(ENGLISH), items(*ENGLISH_ROWS, layout={
        "sheet": "Kit", "heading_row": 1, "left_out": [],
        "columns": {"What": "kit_type", "Size": "size", "Location": "home", "Made": "made", "Expiry": "stamped",
                    "Serial No.": "serial", "Status": "state", "Remarks": "note"}})),
    ("english.xlsxwriter.xlsx", by_xlsxwriter(ENGLISH), items(*ENGLISH_ROWS)),
    ("english.inline.xlsx", by_xlsxwriter(ENGLISH, constant_memory=True), items(*ENGLISH_ROWS)),
    ("english.ods", by_odfpy(ENGLISH), items(*ENGLISH_ROWS)),
    ("german.openpyxl.xlsx", by_openpyxl(GERMAN), items(*GERMAN_ROWS, layout=GERMAN_LAYOUT)),
    ("german.xlsxwriter.xlsx", by_xlsxwriter(GERMAN), items(*GERMAN_ROWS, layout=GERMAN_LAYOUT)),
    ("german.ods", by_odfpy(GERMAN), items(*GERMAN_ROWS, layout=GERMAN_LAYOUT)),
    ("title_and_blanks.xlsx", by_openpyxl([[Cell("Kit list of our club, 2026", columns=6)], [], ["Last change", "Anna"], []] +
                                          [ENGLISH[0], [], *ENGLISH[1:]]), items(*ENGLISH_ROWS, layout={"heading_row": 5})),
    ("merged.openpyxl.xlsx", by_openpyxl(SPANS), items(*SPANS_ROWS, layout={"heading_row": 5})),
    ("merged.xlsxwriter.xlsx", by_xlsxwriter(SPANS), items(*SPANS_ROWS, layout={"heading_row": 5})),
    ("merged_headings.xlsx", by_openpyxl([[Cell("What", rows=2), Cell("Location", rows=2), Cell("Dates", columns=2)],
                                          [None, None, "Made", "Expiry"], *SPANS[5:]]),
     items(*SPANS_ROWS, layout={"heading_row": 2})),
    ("merged.ods", by_odfpy([[Cell("Our kit", columns=3)], ["What", "Where", "Made"], [Cell(FLARE, rows=2), "Heron", 2023],
                             ["covered", "Store", 2024]]),
     items({"kit_type": FLARE, "boat": "Heron", "made": "2023"}, {"kit_type": FLARE, "place": "Store", "made": "2024"})),
    ("several_sheets.xlsx", lambda path: openpyxl_book([("Wishes", NOTES), ("Ausrüstung", GERMAN), ("Empty", [])], path),
     items(*GERMAN_ROWS, layout={"sheet": "Ausrüstung", **GERMAN_LAYOUT})),
    ("hidden_sheet.xlsx", lambda path: xlsxwriter_book([("Old", GERMAN), ("Now", [["What", "Where"], [KNIFE, "Store"]])], path,
                                                       hidden=("Old",)),
     items({"kit_type": KNIFE, "place": "Store"}, layout={"sheet": "Now"})),
    ("chosen_sheet.xlsx", lambda path: openpyxl_book([("A", ENGLISH), ("B", [["What"], [KNIFE]])], path),
     items({"kit_type": KNIFE}, sheet="b", layout={"sheet": "B"})),
    ("chosen_hidden_sheet.xlsx", lambda path: openpyxl_book([("A", ENGLISH), ("B", [["What"], [KNIFE]])], path, hidden=("B",)),
     items({"kit_type": KNIFE}, sheet="B")),
    ("no_such_sheet.xlsx", by_openpyxl(ENGLISH), {"as": "items", "sheet": "Boats", "error": "NoSuchTable"}),
    ("dates.openpyxl.xlsx", by_openpyxl(FORMATTED), dated(*FORMATTED_DAYS)),
    ("dates.xlsxwriter.xlsx", by_xlsxwriter(FORMATTED), dated(*FORMATTED_DAYS)),
    ("dates.1904.openpyxl.xlsx", by_openpyxl(FORMATTED, from1904=True), dated(*FORMATTED_DAYS)),
    ("dates.1904.xlsxwriter.xlsx", by_xlsxwriter(FORMATTED, date_1904=True), dated(*FORMATTED_DAYS)),
    # ECMA-376 part 1, 18.17.4.1: 1900-01-01 is 1, and the 29 February 1900 that never was has the number 60.
    ("dates.1900.xlsx", by_xlsxwriter(OLD_DAYS),
     items(*({"kit_type": KNIFE, "made": day} for day in ("1900-01-01", "1900-02-28", "1900-03-01", "1901-01-01")))),
    ("dates.ods", by_odfpy([["What", "Expiry"], [FLARE, Cell(date(2027, 3, 1), "day")], [FLARE, Cell(date(2027, 4, 1), "month")],
                            [FLARE, date(2027, 5, 1)], [FLARE, Cell(date(2027, 6, 7), "month")]]),
     dated("2027-03-01", "2027-04", "2027-05-01", "2027-06-07")),
    ("months_as_numbers.xlsx", by_xlsxwriter([["What", "Ablauf"], [FLARE, 3.2027], [FLARE, 10.202], [FLARE, 2029]]),
     dated("2027-03", "2020-10", "2029")),
    ("no_date.xlsx", by_xlsxwriter([["What", "Expiry"], [FLARE, 2029], [FLARE, 45000]]), refused("B3", "CellNotADay")),
    ("formulas.xlsx", by_xlsxwriter([["What", "Made", "Note", "Serial"], [("=A9", KNIFE), Cell(("=B9", 43968), "yyyy-mm-dd"),
                                                                          ("=C9", "sharp"), ("=1+1", 2)]]),
     items({"kit_type": KNIFE, "made": "2020-05-17", "note": "sharp", "serial": "2"})),
    ("formulas.ods", by_odfpy([["What", "Made", "Serial"], [("[.A9]", KNIFE), ("[.B9]", date(2020, 5, 17)), ("1+1", 2)]]),
     items({"kit_type": KNIFE, "made": "2020-05-17", "serial": "2"})),
    ("formula_without_value.xlsx", by_openpyxl([["What", "Serial"], [KNIFE, "=1+1"], [KNIFE, 2]]), refused("B2", "CellUnsaved")),
    ("formula_gone_wrong.xlsx", by_xlsxwriter([["What", "Note"], [KNIFE, ("=NA()", "#N/A")]]), refused("B2", "CellOfFault")),
    ("formula_gone_wrong_left_out.xlsx", by_xlsxwriter([["What", "Note"], [KNIFE, ("=NA()", "#N/A")]]),
     items({"kit_type": KNIFE}, columns="Note=")),
    ("quantities.openpyxl.xlsx", by_openpyxl(COUNTED), items(
        *[{"kit_type": FLARE, "boat": "Heron"}] * 3, {"kit_type": LINE, "boat": "Dabchick"},
        *[{"kit_type": HELMET, "place": "Store"}] * 2)),
    ("quantity_not_whole.xlsx", by_openpyxl(rows_and_cell(COUNTED, 1, 1, 2.5)), refused("B2", "QuantityUnreadable")),
    ("quantity_of_serial.xlsx", by_openpyxl([["Item", "Qty", "Serial"], [FLARE, 2, "A1"], [FLARE, 1, "A2"]]),
     refused("B2", "QuantityOfOne")),
    ("numbers_as_names.xlsx", by_xlsxwriter([["What", "Serial", "Batch", "EAN"], [FLARE, Cell(123, "00000"), 12.5, 4006381333931],
                                             [FLARE, 123456789012345, 1e3, None]]),
     items({"kit_type": FLARE, "serial": "00123", "batch": "12.5", "gtin": "04006381333931"},
           {"kit_type": FLARE, "serial": "123456789012345", "batch": "1000"})),
    ("serial_twice.xlsx", by_openpyxl([["What", "Serial"], [FLARE, "A1"], [KNIFE, "A1"], [FLARE, "a1"]]),
     refused("B4", "SerialTwiceInTable")),
    ("states.xlsx", by_xlsxwriter(WORDS), items(*days_of(STATES))),
    ("states.ods", by_odfpy(WORDS), items(*days_of(STATES))),
    ("unknown_state.xlsx", by_openpyxl(rows_and_cell(WORDS, 1, 1, "wobbly")), refused("B2", "CellNotAChoice")),
    ("chosen_columns.xlsx", by_openpyxl([["Dingsda", "Bis, etwa", "Sonst"], [FLARE, "2027", "x"], [KNIFE, None, "y"]]),
     items({"kit_type": FLARE, "stamped": "2027"}, {"kit_type": KNIFE}, columns="Dingsda=kit_type,Bis, etwa=stamped,Sonst=",
           layout={"heading_row": 1, "columns": {"Dingsda": "kit_type", "Bis, etwa": "stamped"}, "left_out": ["Sonst"]})),
    ("by_contents.xlsx", by_openpyxl([["No.", "Dingsda", "Bei", "Made"], [1, FLARE, "Heron", 2020], [2, KNIFE, "Store", 2021],
                                      [3, HELMET, "heron", 2022]]),
     items({"kit_type": FLARE, "boat": "Heron", "made": "2020"}, {"kit_type": KNIFE, "place": "Store", "made": "2021"},
           {"kit_type": HELMET, "boat": "Heron", "made": "2022"},
           layout={"columns": {"Dingsda": "kit_type", "Bei": "home", "Made": "made"}, "left_out": ["No."]})),
    ("yes_is_no_state.xlsx", by_openpyxl([["What", "Torch"], [FLARE, "yes"], [KNIFE, "no"]]),
     items({"kit_type": FLARE}, {"kit_type": KNIFE}, layout={"left_out": ["Torch"]})),
    ("headings_twice.xlsx", by_openpyxl([["What", "Note", "Note", None], [KNIFE, "a", "b", "c"]]),
     items({"kit_type": KNIFE, "note": "a"}, layout={"left_out": ["Note (C)", "D"]})),
    ("headings_again.xlsx", by_openpyxl([*ENGLISH[:2], ENGLISH[0], *ENGLISH[2:]]), items(*ENGLISH_ROWS)),
    ("no_headings.xlsx", by_openpyxl([["Foo", "Bar"], ["a", "b"]]), {"as": "items", "error": "TableWithoutHeadings"}),
    ("no_kit_type.xlsx", by_openpyxl([["Size", "Remarks"], ["M", "b"]]), {"as": "items", "error": "TableWithoutColumn"}),
    ("rich_text.xlsx", by_xlsxwriter([["What", "Note"], [("rich", "Kni", "fe"), "two\nlines"]]),
     items({"kit_type": KNIFE, "note": "two lines"})),
    ("unknown_kit_type.xlsx", by_openpyxl([["What", "Size"], [KNIFE, None], ["Paddle", "long"]]), refused("A3", "NameToBeMade")),
    ("made_on_the_way.xlsx", by_openpyxl([["What", "Size", "Where", "Owner"], [KNIFE, None, "Loft", None], ["Paddle", "long", "Loft", None],
                                          ["paddle", "short", "Heron", "Zoe Young"]]),
     items({"kit_type": KNIFE, "place": "Loft"}, {"kit_type": "Paddle", "size": "long", "place": "Loft"},
           {"kit_type": "Paddle", "size": "short", "boat": "Heron", "person": "Zoe Young"}, make="kit_types,sizes,places,people",
           made={"kit_types": 1, "sizes": 2, "places": 1, "people": 1})),
    ("unknown_home.xlsx", by_openpyxl([["What", "Where"], [KNIFE, "Heron"], [KNIFE, "Moon"]]), refused("B3", "HomeUnknown")),
    ("unknown_boat.xlsx", by_openpyxl([["What", "Boat"], [KNIFE, "Heron"], [KNIFE, "Moon"]]), refused("B3", "NameNotInClub")),
    ("crew.xlsx", by_xlsxwriter(CREW), {"as": "people", "rows": CREW_ROWS}),
    ("crew.ods", by_odfpy(CREW), {"as": "people", "rows": CREW_ROWS}),
    ("mannschaft.xlsx", by_openpyxl(GERMAN_CREW), {"as": "people", "rows": [
        {"person": "Anna Berg", "role": "crew"}, {"person": "Ben Carter", "role": "crew"},
        {"person": "Cara Diaz", "role": "driver", "mass_kg": "75.5"}, {"person": "Dan Ek", "role": "gear officer", "mass_kg": "80"}]}),
    ("unknown_role.xlsx", by_openpyxl(rows_and_cell(GERMAN_CREW, 1, 1, "Koch")), {"as": "people", "refused": [["B2", "CellNotAChoice"]]}),
    ("fleet.xlsx", by_openpyxl(FLEET), {"as": "boats", "rows": [
        {"boat": "Dabchick", "boat_class": "Inshore"},
        {"boat": "Heron", "boat_class": "Inshore", "place": "Store", "check_every_days": "7"},
        {"boat": "Teal", "boat_class": "Inshore"}]}),
]
