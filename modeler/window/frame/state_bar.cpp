#include "modeler/window/frame/state_bar.h"

#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

namespace roundlay::window {

namespace {

/// In a few words, for there is little room; the whole is told to whoever asks.
QString briefly(const ReadResult &read, const std::string &seen) {
    for (const HouseState &state : read.states)
        if (!seen.empty() && state.name == seen)
            return state.measured ? StateBar::tr("as measured: not edited here")
                                  : StateBar::tr("edits stay in this state");
    return StateBar::tr("edits are in all states");
}

QString where_edits_go(const ReadResult &read, const std::string &seen) {
    const QString own = text(read.states.front().name);
    for (const HouseState &state : read.states) {
        if (seen.empty() || state.name != seen) continue;
        if (state.measured)
            return StateBar::tr(
                       "As it was measured: seen, not edited. Numbers are changed in the panel Record, "
                       "the plan in the state %1.")
                .arg(own);
        return StateBar::tr(
                   "Edits change this state, and what stands on it: %1 stays as it is. The record is "
                   "the same in all states.")
            .arg(state.on.empty() ? own : text(state.on));
    }
    return StateBar::tr("Edits change the house as the document states it, and all states that stand on it.");
}

} // namespace

StateBar::StateBar(Desk &desk, QWidget *parent)
    : QWidget(parent), desk_(desk), states_(new QComboBox), words_(new QLabel) {
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(8, 3, 8, 3);
    auto *label = new QLabel(tr("State &of the house"));
    label->setBuddy(states_);
    states_->setObjectName(QStringLiteral("states"));
    states_->setAccessibleName(tr("State of the house that is seen"));
    states_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    words_->setObjectName(QStringLiteral("where_edits_go"));
    // The window may be narrower than all of it. A label that wraps would ask for room while it is away.
    words_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    row->addWidget(label);
    row->addWidget(states_);
    row->addWidget(words_, 1);
    connect(states_, &QComboBox::activated, this,
            [this](int at) { desk_.see(states_->itemText(at).toStdString()); });
    for (const auto signal : {&Desk::began, &Desk::text_changed, &Desk::seen_changed})
        connect(&desk_, signal, this, &StateBar::refresh);
    refresh();
}

QString StateBar::told() const {
    return words_->toolTip();
}

/// While the text cannot be read its states stay as they were.
void StateBar::refresh() {
    if (desk_.dragging()) return; // which changes no state's name
    const ReadPtr read = desk_.reading();
    if (!read->shell && read->states.empty() && desk_.is_open() && states_->count() > 0) return;
    const QSignalBlocker by_the_program(states_);
    states_->clear();
    int now = 0;
    for (const HouseState &state : read->states) {
        if (state.name == desk_.seen()) now = states_->count();
        states_->addItem(text(state.name));
    }
    setVisible(desk_.is_open() && states_->count() > 1);
    if (states_->count() == 0) return;
    states_->setCurrentIndex(now);
    words_->setText(briefly(*read, desk_.seen()));
    for (QWidget *each : std::initializer_list<QWidget *>{words_, states_}) {
        each->setToolTip(where_edits_go(*read, desk_.seen()));
        each->setAccessibleDescription(each->toolTip());
    }
}

} // namespace roundlay::window
