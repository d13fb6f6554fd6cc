#include "app/gui/new_club_form.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/starters/starters.h"
#include "app/text/sentences.h"
#include "app/text/words.h"

#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

void sayIn(QLabel& label, const QString& words) {
    label.setText(words);
    label.setVisible(!words.isEmpty());
}

} // namespace

NewClubForm::NewClubForm(Choosers choosers, QWidget* parent)
    : QWidget(parent)
    , m_choosers(std::move(choosers))
    , m_name(wordsEdit(this, "clubNameEdit", tr("the club's name"), tr("the club's name")))
    , m_file(wordsEdit(this, "clubFileEdit", tr("where its file goes"), tr("where its file goes")))
    , m_chooseFile(wordsButton(this, tr("Choose…"), "clubFileButton"))
    , m_fileSaid(wordsLabel(this, "look", "clubFileSaidLabel"))
    , m_about(wordsLabel(this, "footnote", "clubBeginsLabel"))
    , m_folderRow(new QWidget(this))
    , m_folder(wordsEdit(m_folderRow, "clubFolderEdit", tr("the folder of CSV files"),
                         tr("the folder of CSV files")))
    , m_chooseFolder(wordsButton(m_folderRow, tr("Choose the folder…"), "clubFolderButton"))
    , m_registerSaid(wordsLabel(this, "look", "clubRegisterSaidLabel"))
    , m_start(wordsButton(this, tr("Start this club file"), "newClubButton")) {
    setObjectName("newClubForm");
    build();
    connectParts();
    adapt();
}

void NewClubForm::build() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(spaceUnit);
    layout->addLayout(buildName());
    layout->addWidget(m_fileSaid);
    layout->addWidget(wordsIn("remark", tr("It begins with"), this));
    layout->addLayout(buildChoices());
    layout->addWidget(m_about);
    layout->addWidget(m_folderRow);
    layout->addWidget(m_registerSaid);
    layout->addWidget(m_start, 0, Qt::AlignLeft);
    buildFolder();
    sayIn(*m_fileSaid, {});
    sayIn(*m_registerSaid, {});
}

QLayout* NewClubForm::buildName() {
    auto* row = new QHBoxLayout;
    row->setSpacing(spaceUnit);
    row->addWidget(m_name, 2);
    row->addWidget(m_file, 3);
    row->addWidget(m_chooseFile);
    return row;
}

QLayout* NewClubForm::buildChoices() {
    auto* grid = new QGridLayout;
    grid->setVerticalSpacing(0);
    grid->setHorizontalSpacing(4 * spaceUnit);
    for (const Starter& each : starters())
        addChoice(tr("a starter: %1").arg(each.title), NewClub::Begins::Starter,
                  ("clubBegins " + each.name).toUtf8().constData(), each.name);
    addChoice(tr("our spreadsheet"), NewClub::Begins::Spreadsheet, "clubBegins spreadsheet");
    addChoice(tr("a folder of CSV files"), NewClub::Begins::Folder, "clubBegins folder");
    addChoice(tr("nothing"), NewClub::Begins::Empty, "clubBegins nothing");
    const auto half = static_cast<int>((m_choices.size() + 1) / 2);
    for (int i = 0; i < static_cast<int>(m_choices.size()); ++i)
        grid->addWidget(m_choices[static_cast<std::size_t>(i)].button, i % half, i / half);
    grid->setColumnStretch(1, 1);
    m_choices.front().button->setChecked(true);
    return grid;
}

void NewClubForm::addChoice(const QString& words, NewClub::Begins begins, const char* name,
                            const QString& starter) {
    auto* button = new QRadioButton(words, this);
    button->setObjectName(name);
    QString about;
    switch (begins) {
    case NewClub::Begins::Starter:
        for (const Starter& each : starters())
            if (each.name == starter) about = each.about;
        about += QLatin1Char(' ') +
                 tr("Kit types, sizes, rules and lists are examples, and each rule says so: “example: "
                    "put your maker's and your club's in its place”.");
        break;
    case NewClub::Begins::Spreadsheet:
        about = tr("The file is made first; then you choose the spreadsheet and say what its columns mean.");
        break;
    case NewClub::Begins::Folder:
        about = tr("Files such as boats.csv and items.csv, as this program writes them. All rows are taken, "
                   "or there "
                   "is no file.");
        break;
    case NewClub::Begins::Empty:
        about = tr("You write boats, people and kit types yourself.");
        break;
    }
    m_choices.push_back({button, begins, starter, about});
    connect(button, &QRadioButton::toggled, this, &NewClubForm::adapt);
}

QLayout* NewClubForm::buildFolder() {
    auto* row = new QHBoxLayout(m_folderRow);
    row->setContentsMargins({});
    row->setSpacing(spaceUnit);
    row->addWidget(m_folder, 1);
    row->addWidget(m_chooseFolder);
    return row;
}

void NewClubForm::connectParts() {
    connect(m_name, &QLineEdit::textEdited, this, &NewClubForm::suggest);
    connect(m_name, &QLineEdit::textChanged, this, &NewClubForm::adapt);
    connect(m_file, &QLineEdit::textEdited, this, [this] {
        m_isSuggested = false;
        sayIn(*m_fileSaid, {});
    });
    connect(m_folder, &QLineEdit::textEdited, this, [this] { sayIn(*m_registerSaid, {}); });
    connect(m_chooseFile, &QPushButton::clicked, this, &NewClubForm::chooseFile);
    connect(m_chooseFolder, &QPushButton::clicked, this, &NewClubForm::chooseFolder);
    for (QLineEdit* edit : {m_name, m_file, m_folder})
        connect(edit, &QLineEdit::returnPressed, m_start, &QPushButton::click);
    connect(m_start, &QPushButton::clicked, this, [this] {
        if (isWhole()) emit startPressed();
    });
}

const NewClubForm::Choice& NewClubForm::chosen() const {
    return *std::find_if(m_choices.begin(), m_choices.end(),
                         [](const Choice& each) { return each.button->isChecked(); });
}

bool NewClubForm::isBegun() const {
    return !m_name->text().trimmed().isEmpty();
}

NewClub NewClubForm::wanted() const {
    QString file = QDir::fromNativeSeparators(m_file->text().trimmed());
    if (!file.isEmpty() && QFileInfo(file).suffix().isEmpty()) file += QStringLiteral(".tholepin");
    const Choice& choice = chosen();
    return {m_name->text().trimmed(), file, choice.begins, choice.starter,
            QDir::fromNativeSeparators(m_folder->text().trimmed())};
}

void NewClubForm::suggest() {
    sayIn(*m_fileSaid, {});
    if (m_isSuggested) m_file->setText(QDir::toNativeSeparators(suggestedFile(m_name->text())));
}

void NewClubForm::chooseFile() {
    const QString file = m_choosers.newClub ? m_choosers.newClub(this) : QString();
    if (file.isEmpty()) return;
    m_isSuggested = false;
    m_file->setText(QDir::toNativeSeparators(file));
    sayIn(*m_fileSaid, {});
}

void NewClubForm::chooseFolder() {
    const QString folder = m_choosers.importFolder ? m_choosers.importFolder(this) : QString();
    if (folder.isEmpty()) return;
    m_folder->setText(QDir::toNativeSeparators(folder));
    sayIn(*m_registerSaid, {});
}

bool NewClubForm::isWhole() {
    const NewClub club = wanted();
    if (club.file.isEmpty()) sayIn(*m_fileSaid, tr("Say where the file goes."));
    const bool needsFolder = club.begins == NewClub::Begins::Folder && club.folder.isEmpty();
    if (needsFolder) sayIn(*m_registerSaid, tr("Choose the folder of CSV files."));
    return !club.file.isEmpty() && !needsFolder;
}

void NewClubForm::sayOfFile(const core::Error& error) {
    sayIn(*m_fileSaid, errorSentence(error));
}

void NewClubForm::sayOfRegister(const QString& words) {
    sayIn(*m_registerSaid, words);
}

void NewClubForm::setMaking(bool isMaking) {
    m_isMaking = isMaking;
    adapt();
}

void NewClubForm::clear() {
    const QSignalBlocker quiet(m_name);
    for (QLineEdit* edit : {m_name, m_file, m_folder})
        edit->clear();
    m_isSuggested = true;
    m_isMaking = false;
    sayIn(*m_fileSaid, {});
    sayIn(*m_registerSaid, {});
    adapt();
}

void NewClubForm::adapt() {
    m_about->setText(chosen().about);
    m_folderRow->setVisible(chosen().begins == NewClub::Begins::Folder);
    if (chosen().begins != NewClub::Begins::Folder) sayIn(*m_registerSaid, {});
    m_start->setEnabled(isBegun() && !m_isMaking);
    m_start->setText(m_isMaking ? tr("The file is being made…") : tr("Start this club file"));
    // Somebody who writes a name wants this, and not another file.
    m_start->setProperty("role", isBegun() ? "usual" : "");
    m_start->style()->unpolish(m_start);
    m_start->style()->polish(m_start);
    emit changed();
}

} // namespace app
