#include "modeler/window/record/record_panel.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/scrolled.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/house_fields.h"
#include "modeler/window/record/opening_at_hand.h"
#include "modeler/window/record/photographs.h"
#include "modeler/window/record/survey_fields.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QToolButton>
#include <QVBoxLayout>
#include <utility>

namespace roundlay::window {

namespace {

const QString survey_key = QStringLiteral("record/folded/survey");

} // namespace

RecordPanel::RecordPanel(Desk &desk, AtHand &at_hand, QWidget *parent)
    : QWidget(parent), desk_(desk), at_hand_(at_hand), form_(new RecordForm), photographs_(new Photographs),
      survey_(new SurveyFields(desk)), house_(new HouseFields(desk)), survey_head_(new QToolButton),
      logs_box_(new QComboBox), head_(new WrappedLabel), complaint_(new WrappedLabel),
      decisions_(new WrappedLabel), decide_(new QPushButton(tr("Decid&e…"))),
      add_(new QPushButton(tr("Add photo&graphs…"))) {
    make_head();
    auto *inside = new QWidget;
    fill(*inside);
    scroll_ = scrolled(inside);
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(6, 4, 0, 0);
    whole->setSpacing(3);
    whole->addWidget(logs_box_);
    whole->addWidget(told_above());
    whole->addWidget(scroll_, 1);
    keep_narrow(*this, *inside);
    connect(&desk_, &Desk::began, form_, &RecordForm::let_go);
    connect(&at_hand_, &AtHand::changed, this, &RecordPanel::refresh);
    connect(form_, &RecordForm::stated, this, &RecordPanel::take);
    connect(form_, &RecordForm::left, this, &RecordPanel::go);
    connect(house_, &HouseFields::left, this, [this](int step) {
        if (at_hand_.take_opening(step)) house_->begin_typing();
    });
    connect(form_, &RecordForm::complained, this, [this](const QString &sentences) {
        complaint_->setText(sentences);
        complaint_->setVisible(!sentences.isEmpty());
    });
    complaint_->hide();
    refresh();
}

void RecordPanel::make_head() {
    logs_box_->setObjectName(QStringLiteral("record_logs"));
    logs_box_->setAccessibleName(tr("Log that is recorded"));
    logs_box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    logs_box_->setMinimumContentsLength(12);
    connect(logs_box_, &QComboBox::activated, this,
            [this](int at) { at_hand_.take(static_cast<std::size_t>(at)); });
    head_->setObjectName(QStringLiteral("record_head"));
    complaint_->setObjectName(QStringLiteral("record_complaint"));
}

void RecordPanel::fill(QWidget &inside) {
    auto *column = new QVBoxLayout(&inside);
    column->setContentsMargins(0, 0, 4, 4);
    column->addWidget(survey());
    column->addWidget(house_);
    column->addWidget(decided());
    column->addWidget(form_);
    column->addWidget(add_, 0, Qt::AlignLeft);
    column->addWidget(photographs_);
    add_->setObjectName(QStringLiteral("record_add_photographs"));
    connect(add_, &QPushButton::clicked, this, [this] {
        const QString beside = desk_.path().isEmpty() ? QString() : QFileInfo(desk_.path()).absolutePath();
        add_photographs(QFileDialog::getOpenFileNames(this, tr("Photographs of the log"), beside,
                                                      tr("Pictures (*.jpg *.jpeg *.png *.tif *.tiff)")));
    });
    column->addStretch(1);
}

/// It always has its room, so that no box moves from under the hand as words come and go; more of them
/// scroll.
QWidget *RecordPanel::told_above() {
    constexpr int lines = 3;
    auto *inside = new QWidget;
    auto *column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 4, 0);
    column->setSpacing(2);
    column->addWidget(complaint_);
    column->addWidget(head_);
    column->addStretch(1);
    write_in_red(*complaint_);
    auto *area = scrolled(inside);
    area->setObjectName(QStringLiteral("record_told"));
    area->setFixedHeight(lines * fontMetrics().lineSpacing() + 4);
    return area;
}

QWidget *RecordPanel::decided() {
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(8, 4, 0, 0);
    decisions_->setObjectName(QStringLiteral("record_decisions"));
    decide_->setObjectName(QStringLiteral("record_decide"));
    column->addWidget(decisions_);
    column->addWidget(decide_, 0, Qt::AlignLeft);
    connect(decide_, &QPushButton::clicked, this, [this] { decide(at_hand_.tag(), Decision::keep); });
    return box;
}

/// Folded away once it is filled in: it is said once.
QWidget *RecordPanel::survey() {
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    QFont bold = survey_head_->font();
    bold.setBold(true);
    survey_head_->setFont(bold);
    survey_head_->setText(tr("Survey"));
    survey_head_->setObjectName(QStringLiteral("fold_survey"));
    survey_head_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    survey_head_->setAutoRaise(true);
    survey_head_->setCheckable(true);
    survey_head_->setFocusPolicy(Qt::ClickFocus);
    column->addWidget(survey_head_);
    column->addWidget(survey_);
    const auto fold = [this](bool away) {
        survey_->setVisible(!away);
        survey_head_->setArrowType(away ? Qt::RightArrow : Qt::DownArrow);
        QSettings().setValue(survey_key, away);
    };
    connect(survey_head_, &QToolButton::toggled, this, fold);
    const bool away = QSettings().value(survey_key, true).toBool();
    survey_head_->setChecked(away);
    fold(away);
    return box;
}

QString RecordPanel::told() const {
    return complaint_->text().isEmpty() ? head_->text() : complaint_->text();
}

void RecordPanel::showEvent(QShowEvent *event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

std::optional<OpeningAtHand> RecordPanel::chosen_opening() const {
    const Chosen &chosen = at_hand_.chosen();
    if (chosen.kind != Chosen::Kind::opening || !desk_.drawn()) return {};
    return opening_at_hand(*desk_.drawn(), chosen.opening);
}

/// The document's own shell among the states.
std::string RecordPanel::own_state() const {
    const ReadPtr read = desk_.reading();
    return read->states.empty() ? std::string() : read->states.front().name;
}

/// What is behind another panel waits.
void RecordPanel::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    const LogAtHand *log = at_hand_.log();
    show_logs();
    survey_->show_record(desk_.reading()->record);
    const std::string shown = log == nullptr ? std::string() : log->found.tag;
    if (std::exchange(tag_, shown) != shown) form_->let_go(); // it was typed of another log
    form_->setEnabled(log != nullptr);
    decide_->setEnabled(log != nullptr);
    add_->setEnabled(log != nullptr);
    const Plan none;
    house_->show_of(desk_.reading()->record, at_hand_.chosen(),
                    desk_.standing() ? desk_.standing()->job.layout : none, chosen_opening());
    if (log == nullptr) {
        form_->show_log({});
        photographs_->show_files({}, {});
        decisions_->setText({});
        head_->setText(at_hand_.chosen().kind == Chosen::Kind::piece && !desk_.seen().empty()
                           ? tr("%1 is not recorded, and where it was found is known in the house's own "
                                "state alone: see "
                                "the state \"%2\" to record it.")
                                 .arg(text(at_hand_.chosen().name), text(own_state()))
                           : tr("Choose a log in any view: what is typed here is recorded of it."));
        return;
    }
    form_->show_log(*log);
    show_head(*log);
}

} // namespace roundlay::window
