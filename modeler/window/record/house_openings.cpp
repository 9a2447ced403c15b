// The boxes of an opening that was measured, and the way from box to box.
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/record/house_fields.h"
#include "modeler/window/record/into_box.h"

#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>

namespace roundlay::window {

/// By its name, and by its wall where either of them says which.
RecordedOpening *HouseFields::opening(Record &record, bool make) const {
    if (!opening_at_hand_) return nullptr;
    const OpeningAtHand &now = *opening_at_hand_;
    const auto is_it = [&](const RecordedOpening &each) {
        return each.name == now.name && (each.wall.empty() || now.wall.empty() || each.wall == now.wall);
    };
    const auto at = std::ranges::find_if(record.openings, is_it);
    if (at != record.openings.end()) return &*at;
    if (!make) return nullptr;
    record.openings.push_back({});
    record.openings.back().name = now.name;
    record.openings.back().wall = now.wall;
    return &record.openings.back();
}

/// In the order in which one walks round it with a tape.
void HouseFields::make_opening() {
    QFormLayout &form = part(opening_, opening_title_);
    const auto size = [&](const char *name, const QString &label, NotedLength RecordedOpening::*member) {
        number(form, QLatin1String(name), label, [this, member](Record &record, bool make) {
            RecordedOpening *now = opening(record, make);
            return now == nullptr ? nullptr : &(now->*member);
        });
    };
    const auto noted = [&](const char *name, const QString &label, std::string RecordedOpening::*member) {
        words(form, QLatin1String(name), label, [this, member](Record &record, bool make) {
            RecordedOpening *now = opening(record, make);
            return now == nullptr ? nullptr : &(now->*member);
        });
    };
    noted("opening_zero", tr("Jambs measured from corner"), &RecordedOpening::zero);
    size("opening_near_at_sill", tr("Near jamb, at the sill"), &RecordedOpening::near_at_sill);
    size("opening_far_at_sill", tr("Far jamb, at the sill"), &RecordedOpening::far_at_sill);
    size("opening_near_at_head", tr("Near jamb, at the head"), &RecordedOpening::near_at_head);
    size("opening_far_at_head", tr("Far jamb, at the head"), &RecordedOpening::far_at_head);
    size("opening_width", tr("Width, jamb to jamb"), &RecordedOpening::width);
    size("opening_height", tr("Height, sill to head"), &RecordedOpening::height);
    size("opening_sill", tr("Level of its sill over the plane"), &RecordedOpening::sill);
    size("opening_head", tr("Level of its head over the plane"), &RecordedOpening::head);
    noted("opening_plane", tr("Levels read from plane"), &RecordedOpening::plane);
    noted("opening_sheet", tr("On field sheet"), &RecordedOpening::sheet);
    noted("opening_note", tr("Note"), &RecordedOpening::note);
}

void HouseFields::show_opening() {
    opening_->setVisible(opening_at_hand_.has_value());
    if (!opening_at_hand_) return;
    opening_title_->setText(tr("Opening: %1").arg(opening_at_hand_->title));
    findChild<QLineEdit *>(QStringLiteral("opening_zero"))
        ->setPlaceholderText(opening_at_hand_->corners.join(tr(" or ")));
}

/// All boxes that can be typed into now, in order.
std::vector<QWidget *> HouseFields::chain() const {
    std::vector<QWidget *> all;
    for (const QWidget *part : {wall_, corner_, opening_, plane_, diagonal_})
        for (MeasureEdit *box : part->findChildren<MeasureEdit *>())
            if (box->isVisibleTo(this) && box->isEnabled()) all.push_back(box);
    return all;
}

void HouseFields::begin_typing() {
    if (const auto all = chain(); !all.empty()) go_into(*all.front());
}

bool HouseFields::eventFilter(QObject *object, QEvent *event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto &key = *static_cast<QKeyEvent *>(event);
    if (key.key() != Qt::Key_Return && key.key() != Qt::Key_Enter) return false;
    auto *box = qobject_cast<MeasureEdit *>(object);
    box->finish();
    if (!box->complaint().isEmpty()) return true; // to be put right first
    const int step = key.modifiers() & Qt::ShiftModifier ? -1 : 1;
    const auto all = chain();
    const auto at = std::ranges::find(all, box);
    const auto next = at - all.begin() + step;
    if (at == all.end() || next < 0 || next >= static_cast<std::ptrdiff_t>(all.size()))
        emit left(step);
    else
        go_into(*all[static_cast<std::size_t>(next)]);
    return true;
}

} // namespace roundlay::window
