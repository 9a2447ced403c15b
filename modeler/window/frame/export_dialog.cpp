#include "modeler/window/frame/export_dialog.h"

#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/mishaps.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/export_choices.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/wrapped_label.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QStyle>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>
#include <stdexcept>

namespace roundlay::window {

namespace {

/// Nothing that is thrown leaves the thread: it would end the program, and unsaved work with it.
ExportDialog::Outcome safely(const std::function<ExportDialog::Outcome()> &export_them) {
    ExportDialog::Outcome outcome = ExportFailure{};
    if (const auto what = what_it_throws(QStringLiteral("exporting"), [&] { outcome = export_them(); })) {
        ExportFailure failure;
        failure.message = ExportDialog::tr("Something went wrong inside the program: %1. It is noted in %2.")
                              .arg(*what, QDir::toNativeSeparators(mishap_log()))
                              .toStdString();
        outcome = failure;
    }
    return outcome;
}

} // namespace

void ExportProgress::at(std::string_view doing, int done, int of) {
    emit told(kernel_words(text(doing)), done, of);
}

ExportDialog::ExportDialog(ExportJob job, const QString &folder, QWidget *parent, Exporting exporting)
    : QDialog(parent), job_(std::move(job)), exporting_(std::move(exporting)),
      choices_(new ExportChoices(job_)), pieces_(new QComboBox), tags_(new QLineEdit),
      folder_(new QLineEdit(folder)), bar_(new QProgressBar), words_(new WrappedLabel),
      start_(new QPushButton(tr("&Export"))), close_(new QPushButton(tr("Close"))),
      open_(new QPushButton(tr("&Open the folder"))), replace_(new QCheckBox(tr("&Replace those files"))) {
    setWindowTitle(tr("Export"));
    auto *grid = new QGridLayout(this);
    choices_->recall(document());
    int row = 0;
    if (!job_.shell.state.empty()) {
        auto *state =
            new WrappedLabel(tr("State of the house that is exported: %1").arg(text(job_.shell.state)));
        state->setObjectName(QStringLiteral("exported_state"));
        grid->addWidget(state, row++, 0, 1, 3);
    }
    grid->addWidget(choices_in_view(), row++, 0, 1, 3);
    add_pieces(*grid, row++);
    add_folder(*grid, row++);
    words_->setTextFormat(Qt::PlainText);
    grid->addWidget(words_, row++, 0, 1, 3);
    grid->addWidget(replace_, row++, 0, 1, 3);
    grid->addWidget(bar_, row++, 0, 1, 3);
    grid->addLayout(buttons(), row, 0, 1, 3);
    bar_->setVisible(false);
    replace_->setVisible(false);
    connect_all();
}

QLayout *ExportDialog::buttons() {
    auto *row = new QHBoxLayout;
    row->addStretch(1);
    for (QPushButton *button : {open_, start_, close_})
        row->addWidget(button);
    open_->setEnabled(false);
    start_->setDefault(true);
    return row;
}

/// Of all pieces, of a sort of them, or of those that are called by name.
void ExportDialog::add_pieces(QGridLayout &grid, int row) {
    pieces_->setObjectName(QStringLiteral("pieces"));
    tags_->setObjectName(QStringLiteral("tags"));
    pieces_->addItem(tr("all pieces"));
    pieces_->addItem(tr("new wood"), QStringLiteral("new"));
    pieces_->addItem(tr("mended logs with their new wood"), QStringLiteral("mended"));
    pieces_->addItem(tr("logs in which something is to be cut"), QStringLiteral("cut"));
    pieces_->addItem(tr("these:"));
    tags_->setPlaceholderText(tr("A-05-1, B, what is written on a log"));
    tags_->setAccessibleName(tr("Tags of pieces, separated by commas"));
    tags_->setEnabled(false);
    auto *label = new QLabel(tr("P&ieces"));
    label->setBuddy(pieces_);
    grid.addWidget(label, row, 0);
    grid.addWidget(pieces_, row, 1);
    grid.addWidget(tags_, row, 2);
    connect(pieces_, &QComboBox::currentIndexChanged, this, &ExportDialog::choose_pieces);
    connect(tags_, &QLineEdit::textChanged, this, &ExportDialog::choose_pieces);
}

PieceChoice ExportDialog::pieces() const {
    std::vector<std::string> words;
    const QString sort = pieces_->currentData().toString();
    if (!sort.isEmpty()) words.push_back(sort.toStdString());
    if (tags_->isEnabled())
        for (const QString &tag : tags_->text().split(u',', Qt::SkipEmptyParts))
            if (!tag.trimmed().isEmpty()) words.push_back(tag.trimmed().toStdString());
    return piece_choice(words);
}

void ExportDialog::choose_pieces() {
    tags_->setEnabled(pieces_->currentIndex() == pieces_->count() - 1);
    choices_->offer(pieces_->currentIndex() == 0);
    enable_start();
}

/// Where it lies; empty while it was never saved.
QString ExportDialog::document() const {
    if (job_.document.empty()) return {};
    return QDir(text(job_.folder.string())).filePath(text(job_.document));
}

void ExportDialog::add_folder(QGridLayout &grid, int row) {
    auto *label = new QLabel(tr("&Folder"));
    label->setBuddy(folder_);
    auto *choose = new QPushButton(tr("&Choose…"));
    grid.addWidget(label, row, 0);
    grid.addWidget(folder_, row, 1);
    grid.addWidget(choose, row, 2);
    connect(choose, &QPushButton::clicked, this, &ExportDialog::choose_folder);
}

void ExportDialog::connect_all() {
    connect(start_, &QPushButton::clicked, this, &ExportDialog::start);
    connect(close_, &QPushButton::clicked, this, &ExportDialog::reject);
    connect(folder_, &QLineEdit::textChanged, this, &ExportDialog::spare_own_files);
    connect(choices_, &ExportChoices::changed, this, &ExportDialog::enable_start);
    connect(choices_, &ExportChoices::opened, this, &ExportDialog::bring_into_view);
    connect(open_, &QPushButton::clicked, this, &ExportDialog::open_folder);
    connect(&progress_, &ExportProgress::told, this, [this](const QString &doing, int done, int of) {
        say(doing);
        bar_->setMaximum(of);
        bar_->setValue(done);
    });
}

/// The screen may be lower than all of them.
QWidget *ExportDialog::choices_in_view() {
    constexpr int rows = 3; // seen at the least
    scroll_ = scrolled(choices_);
    const QSize room = screen()->availableGeometry().size();
    scroll_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    const auto *first = choices_->findChild<QCheckBox *>();
    scroll_->setMinimumHeight(rows * (first->sizeHint().height() + choices_->layout()->spacing()));
    scroll_->setMinimumWidth(
        std::min(choices_->sizeHint().width() + style()->pixelMetric(QStyle::PM_ScrollBarExtent),
                 room.width() * 9 / 10));
    return scroll_;
}

/// Of what is higher than the view its beginning.
void ExportDialog::bring_into_view(QWidget *part) {
    scroll_->ensureVisible(0, part->mapTo(choices_, QPoint(0, part->height())).y(), 0, 0);
    scroll_->ensureVisible(0, part->mapTo(choices_, QPoint(0, 0)).y(), 0, part->fontMetrics().height() * 2);
}

/// As high as it has something to say, where the screen is; else what can be chosen scrolls.
void ExportDialog::say(const QString &sentence) {
    words_->setText(breakable(sentence));
    make_room(*this);
}

ExportDialog::~ExportDialog() {
    progress_.cancel();
    if (thread_.joinable()) thread_.join();
}

QString ExportDialog::folder() const {
    return folder_->text();
}

void ExportDialog::choose_folder() {
    const QString chosen = QFileDialog::getExistingDirectory(this, tr("Export to"), folder_->text());
    if (!chosen.isEmpty()) folder_->setText(chosen);
}

/// A yes to replacing a person's own files is meant for those that were named, once.
void ExportDialog::spare_own_files() {
    replace_->setChecked(false);
    replace_->setVisible(false);
}

/// Nothing chosen is nothing to make.
void ExportDialog::enable_start() {
    const bool any = !choices_->wanted().empty();
    const bool named = !tags_->isEnabled() || !pieces().is_all(); // else it would be of all pieces
    start_->setEnabled(!running_ && any && named);
}

void ExportDialog::start() {
    if (running_) return;
    if (thread_.joinable()) thread_.join();
    if (QWidget *wrong = choices_->take(job_.options)) return put_right(*wrong);
    choices_->keep(document());
    const std::vector<const Exporter *> chosen = choices_->wanted();
    job_.options.pieces = pieces();
    running_ = true;
    progress_.restart();
    start_->setEnabled(false);
    close_->setText(tr("Stop"));
    bar_->setVisible(true);
    const IfThere own = replace_->isChecked() ? IfThere::replace : IfThere::refuse;
    spare_own_files();
    const std::filesystem::path to = folder_->text().toStdString();
    run_aside([this, chosen, own, to] { return exporting_(job_, chosen, to, progress_, own); });
}

/// Before anything is made.
void ExportDialog::put_right(QWidget &wrong) {
    result_ = tr("Nothing was exported: what is to be put right stands below its field.");
    say(result_);
    bring_into_view(&wrong);
    wrong.setFocus();
}

/// In a thread; a system that gives none is told of like any other mishap.
void ExportDialog::run_aside(const std::function<Outcome()> &export_them) {
    const auto what = what_it_throws(QStringLiteral("beginning to export"), [&] {
        thread_ = std::thread([this, export_them] {
            auto outcome = safely(export_them);
            QMetaObject::invokeMethod(this, [this, outcome = std::move(outcome)] { finish(outcome); });
        });
    });
    if (what) finish(safely([&]() -> Outcome { throw std::runtime_error(what->toStdString()); }));
}

void ExportDialog::finish(const Outcome &outcome) {
    running_ = false;
    enable_start();
    close_->setText(tr("Close"));
    bar_->setVisible(false);
    if (const auto *failure = std::get_if<ExportFailure>(&outcome)) {
        result_ = kernel_words(failure->message);
        replace_->setVisible(failure->trouble == Trouble::in_the_way);
    } else {
        const auto &report = std::get<ExportReport>(outcome);
        result_ = tr("%1 files were written.").arg(report.written.size());
        if (report.folders.size() > 1)
            result_ += u' ' + tr("There was no folder %1: it was made.")
                                  .arg(QDir::toNativeSeparators(text(report.folders.front())));
        for (const ExportFailure &left_out : report.left_out)
            result_ += u' ' + kernel_words(left_out.message);
        succeeded_ = true;
        open_->setEnabled(true);
        open_->setFocus();
    }
    say(result_);
    emit ended();
}

void ExportDialog::open_folder() const {
    QDesktopServices::openUrl(QUrl::fromLocalFile(folder_->text()));
}

/// Stops what runs; the dialog goes when there is nothing to stop.
void ExportDialog::reject() {
    if (running_) return progress_.cancel();
    QDialog::reject();
}

} // namespace roundlay::window
