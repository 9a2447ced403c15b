#include "modeler/window/panels/log_fields.h"

#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/form_rows.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/species_choice.h"

#include <QComboBox>
#include <QFormLayout>

namespace roundlay::window {

namespace {

/// First in the box stands what holds where nothing is stated.
template <typename T> int index_of(const std::optional<T> &stated) {
    return stated ? static_cast<int>(*stated) + 1 : 0;
}

template <typename T> std::optional<T> stated_in(const QComboBox &box) {
    if (box.currentIndex() <= 0) return {};
    return static_cast<T>(box.currentIndex() - 1);
}

} // namespace

LogFields::LogFields(QWidget *parent)
    : QGroupBox(tr("Stated of the whole log"), parent), meant_(new QComboBox), mark_(new NameEdit),
      note_(new NameEdit) {
    auto *form = new QFormLayout(this);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    meant_->setObjectName(QStringLiteral("meant"));
    meant_->setAccessibleName(tr("What the fields tell of"));
    form->addRow(tr("&These are of"), meant_);
    connect(meant_, &QComboBox::activated, this, &LogFields::meant_another);
    mark_->setObjectName(QStringLiteral("mark"));
    mark_->setAccessibleName(tr("Mark on the log"));
    add_field(*form, tr("&Mark on the log"), *mark_);
    butt_height_ = length_field(form, QStringLiteral("butt_height"), tr("&Butt height"), {});
    tip_height_ = length_field(form, QStringLiteral("tip_height"), tr("&Tip height"), {});
    butt_width_ = length_field(form, QStringLiteral("butt_width"), tr("Butt &width"), {});
    tip_width_ = length_field(form, QStringLiteral("tip_width"), tr("Tip wi&dth"), {});
    diameter_ = length_field(form, QStringLiteral("diameter"), tr("Diameter of the &stick"), {});
    bow_ = length_field(form, QStringLiteral("bow"), tr("B&ow"), tr("not measured"));
    butt_ = choice(form, tr("Butt l&ies"), {tr("by turns"), tr("left"), tr("right")});
    finish_ = choice(form, tr("&Finish"), {tr("as the shell"), tr("hewn"), tr("sawn"), tr("peeled")});
    fabric_ = choice(form, tr("F&abric"),
                     {tr("not stated"), tr("new"), tr("kept"), tr("patched"), tr("replacement")});
    species_ = choice(form, tr("W&ood"), {tr("as the shell")});
    species_->setObjectName(QStringLiteral("species"));
    add_species(*species_);
    note_->setObjectName(QStringLiteral("note"));
    note_->setPlaceholderText(tr("nothing"));
    add_field(*form, tr("&Note"), *note_);
    for (NameEdit *edit : {mark_, note_})
        connect(edit, &NameEdit::committed, this, [this, edit] { emit stated(edit); });
}

LengthEdit *LogFields::length_field(QFormLayout *form, const QString &name, const QString &label,
                                    const QString &when_empty) {
    auto *edit = new LengthEdit;
    edit->setObjectName(name);
    edit->set_optional(true);
    edit->setPlaceholderText(when_empty);
    add_field(*form, label, *edit);
    connect(edit, &LengthEdit::committed, this, [this, edit] { emit stated(edit); });
    return edit;
}

QComboBox *LogFields::choice(QFormLayout *form, const QString &label, const QStringList &words) {
    auto *box = new QComboBox;
    box->addItems(words);
    box->setAccessibleName(QString(label).remove(u'&'));
    form->addRow(label, box);
    connect(box, &QComboBox::activated, this, [this] { emit stated(nullptr); });
    return box;
}

/// Another log that is chosen is met as it is stated: alone where something is stated of it alone.
void LogFields::offer_parts(const QString &alone, bool says_something_alone) {
    auto *form = qobject_cast<QFormLayout *>(layout());
    show_row(*form, *meant_, !alone.isEmpty());
    if (alone == alone_) return;
    alone_ = alone;
    meant_->clear();
    meant_->addItems({tr("all logs of this round"), tr("log %1 alone").arg(alone)});
    meant_->setCurrentIndex(says_something_alone ? 1 : 0);
}

bool LogFields::is_alone() const {
    return !alone_.isEmpty() && meant_->currentIndex() == 1;
}

/// A log that others are scoped over has a diameter alone; what it has else can be seen to be taken away.
/// Where a field is empty: what all logs have, else what follows from the wall.
void LogFields::show_what_holds(const LogSizes &all, UnitSystem units) {
    const auto show = [units](LengthEdit *edit, const std::optional<Length> &size, const QString &else_as) {
        edit->setPlaceholderText(size ? tr("as all logs: %1").arg(length_text(size->mm(), units)) : else_as);
    };
    const QString wall = tr("as the wall");
    show(butt_height_, all.butt_height, wall);
    show(tip_height_, all.tip_height, wall);
    show(butt_width_, all.butt_width, wall);
    show(tip_width_, all.tip_width, wall);
    show(diameter_, all.diameter, tr("as the shell"));
}

void LogFields::show_log(const OwnLog &log, const LogSizes &all, UnitSystem units, bool scoped) {
    show_what_holds(all, units);

    auto *form = qobject_cast<QFormLayout *>(layout());
    const bool alone =
        is_alone(); // the logs of a round lie in one straight line: their sizes are the round's
    setTitle(alone              ? tr("Stated of log %1 alone").arg(alone_)
             : alone_.isEmpty() ? tr("Stated of the whole log")
                                : tr("Stated of all logs of this round"));
    for (const auto &[edit, size] :
         {std::pair(butt_height_, log.sizes.butt_height), std::pair(tip_height_, log.sizes.tip_height),
          std::pair(butt_width_, log.sizes.butt_width), std::pair(tip_width_, log.sizes.tip_width)})
        show_row(*form, *edit, !alone && (!scoped || size));
    show_row(*form, *diameter_, !alone);
    show_row(*form, *butt_, !alone);
    diameter_->set_length(log.sizes.diameter, units);
    mark_->set_name(text(log.mark));
    butt_height_->set_length(log.sizes.butt_height, units);
    tip_height_->set_length(log.sizes.tip_height, units);
    butt_width_->set_length(log.sizes.butt_width, units);
    tip_width_->set_length(log.sizes.tip_width, units);
    bow_->set_length(log.bow, units);
    butt_->setCurrentIndex(index_of(log.sizes.butt));
    finish_->setCurrentIndex(index_of(log.sizes.finish));
    fabric_->setCurrentIndex(index_of(log.fabric));
    show_species(*species_, log.species);
    note_->set_name(text(log.note));
}

void LogFields::let_go() {
    for (MeasureEdit *edit : findChildren<MeasureEdit *>())
        edit->let_go();
}

OwnLog LogFields::stated_over(OwnLog log) const {
    log.mark = mark_->name().toStdString();
    log.sizes.butt_height = butt_height_->stated();
    log.sizes.tip_height = tip_height_->stated();
    log.sizes.butt_width = butt_width_->stated();
    log.sizes.tip_width = tip_width_->stated();
    log.sizes.diameter = diameter_->stated();
    log.bow = bow_->stated();
    log.sizes.butt = stated_in<LogEnd>(*butt_);
    log.sizes.finish = stated_in<Finish>(*finish_);
    log.fabric = stated_in<Fabric>(*fabric_);
    log.species = species_->currentData().toString().toStdString();
    log.note = note_->name().toStdString();
    return log;
}

} // namespace roundlay::window
