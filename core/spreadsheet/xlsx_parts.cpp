#include "core/spreadsheet/xlsx_parts.h"

#include "core/spreadsheet/spreadsheet_fault.h"
#include "core/spreadsheet/xml_reader.h"

#include <limits>

namespace core {
namespace {

// More than any program writes (Excel: 65,490 formats of cells). Beyond that a file is after the memory.
constexpr std::size_t mostFormats = 65'536, mostRelations = 10'000;

void limit(std::size_t count, std::size_t most) {
    if (count > most) refuse(ErrorCode::SpreadsheetUnreadable);
}

std::string folderOf(const std::string& part) {
    const auto slash = part.rfind('/');
    return slash == std::string::npos ? std::string() : part.substr(0, slash + 1);
}

/// The name of a part that is told from within a folder: `/xl/a.xml`, `a.xml`, `../a.xml`.
std::string resolved(std::string folder, std::string_view target) {
    if (target.starts_with('/')) return std::string(target.substr(1));
    while (target.starts_with("../")) {
        target.remove_prefix(3);
        folder = folder.empty() ? folder : folderOf(folder.substr(0, folder.size() - 1));
    }
    if (target.starts_with("./")) target.remove_prefix(2);
    return folder + std::string(target);
}

class Relations : public XmlEvents {
public:
    explicit Relations(std::string folder)
        : m_folder(std::move(folder)) {}

    void start(std::string_view name, const XmlAttributes& attributes) override {
        if (name != "Relationship" || attributes["TargetMode"] == "External") return;
        limit(found.size(), mostRelations);
        const std::string_view type = attributes["Type"];
        found.emplace(attributes["Id"], XlsxRelation{std::string(type.substr(type.rfind('/') + 1)),
                                                     resolved(m_folder, attributes["Target"])});
    }
    void end(std::string_view) override {}

    std::map<std::string, XlsxRelation> found;

private:
    std::string m_folder;
};

class Book : public XmlEvents {
public:
    void start(std::string_view name, const XmlAttributes& attributes) override {
        if (name == "workbookPr")
            book.from1904 = attributes["date1904"] == "1" || attributes["date1904"] == "true";
        if (name != "sheet") return;
        limit(book.sheets.size(), mostRelations);
        book.sheets.push_back({std::string(attributes["name"]), std::string(attributes["id"]),
                               attributes["state"].ends_with("idden")}); // hidden, veryHidden
    }
    void end(std::string_view) override {}

    XlsxBook book;
};

class Texts : public XmlEvents {
public:
    void start(std::string_view name, const XmlAttributes&) override {
        if (name == "si") texts.emplace_back();
        limit(texts.size(), mostTableCells);
        if (name == "rPh") m_isAloud = true;
        m_isText = name == "t" && !m_isAloud && !texts.empty();
    }
    void end(std::string_view name) override {
        if (name == "rPh") m_isAloud = false;
        m_isText = false;
    }
    void text(std::string_view text) override {
        if (m_isText) texts.back() += text;
    }

    std::vector<std::string> texts;

private:
    bool m_isText = false;
    bool m_isAloud = false;
};

class Formats : public XmlEvents {
public:
    void start(std::string_view name, const XmlAttributes& attributes) override {
        const int any = std::numeric_limits<int>::max();
        if (name == "numFmt") {
            limit(m_own.size(), mostFormats);
            const std::string_view code = attributes["formatCode"];
            m_own[attributes.number("numFmtId", 0, any, 0)] = {dayShownBy(code), zerosOf(code)};
        } else if (name == "cellXfs") {
            m_isOfCells = true;
        } else if (name == "xf" && m_isOfCells) {
            limit(formats.size(), mostFormats);
            formats.push_back(formatOf(attributes.number("numFmtId", 0, any, 0)));
        }
    }
    void end(std::string_view name) override {
        if (name == "cellXfs") m_isOfCells = false;
    }

    std::vector<XlsxFormat> formats;

private:
    static std::string zerosOf(std::string_view code) {
        const bool isOfZeros = code.size() <= 40 && code.find_first_not_of('0') == std::string_view::npos;
        return isOfZeros ? std::string(code) : std::string();
    }

    XlsxFormat formatOf(int id) const {
        if (const auto own = m_own.find(id); own != m_own.end()) return own->second;
        return {dayShownBy(id).value_or(DayShown::None), {}};
    }

    std::map<int, XlsxFormat> m_own;
    bool m_isOfCells = false;
};

} // namespace

std::map<std::string, XlsxRelation> xlsxRelationsOf(const PackedFile& file, const std::string& part) {
    const std::string folder = folderOf(part);
    const std::string name = folder + "_rels/" + part.substr(folder.size()) + ".rels";
    Relations relations(folder);
    if (file.has(name)) readXml(file.part(name), relations);
    return std::move(relations.found);
}

XlsxBook xlsxBookOf(const PackedFile& file, const std::string& part) {
    Book book;
    readXml(file.part(part), book);
    return std::move(book.book);
}

std::vector<std::string> xlsxTextsOf(const PackedFile& file, const std::string& part) {
    Texts texts;
    readXml(file.part(part), texts);
    return std::move(texts.texts);
}

std::vector<XlsxFormat> xlsxFormatsOf(const PackedFile& file, const std::string& part) {
    Formats formats;
    readXml(file.part(part), formats);
    return std::move(formats.formats);
}

} // namespace core
