#include "modeler/window/record/survey_fields.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/record/choice_edit.h"

#include <QFormLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

/// First stands what holds where nothing is said.
template <typename T> std::optional<T> said_in(int index) {
    if (index <= 0) return {};
    return static_cast<T>(index - 1);
}
template <typename T> int index_of(const std::optional<T> &said) {
    return said ? static_cast<int>(*said) + 1 : 0;
}

} // namespace

SurveyFields::SurveyFields(Desk &desk, QWidget *parent) : QWidget(parent), desk_(desk) {
    auto *form = new QFormLayout(this);
    form->setContentsMargins(8, 0, 0, 4);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    const QString not_said = tr("not said");
    by_ = words_field(*form, "survey_by", tr("Who measured"), &Record::by);
    on_ = words_field(*form, "survey_on", tr("When"), &Record::on);
    unit_ = choice_field(*form, "survey_unit", tr("Numbers are in"),
                         {not_said, tr("mm"), tr("cm"), tr("m"), tr("inches"), tr("feet")},
                         [](Record &record, int at) { record.notation.unit = said_in<NoteUnit>(at); });
    denominator_ = choice_field(*form, "survey_denominator", tr("3.10.1 counts"),
                                {not_said, tr("quarters of an inch"), tr("eighths"), tr("sixteenths")},
                                [](Record &record, int at) {
                                    record.notation.denominator.reset();
                                    if (at > 0) record.notation.denominator = note_denominators[at - 1];
                                });
    two_fields_ = choice_field(
        *form, "survey_two_fields", tr("3.10 is"), {not_said, tr("feet and inches"), tr("decimal feet")},
        [](Record &record, int at) { record.notation.two_fields = said_in<TwoFields>(at); });
    exactness_ = words_field(*form, "survey_exactness", tr("How exact"), &Record::exactness);
    not_seen_ = words_field(*form, "survey_not_seen", tr("Not seen"), &Record::not_seen);
}

NameEdit *SurveyFields::words_field(QFormLayout &form, const char *name, const QString &label,
                                    std::string Record::*member) {
    auto *edit = new NameEdit;
    edit->setObjectName(QString::fromLatin1(name));
    add_field(form, label, *edit);
    connect(edit, &NameEdit::committed, this, [this, edit, label, member] {
        this->edit(
            label, [&](Record &record) { record.*member = edit->name().trimmed().toStdString(); }, edit);
    });
    return edit;
}

ChoiceEdit *SurveyFields::choice_field(QFormLayout &form, const char *name, const QString &label,
                                       const QStringList &words,
                                       const std::function<void(Record &, int)> &set) {
    auto *choice = new ChoiceEdit;
    choice->setObjectName(QString::fromLatin1(name));
    choice->setAccessibleName(label);
    choice->addItems(words);
    form.addRow(label, choice);
    connect(choice, &ChoiceEdit::chosen, this, [this, label, set](int at) {
        edit(
            label, [&](Record &record) { set(record, at); }, nullptr);
    });
    return choice;
}

void SurveyFields::edit(const QString &label, const std::function<void(Record &)> &change,
                        MeasureEdit *field) {
    const auto deed = [&] {
        desk_.edit_record(tr("Survey: %1").arg(label), [&](const Record &record) {
            Record next = record;
            change(next);
            return std::optional(next);
        });
    };
    if (field != nullptr) return commit(*field, desk_, deed);
    deed();
    show_record(desk_.reading()->record); // as it was, where that was refused
}

void SurveyFields::show_record(const Record &record) {
    by_->set_name(text(record.by));
    on_->set_name(text(record.on));
    exactness_->set_name(text(record.exactness));
    not_seen_->set_name(text(record.not_seen));
    unit_->show_choice(index_of(record.notation.unit));
    two_fields_->show_choice(index_of(record.notation.two_fields));
    const auto &denominator = record.notation.denominator;
    const auto at = std::ranges::find(note_denominators, denominator.value_or(0));
    denominator_->show_choice(denominator ? static_cast<int>(at - std::begin(note_denominators)) + 1 : 0);
}

} // namespace roundlay::window
