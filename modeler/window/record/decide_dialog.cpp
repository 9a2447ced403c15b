#include "modeler/window/record/decide_dialog.h"

#include "kernel/document/limits.h"
#include "kernel/shell/plan_edit.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/form_rows.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/record/found_words.h"

#include <QComboBox>
#include <QDate>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QLocale>
#include <QSettings>
#include <QSpinBox>
#include <algorithm>

namespace roundlay::window {

namespace {

const QString by_key = QStringLiteral("record/decided_by");

QString history_of(const FoundLog &log) {
    QStringList all;
    for (const FoundDecision &each : log.decisions)
        all << decision_words(each);
    return all.isEmpty() ? DecideDialog::tr("Nothing is decided of it yet.")
                         : DecideDialog::tr("Decided so far: %1").arg(all.join(QStringLiteral("; ")));
}

/// In the language that is spoken, whatever the system's own is, and without the day of the week.
QString today() {
    const QLocale spoken(language() == Language::french ? QLocale::French : QLocale::English);
    return spoken.toString(QDate::currentDate(), QStringLiteral("d MMMM yyyy"));
}

QSpinBox *counting(int least, int most, const char *name) {
    auto *box = new QSpinBox;
    box->setRange(least, most);
    box->setObjectName(QString::fromLatin1(name));
    return box;
}

} // namespace

DecideDialog::DecideDialog(const FoundLog &log, Decision first, const Shell &shell, QWidget *parent)
    : QDialog(parent), what_(new QComboBox), wall_(new QComboBox), by_(new QLineEdit), on_(new QLineEdit),
      why_(new QLineEdit), round_(counting(1, limits::logs_high, "decide_round")),
      piece_(counting(0, limits::pieces, "decide_piece")) {
    setObjectName(QStringLiteral("decide"));
    setWindowTitle(tr("Decide about log %1").arg(text(log.tag)));
    for (const Decision each : all_decisions)
        what_->addItem(decision_word(each));
    what_->setCurrentIndex(static_cast<int>(std::ranges::find(all_decisions, first) - all_decisions));
    for (const Wall &wall : shell.walls)
        wall_->addItem(text(wall.name));
    for (const Partition &partition : shell.partitions)
        wall_->addItem(text(partition.name));
    by_->setText(QSettings().value(by_key).toString());
    on_->setText(today());
    piece_->setSpecialValueText(tr("the whole round"));
    what_->setObjectName(QStringLiteral("decide_what"));
    wall_->setObjectName(QStringLiteral("decide_wall"));
    by_->setObjectName(QStringLiteral("decide_by"));
    on_->setObjectName(QStringLiteral("decide_on"));
    why_->setObjectName(QStringLiteral("decide_why"));
    auto *form = new QFormLayout(this);
    form->addRow(new WrappedLabel(history_of(log)));
    form->addRow(tr("&What"), what_);
    form->addRow(tr("To wa&ll"), wall_);
    form->addRow(tr("&Round"), round_);
    form->addRow(tr("&Piece, from the left"), piece_);
    form->addRow(tr("Who &decides"), by_);
    form->addRow(tr("Whe&n"), on_);
    form->addRow(tr("Wh&y"), why_);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(this, &QDialog::accepted, this, [this] { QSettings().setValue(by_key, by_->text()); });
    connect(what_, &QComboBox::currentIndexChanged, this, &DecideDialog::show_where);
    constexpr int letters = 32; // a date, a name and a reason are read whole
    for (QLineEdit *edit : {by_, on_, why_})
        edit->setMinimumWidth(letters * fontMetrics().averageCharWidth());
    show_where();
    why_->setFocus();
}

/// Only a log that is used elsewhere goes anywhere.
void DecideDialog::show_where() {
    const bool goes = all_decisions[what_->currentIndex()] == Decision::use_elsewhere;
    auto *form = qobject_cast<QFormLayout *>(layout());
    for (QWidget *field : std::initializer_list<QWidget *>{wall_, round_, piece_})
        show_row(*form, *field, goes);
}

FoundDecision DecideDialog::decision() const {
    FoundDecision made;
    made.what = all_decisions[what_->currentIndex()];
    made.by = by_->text().trimmed().toStdString();
    made.on = on_->text().trimmed().toStdString();
    made.why = why_->text().trimmed().toStdString();
    if (made.what != Decision::use_elsewhere) return made;
    made.to.wall = wall_->currentText().toStdString();
    made.to.round = round_->value();
    if (piece_->value() > 0) made.to.piece = piece_->value();
    return made;
}

} // namespace roundlay::window
