#include "modeler/window/record/house_fields.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/record/note_edit.h"

#include <QFormLayout>
#include <QLabel>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

RecordedWall *wall_called(Record &record, const std::string &name, bool make) {
    const auto at = std::ranges::find(record.walls, name, &RecordedWall::wall);
    if (at != record.walls.end()) return &*at;
    if (!make) return nullptr;
    record.walls.push_back({});
    record.walls.back().wall = name;
    return &record.walls.back();
}

/// By the plan's name for it, or by the walls that meet in it.
RecordedCorner *corner_called(Record &record, const std::string &name, const std::vector<std::string> &walls,
                              bool make) {
    const auto is_it = [&](const RecordedCorner &corner) {
        return corner.name == name || (!walls.empty() && std::ranges::is_permutation(corner.walls, walls));
    };
    const auto at = std::ranges::find_if(record.corners, is_it);
    if (at != record.corners.end()) return &*at;
    if (!make) return nullptr;
    record.corners.push_back({});
    record.corners.back().name = name;
    record.corners.back().walls = walls;
    return &record.corners.back();
}

std::vector<std::string> walls_of(const Plan &plan, const std::string &corner) {
    for (const CornerPlace &each : plan.corners)
        if (each.name == corner) return {plan.walls[each.ends].name, plan.walls[each.starts].name};
    return {};
}

template <typename Part> Part *part_at(std::vector<Part> &parts, std::size_t at, bool make) {
    if (at >= parts.size() && make) parts.resize(at + 1);
    return at < parts.size() ? &parts[at] : nullptr;
}

/// Of which nothing is said any more.
void drop_blank(Record &record) {
    std::erase_if(record.walls, [](const RecordedWall &wall) {
        RecordedWall blank;
        blank.wall = wall.wall;
        return wall == blank;
    });
    std::erase_if(record.openings, [](const RecordedOpening &opening) {
        RecordedOpening blank;
        blank.name = opening.name, blank.wall = opening.wall;
        return opening == blank;
    });
    std::erase(record.planes, LevelPlane());
    std::erase(record.diagonals, Diagonal());
}

} // namespace

HouseFields::HouseFields(Desk &desk, QWidget *parent) : QWidget(parent), desk_(desk) {
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    make_wall();
    make_corner();
    make_opening();
    make_house();
}

QFormLayout &HouseFields::part(QWidget *&whole, QLabel *&title) {
    whole = new QWidget;
    auto *form = new QFormLayout(whole);
    form->setContentsMargins(8, 0, 0, 4);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    title = new QLabel;
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    form->addRow(title);
    layout()->addWidget(whole);
    return *form;
}

void HouseFields::make_wall() {
    QFormLayout &form = part(wall_, wall_title_);
    number(form, QStringLiteral("wall_length"), tr("Length, from corner to corner"),
           [this](Record &record, bool make) {
               RecordedWall *wall = wall_called(record, of_.name, make);
               return wall == nullptr ? nullptr : &wall->length;
           });
    words(form, QStringLiteral("wall_note"), tr("Note"), [this](Record &record, bool make) {
        RecordedWall *wall = wall_called(record, of_.name, make);
        return wall == nullptr ? nullptr : &wall->note;
    });
}

void HouseFields::make_corner() {
    QFormLayout &form = part(corner_, corner_title_);
    const auto size = [&](const char *name, const QString &label, NotedLength RecordedCorner::*member) {
        number(form, QLatin1String(name), label, [this, member](Record &record, bool make) {
            RecordedCorner *corner = corner_called(record, of_.name, walls_, make);
            return corner == nullptr ? nullptr : &(corner->*member);
        });
    };
    const auto noted = [&](const char *name, const QString &label, std::string RecordedCorner::*member) {
        words(form, QLatin1String(name), label, [this, member](Record &record, bool make) {
            RecordedCorner *corner = corner_called(record, of_.name, walls_, make);
            return corner == nullptr ? nullptr : &(corner->*member);
        });
    };
    size("corner_level", tr("Level of its mark over the plane"), &RecordedCorner::level);
    noted("corner_plane", tr("Read from plane"), &RecordedCorner::plane);
    size("corner_lean_first", tr("Lean outward on the first wall's face"), &RecordedCorner::lean_first);
    size("corner_lean_second", tr("Lean outward on the second wall's face"), &RecordedCorner::lean_second);
    size("corner_lean_over", tr("Lean measured over a height of"), &RecordedCorner::lean_over);
    noted("corner_note", tr("Note"), &RecordedCorner::note);
}

void HouseFields::make_house() {
    plane_form_ = &part(plane_, plane_title_);
    plane_title_->setText(tr("Level planes"));
    diagonal_form_ = &part(diagonal_, diagonal_title_);
    diagonal_title_->setText(tr("Diagonals"));
}

void HouseFields::add_plane() {
    const std::size_t at = planes_++;
    const QString before = QStringLiteral("plane%1_").arg(at);
    words(*plane_form_, before + QStringLiteral("name"), tr("Level plane"), [at](Record &record, bool make) {
        LevelPlane *plane = part_at(record.planes, at, make);
        return plane == nullptr ? nullptr : &plane->name;
    });
    number(
        *plane_form_, before + QStringLiteral("offset"), tr("Offset of that plane"),
        [at](Record &record, bool) {
            LevelPlane *plane = part_at(record.planes, at, false);
            return plane == nullptr ? nullptr : &plane->offset;
        },
        true);
}

void HouseFields::add_diagonal() {
    const std::size_t at = diagonals_++;
    between(*diagonal_form_, at);
    number(
        *diagonal_form_, QStringLiteral("diagonal%1_length").arg(at), tr("Length of that diagonal"),
        [at](Record &record, bool) {
            Diagonal *diagonal = part_at(record.diagonals, at, false);
            return diagonal == nullptr ? nullptr : &diagonal->length;
        },
        true);
}

void HouseFields::number(QFormLayout &form, const QString &name, const QString &label, const Number &at,
                         bool waits) {
    auto *field = new NoteEdit;
    field->setObjectName(name);
    field->installEventFilter(this);
    add_field(form, label, *field);
    connect(field, &NoteEdit::committed, this, [this, field, label, at] {
        const auto put = [at, number = field->number()](Record &record) {
            if (NotedLength *there = at(record, number.is_taken())) *there = number;
        };
        edit(label, put, *field);
    });
    shows_.push_back([field, at, waits](Record &record) {
        const NotedLength *there = at(record, false);
        field->set_number(there == nullptr ? NotedLength() : *there);
        if (waits) field->setEnabled(there != nullptr);
    });
}

void HouseFields::words(QFormLayout &form, const QString &name, const QString &label, const Words &at) {
    auto *field = new NameEdit;
    field->setObjectName(name);
    field->installEventFilter(this);
    add_field(form, label, *field);
    connect(field, &NameEdit::committed, this, [this, field, label, at] {
        const auto put = [at, typed = field->name().trimmed().toStdString()](Record &record) {
            if (std::string *there = at(record, !typed.empty())) *there = typed;
        };
        edit(label, put, *field);
    });
    shows_.push_back([field, at](Record &record) {
        const std::string *there = at(record, false);
        field->set_name(there == nullptr ? QString() : text(*there));
    });
}

/// Both corners in one box: a diagonal of one alone is none.
void HouseFields::between(QFormLayout &form, std::size_t at) {
    auto *field = new NameEdit;
    field->setObjectName(QStringLiteral("diagonal%1_between").arg(at));
    field->installEventFilter(this);
    const QString label = tr("Diagonal between corners");
    add_field(form, label, *field);
    connect(field, &NameEdit::committed, this, [this, field, label, at] {
        static const QRegularExpression parting(QStringLiteral("[,;]"));
        QStringList corners;
        for (const QString &each : field->name().split(parting))
            if (!each.trimmed().isEmpty()) corners << each.trimmed();
        if (corners.size() != 2 && !corners.isEmpty())
            return field->refuse(tr("A diagonal runs between two corners: name both, parted by a comma"));
        const auto put = [at, corners](Record &record) {
            Diagonal *diagonal = part_at(record.diagonals, at, !corners.isEmpty());
            if (diagonal == nullptr) return;
            if (corners.isEmpty()) return *diagonal = Diagonal(), void();
            diagonal->from = corners[0].toStdString(), diagonal->to = corners[1].toStdString();
        };
        edit(label, put, *field);
    });
    shows_.push_back([field, at](Record &record) {
        const Diagonal *there = part_at(record.diagonals, at, false);
        field->set_name(there == nullptr ? QString()
                                         : text(there->from) + QStringLiteral(", ") + text(there->to));
    });
}

void HouseFields::edit(const QString &label, const Change &change, MeasureEdit &field) {
    commit(field, desk_, [&] {
        desk_.edit_record(tr("Record: %1").arg(label), [&](const Record &before) {
            Record next = before;
            change(next);
            drop_blank(next);
            return std::optional(next);
        });
    });
}

void HouseFields::let_go() {
    for (MeasureEdit *field : findChildren<MeasureEdit *>())
        field->let_go();
}

void HouseFields::show_of(const Record &record, const Chosen &chosen, const Plan &plan,
                          const std::optional<OpeningAtHand> &opening) {
    if (!(chosen == of_)) let_go(); // it was typed of another part of the house
    of_ = chosen;
    opening_at_hand_ = opening;
    show_opening();
    walls_ = chosen.kind == Chosen::Kind::corner ? walls_of(plan, chosen.name) : std::vector<std::string>();
    wall_->setVisible(chosen.kind == Chosen::Kind::wall);
    corner_->setVisible(chosen.kind == Chosen::Kind::corner);
    for (QWidget *each : {plane_, diagonal_})
        each->setVisible(chosen.kind == Chosen::Kind::nothing);
    wall_title_->setText(tr("Wall %1").arg(text(chosen.name)));
    corner_title_->setText(
        walls_.size() < 2
            ? tr("Corner %1").arg(text(chosen.name))
            : tr("Corner %1, of walls %2 and %3").arg(text(chosen.name), text(walls_[0]), text(walls_[1])));
    while (planes_ <= record.planes.size())
        add_plane();
    while (diagonals_ <= record.diagonals.size())
        add_diagonal();
    Record shown; // without the logs, of which there are many
    shown.walls = record.walls, shown.corners = record.corners;
    shown.openings = record.openings;
    shown.planes = record.planes, shown.diagonals = record.diagonals;
    for (const auto &show : shows_)
        show(shown);
}

} // namespace roundlay::window
