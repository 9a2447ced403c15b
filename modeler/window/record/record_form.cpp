#include "modeler/window/record/record_form.h"

#include "modeler/window/desk/words.h"
#include "modeler/window/record/choice_edit.h"
#include "modeler/window/record/note_edit.h"

#include <QGridLayout>
#include <QLabel>
#include <QSettings>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

namespace {

constexpr int least_box = 46; // pixels

QLabel *label_for(QWidget &box, const QString &words) {
    auto *label = new QLabel(words);
    label->setBuddy(&box);
    label->setWordWrap(true);
    return label;
}

QString folded_key(const QString &group) {
    return QStringLiteral("record/folded/") + group;
}

} // namespace

RecordForm::RecordForm(QWidget *parent) : QWidget(parent), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(0, 0, 0, 0);
    const std::vector<RecordGroup> once = groups_of_log();
    const auto add = [&](const RecordGroup &group) {
        auto *grid = new QGridLayout(add_group(group.name, group.title));
        fill(*grid, group.boxes, group.name);
    };
    add(once[0]);
    add_ends();
    const std::vector<RecordList> lists = lists_of_log();
    add_list(lists[0]);
    add(once[1]);
    add(once[2]);
    for (std::size_t i = 1; i < lists.size(); ++i)
        add_list(lists[i]);
    add(once[3]);
}

/// Its title folds it away; what is folded away Enter passes by.
QWidget *RecordForm::add_group(const QString &name, const QString &title) {
    auto *head = new QToolButton;
    head->setText(title);
    head->setObjectName(QStringLiteral("fold_") + name);
    head->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    head->setAutoRaise(true);
    head->setCheckable(true);
    head->setFocusPolicy(Qt::NoFocus); // from box to box Tab passes by it; Ctrl+Up goes to it
    head->installEventFilter(this);
    QFont bold = head->font();
    bold.setBold(true);
    head->setFont(bold);
    auto *whole = new QWidget;
    column_->addWidget(head);
    column_->addWidget(whole);
    groups_.insert(name, whole);
    heads_.insert(name, head);
    head_order_.push_back(name);
    connect(head, &QToolButton::toggled, this, [this, name](bool away) { fold(name, away); });
    head->setArrowType(Qt::DownArrow);
    head->setChecked(QSettings().value(folded_key(name), false).toBool());
    return whole;
}

void RecordForm::fold(const QString &group, bool away) {
    groups_.value(group)->setVisible(!away);
    heads_.value(group)->setArrowType(away ? Qt::RightArrow : Qt::DownArrow);
    QSettings().setValue(folded_key(group), away);
}

void RecordForm::fill(QGridLayout &grid, const std::vector<RecordBox> &boxes, const QString &group) {
    grid.setContentsMargins(8, 0, 0, 4);
    grid.setVerticalSpacing(3);
    for (const RecordBox &box : boxes) {
        QWidget *widget = make_box(box, group);
        const int row = grid.rowCount();
        grid.addWidget(label_for(*widget, box.label), row, 0);
        grid.addWidget(widget, row, 1);
        order_.push_back(box.name);
    }
    grid.setColumnStretch(1, 1);
}

/// Side by side as on paper; typed one end after the other, as one stands at them.
void RecordForm::add_ends() {
    const QString group = QStringLiteral("ends");
    auto *grid = new QGridLayout(add_group(group, tr("Ends")));
    grid->setContentsMargins(8, 0, 0, 4);
    grid->setVerticalSpacing(3);
    for (const int end : {0, 1}) {
        end_names_[end] = new QLabel;
        end_names_[end]->setAlignment(Qt::AlignCenter);
        grid->addWidget(end_names_[end], 0, end + 1);
        grid->setColumnStretch(end + 1, 1);
        int row = 1;
        for (const RecordBox &box : boxes_of_end(end, ends_)) {
            QWidget *widget = make_box(box, group);
            if (end == 0) grid->addWidget(label_for(*widget, box.label), row, 0);
            grid->addWidget(widget, row++, end + 1);
            order_.push_back(box.name);
        }
    }
}

void RecordForm::add_list(const RecordList &list) {
    auto *column = new QVBoxLayout(add_group(list.name, list.title));
    column->setContentsMargins(8, 0, 0, 4);
    lists_.push_back({list, column, {}});
    order_.push_back(list.name); // whose boxes come and go
}

RecordForm::Part RecordForm::add_part(List &list, std::size_t at) {
    Part part{new QWidget, {}};
    auto *grid = new QGridLayout(part.whole);
    grid->setContentsMargins(0, 0, 0, 6);
    grid->setVerticalSpacing(3);
    int place = 0;
    const std::vector<RecordBox> boxes = list.list.boxes(at);
    for (const RecordBox &box : boxes) {
        QWidget *widget = make_box(box, list.list.name);
        const bool first = place == 0; // which takes a row of its own
        const int row = first ? 0 : (place + 1) / 2, column = first || place % 2 == 1 ? 0 : 2;
        grid->addWidget(label_for(*widget, box.label), row, column);
        const bool alone = first || (column == 0 && place + 1 == static_cast<int>(boxes.size()));
        grid->addWidget(widget, row, column + 1, 1, alone ? 3 : 1);
        part.boxes.push_back(box.name);
        ++place;
    }
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 1);
    list.column->addWidget(part.whole);
    return part;
}

QWidget *RecordForm::make_box(const RecordBox &box, const QString &group) {
    QWidget *made = std::holds_alternative<NumberBox>(box.is)  ? make_number(box)
                    : std::holds_alternative<WordsBox>(box.is) ? make_words(box)
                    : std::holds_alternative<FacesBox>(box.is) ? make_faces(box)
                                                               : make_choice(box);
    made->setObjectName(QStringLiteral("record_") + box.name);
    made->setAccessibleName(box.label);
    made->setMinimumWidth(least_box);
    made->installEventFilter(this);
    boxes_.insert(box.name, {box, made, group});
    return made;
}

/// What it complains of is told over the boxes, by its label, and by the box itself.
void RecordForm::follow(MeasureEdit &edit, const RecordBox &box) {
    connect(&edit, &MeasureEdit::complained, this, [this, &edit](const QString &sentence) {
        edit.setToolTip(sentence);
        emit complained(complaints());
    });
    connect(&edit, &MeasureEdit::dropped, this,
            [this, label = box.label](const QString &typed) { emit dropped(label, typed); });
}

/// Of every box, for each waits to be put right.
QString RecordForm::complaints() const {
    QStringList all;
    for (const Shown &shown : boxes_)
        if (const auto *edit = qobject_cast<MeasureEdit *>(shown.widget);
            edit && !edit->complaint().isEmpty())
            all << tr("%1: %2").arg(shown.box.label, edit->complaint());
    all.sort();
    return all.join(u'\n');
}

QWidget *RecordForm::make_number(const RecordBox &box) {
    auto *edit = new NoteEdit;
    follow(*edit, box);
    connect(edit, &NoteEdit::committed, this, [this, edit, box] {
        const auto at = std::get<NumberBox>(box.is).at;
        emit stated(
            box.label,
            [at, number = edit->number()](FoundLog &log) {
                if (NotedLength *there = at(log, number.is_taken())) *there = number;
            },
            edit);
    });
    return edit;
}

QWidget *RecordForm::make_words(const RecordBox &box) {
    auto *edit = new NameEdit;
    follow(*edit, box);
    connect(edit, &NameEdit::committed, this, [this, edit, box] {
        emit stated(
            box.label,
            [set = std::get<WordsBox>(box.is).set,
             typed = edit->name().trimmed().toStdString()](FoundLog &log) { set(log, typed); },
            edit);
    });
    return edit;
}

QWidget *RecordForm::make_faces(const RecordBox &box) {
    auto *edit = new FacesEdit;
    follow(*edit, box);
    connect(edit, &FacesEdit::committed, this, [this, edit, box] {
        emit stated(
            box.label,
            [set = std::get<FacesBox>(box.is).set, faces = edit->faces()](FoundLog &log) { set(log, faces); },
            edit);
    });
    return edit;
}

QWidget *RecordForm::make_choice(const RecordBox &box) {
    auto *choice = new ChoiceEdit;
    choice->addItems(std::get<ChoiceBox>(box.is).words);
    connect(choice, &ChoiceEdit::chosen, this, [this, choice, box](int chosen) {
        emit stated(
            box.label, [set = std::get<ChoiceBox>(box.is).set, chosen](FoundLog &log) { set(log, chosen); },
            choice);
    });
    return choice;
}

void RecordForm::show_box(const Shown &shown, FoundLog &log) const {
    if (const auto *number = std::get_if<NumberBox>(&shown.box.is)) {
        const NotedLength *there = number->at(log, false);
        static_cast<NoteEdit *>(shown.widget)->set_number(there == nullptr ? NotedLength() : *there);
    } else if (const auto *words = std::get_if<WordsBox>(&shown.box.is)) {
        static_cast<NameEdit *>(shown.widget)->set_name(text(words->get(log)));
    } else if (const auto *faces = std::get_if<FacesBox>(&shown.box.is)) {
        static_cast<FacesEdit *>(shown.widget)->set_faces(faces->get(log));
    } else {
        static_cast<ChoiceEdit *>(shown.widget)->show_choice(std::get<ChoiceBox>(shown.box.is).get(log));
    }
}

/// One blank part behind those that were found. In it all wait for the first box, which says what it is.
void RecordForm::show_list(List &list, FoundLog &log) {
    const std::size_t there = list.list.count(log);
    while (list.parts.size() <= there)
        list.parts.push_back(add_part(list, list.parts.size()));
    for (std::size_t i = 0; i < list.parts.size(); ++i) {
        list.parts[i].whole->setVisible(i <= there);
        for (std::size_t box = 0; box < list.parts[i].boxes.size(); ++box) {
            const Shown &shown = boxes_[list.parts[i].boxes[box]];
            show_box(shown, log);
            shown.widget->setEnabled(i < there || box == 0);
        }
    }
}

void RecordForm::show_ends(const LogAtHand &log) {
    for (const int end : {0, 1}) {
        const EndAtHand &at = log.ends[end];
        ends_[static_cast<std::size_t>(end)] = at.name;
        end_names_[end]->setText(at.name.empty() ? tr("not named") : text(at.name));
        for (const RecordBox &box : boxes_of_end(end, ends_)) {
            QWidget *widget = boxes_[box.name].widget;
            widget->setEnabled(!at.name.empty());
            widget->setAccessibleName(tr("%1, end %2").arg(box.label, text(at.name)));
            auto *edit = qobject_cast<NoteEdit *>(widget);
            if (edit == nullptr) continue;
            const auto proposed = at.proposed.find(box.name.section(u'_', 1).toStdString());
            edit->propose(proposed == at.proposed.end() ? QString() : proposed->second);
        }
    }
}

void RecordForm::show_log(const LogAtHand &log) {
    show_ends(log);
    FoundLog found = log.found;
    for (List &list : lists_)
        show_list(list, found);
    for (const QString &name : order_)
        if (boxes_.contains(name)) show_box(boxes_[name], found);
}

void RecordForm::let_go() {
    for (const Shown &shown : boxes_)
        if (auto *edit = qobject_cast<MeasureEdit *>(shown.widget))
            edit->let_go();
        else if (auto *choice = qobject_cast<ChoiceEdit *>(shown.widget))
            choice->let_go();
}

} // namespace roundlay::window
