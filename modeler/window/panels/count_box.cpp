#include "modeler/window/panels/count_box.h"

#include "modeler/window/views/tints.h"

#include <QSignalBlocker>
#include <algorithm>
#include <utility>

namespace roundlay::window {

CountBox::CountBox(int low, int high, QWidget *parent)
    : QSpinBox(parent), low_(low), high_(high), count_(low) {
    constexpr int longest = 999'999;
    setRange(-longest, longest);
    setValue(low);
    connect(this, &QSpinBox::valueChanged, this, &CountBox::take);
}

void CountBox::take(int typed) {
    if (typed < low_ || typed > high_)
        return complain(
            tr("%1 is out of bounds; expected a whole number from %2 to %3").arg(typed).arg(low_).arg(high_));
    complain({});
    if (std::exchange(count_, typed) != typed) emit counted(typed);
}

void CountBox::show_count(int count) {
    if (!complaint_.isEmpty() && count == count_) return;
    count_ = count;
    let_go();
}

void CountBox::let_go() {
    {
        const QSignalBlocker by_the_program(this);
        setValue(count_);
    }
    complain({});
}

void CountBox::stepBy(int steps) {
    setValue(std::clamp(value() + steps * singleStep(), low_, high_));
    selectAll();
}

QAbstractSpinBox::StepEnabled CountBox::stepEnabled() const {
    StepEnabled can = StepNone;
    if (value() < high_) can |= StepUpEnabled;
    if (value() > low_) can |= StepDownEnabled;
    return can;
}

void CountBox::complain(const QString &sentence) {
    if (sentence == complaint_) return;
    complaint_ = sentence;
    setAccessibleDescription(sentence);
    QPalette p; // as the window's: what is out of reach looks so
    for (const auto group : {QPalette::Active, QPalette::Inactive})
        if (!sentence.isEmpty()) p.setColor(group, QPalette::Text, tints().error);
    setPalette(p);
    emit complained(sentence);
}

} // namespace roundlay::window
