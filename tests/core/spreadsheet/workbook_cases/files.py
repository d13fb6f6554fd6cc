"""Text files: separators, encodings, days as people write them."""

FLARES = "What{0}Expiry\r\n"


def text(content, encoding="utf-8", mark=b""):
    def write(path):
        with open(path, "wb") as out:
            out.write(mark + content.encode(encoding))
    return write


def items(*rows, **more):
    return {"as": "items", "rows": list(rows), **more}


def flares(days):
    return "What;Expiry\n" + "".join(f"Flare;{day}\n" for day in days)


def dated(*days, **more):
    return items(*({"kit_type": "Flare", "stamped": day} for day in days), **more)


GERMAN = "Gegenstand;Größe;Preis;Bemerkung\r\nLife jacket;M;89,50;für Anna – grün\r\nKnife;;12,00;\r\n"
GERMAN_ROWS = [{"kit_type": "Life jacket", "size": "M", "note": "für Anna – grün"}, {"kit_type": "Knife"}]
WRITTEN = {"14.3.2026": "2026-03-14", "14.03.26": "2026-03-14", "25/12/2026": "2026-12-25", "12/25/2026": "2026-12-25",
           "05/05/2026": "2026-05-05", "14-Mar-26": "2026-03-14", "14 March 2026": "2026-03-14", "March 14th, 2026": "2026-03-14",
           "14. März 2026": "2026-03-14", "3. Jänner 2026": "2026-01-03", "Dez. 2025": "2025-12", "Mai 2026": "2026-05",
           "03.2027": "2027-03", "03/2027": "2027-03", "3/27": "2027-03", "2027-03": "2027-03", "2027/03/14": "2027-03-14",
           "2027": "2027", "20270314": "2027-03-14", "2027-03-14 00:00:00": "2027-03-14", "2027-03-14T08:30": "2027-03-14",
           "04.05.2027": "2027-05-04", "31.12.99": "1999-12-31"}
PEOPLE = "Name,Role\n\"Diaz, Cara\",Helm\n"

CASES = [
    ("comma.csv", text('What,Note\r\nKnife,"a ""sharp"" one, with\r\na lanyard"\r\n'),
     items({"kit_type": "Knife", "note": 'a "sharp" one, with a lanyard'}, layout={"sheet": "comma.csv"})),
    ("marked.csv", text("What,Note\nKnife,äöü\n", mark=b"\xef\xbb\xbf"), items({"kit_type": "Knife", "note": "äöü"})),
    ("semicolon.csv", text(GERMAN), items(*GERMAN_ROWS)),
    ("windows.csv", text(GERMAN, "cp1252"), items(*GERMAN_ROWS)),
    ("utf16le.csv", text(GERMAN, "utf-16-le", b"\xff\xfe"), items(*GERMAN_ROWS)),
    ("utf16be.csv", text(GERMAN, "utf-16-be", b"\xfe\xff"), items(*GERMAN_ROWS)),
    ("utf16_unmarked.csv", text(GERMAN, "utf-16-le"), items(*GERMAN_ROWS)),
    ("tabs.tsv", text(GERMAN.replace(";", "\t")), items(*GERMAN_ROWS)),
    ("tabs.txt", text(GERMAN.replace(";", "\t"), "utf-16-le", b"\xff\xfe"), items(*GERMAN_ROWS)),
    ("sep.csv", text("sep=;\r\nWhat;Note\r\nKnife;a,b,c\r\n"), items({"kit_type": "Knife", "note": "a,b,c"}, layout={"heading_row": 2})),
    ("title.csv", text("Our kit, 2026, all of it\n\nWhat;Note\nKnife;sharp\nFlare;red\n"),
     items({"kit_type": "Knife", "note": "sharp"}, {"kit_type": "Flare", "note": "red"}, layout={"heading_row": 3})),
    ("old_mac.csv", text("What;Note\rKnife;sharp\r"), items({"kit_type": "Knife", "note": "sharp"})),
    ("open_quote.csv", text('What,Note\nKnife,"never ends\n'), {"as": "items", "error": "CsvQuoteOpen"}),
    ("days.csv", text(flares(WRITTEN)), dated(*WRITTEN.values())),
    ("days.windows.csv", text(flares(WRITTEN), "cp1252"), dated(*WRITTEN.values())),
    ("days_ambiguous.csv", text(flares(["2027", "03/04/2024", "05/06/2024"])),
     {"as": "items", "error": "DayAmbiguous", "where": "days_ambiguous.csv!B3"}),
    ("days_dmy.csv", text(flares(["2027", "03/04/2024", "05-06-24"])), dated("2027", "2024-04-03", "2024-06-05", days="dmy")),
    ("days_mdy.csv", text(flares(["2027", "03/04/2024", "12/25/24"])), dated("2027", "2024-03-04", "2024-12-25", days="mdy")),
    ("days_against_order.csv", text(flares(["14/03/2024", "03/14/2024"])),
     {"as": "items", "days": "dmy", "refused": [["B3", "CellNotADay"]]}),
    ("days_none.csv", text(flares(["30.2.2027"])), {"as": "items", "refused": [["B2", "CellNotADay"]]}),
    ("kit_types.csv", text("Article;Worn;Preis;Pack size;Personal\nDry suit;ja;1.250,5;;nein\n"),
     {"as": "kit_types", "refused": [["C2", "CellNumberWithComma"]]}),
    ("kit_types_good.csv", text("Article;Worn;Preis;Pack size;Personal\nDry suit;ja;€ 250,50;2 Stk;nein\n"),
     {"as": "kit_types", "rows": [{"kit_type": "Dry suit", "worn": "yes", "personal": "no", "price": "250.5", "pack": "2"}],
      "beside": ["Flare", "Helmet", "Knife", "Life jacket", "Throw line"]}),
    ("unseen.csv", text("What,Maker\nKnife,Acme\u202e\n"), {"as": "items", "refused": [["B2", "TextUnseen"]]}),
    ("formula_text.csv", text("What,Maker\nKnife,=1+1\n"), items({"kit_type": "Knife", "maker": "=1+1"})),
]
