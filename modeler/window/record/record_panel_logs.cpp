// Which log the panel shows, and how what is typed gets into the record.
#include "exporters/words/words.h"
#include "kernel/record/check_record.h"
#include "kernel/record/numbers.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/field_words.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/field_row.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/decide_dialog.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/record/photographs.h"
#include "modeler/window/record/record_panel.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QSignalBlocker>
#include <algorithm>

namespace roundlay::window {

namespace {

QString listed(const LogAtHand &log) {
    const QString words = text(log.found.tag) + QStringLiteral(" \u2013 ") + place_words(log.found.place);
    return log.recorded ? words : RecordPanel::tr("%1 (not recorded)").arg(words);
}

} // namespace

void RecordPanel::show_logs() {
    QStringList words;
    int now = -1;
    for (const LogAtHand &log : at_hand_.logs())
        words << listed(log);
    if (const auto at = at_hand_.place()) now = static_cast<int>(*at);
    const QSignalBlocker by_the_program(logs_box_);
    bool same = logs_box_->count() == words.size();
    for (int i = 0; same && i < words.size(); ++i)
        same = logs_box_->itemText(i) == words[i];
    if (!same) {
        logs_box_->clear();
        logs_box_->addItems(words);
    }
    logs_box_->setCurrentIndex(now);
}

/// What its record says against itself, and what cannot be read yet.
QString RecordPanel::problems_of(const LogAtHand &log) const {
    Record record = desk_.reading()->record;
    const auto at = std::ranges::find(record.logs, log.found.tag, &FoundLog::tag);
    if (at == record.logs.end()) return {};
    const std::string path = log_path(static_cast<std::size_t>(at - record.logs.begin()));
    auto all = read_numbers(record);
    const auto more = contradictions(record);
    all.insert(all.end(), more.begin(), more.end());
    QStringList words;
    for (const RecordProblem &problem : all)
        if (problem.path == path || problem.path.starts_with(path + "."))
            words << with_labels(text(words_of(problem.what, Speech{language(), desk_.units()})));
    return words.join(QStringLiteral("\n"));
}

void RecordPanel::show_head(const LogAtHand &log) {
    const FoundLog &found = log.found;
    QStringList words;
    if (!log.recorded) words << tr("Not recorded yet: what is typed into any box begins its record.");
    if (const QString wrong = problems_of(log); !wrong.isEmpty()) words << wrong;
    head_->setText(words.join(u'\n'));
    head_->setVisible(!words.isEmpty());
    QStringList files;
    for (const std::string &each : found.photographs)
        files << text(each);
    photographs_->show_files(files, desk_.folder());
    QStringList decided;
    for (auto each = found.decisions.rbegin(); each != found.decisions.rend(); ++each)
        decided << (decided.isEmpty() ? tr("Decided: %1") : tr("before that: %1")).arg(decision_words(*each));
    decisions_->setText(decided.isEmpty() ? tr("Nothing is decided of it.") : decided.join(u'\n'));
}

void RecordPanel::go(int step, const QString &box) {
    const auto now = at_hand_.place();
    if (!now) return;
    const auto next = static_cast<std::ptrdiff_t>(*now) + step;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(at_hand_.logs().size())) return;
    at_hand_.take(static_cast<std::size_t>(next));
    if (step < 0 && box.isEmpty())
        form_->go_to_last();
    else
        form_->go_to(box);
}

void RecordPanel::begin_typing() {
    if (at_hand_.log() == nullptr) at_hand_.take(0);
    refresh();
    form_->go_to();
}

void RecordPanel::take(const QString &box, const RecordForm::Change &change, QWidget *field) {
    const LogAtHand *now = at_hand_.log();
    if (now == nullptr) return;
    const LogAtHand log = *now;
    const auto deed = [&] {
        at_hand_.edit(tr("Record log %1: %2").arg(text(log.found.tag), box), log, change);
    };
    if (auto *typed = qobject_cast<MeasureEdit *>(field)) return commit(*typed, desk_, deed);
    deed();
    refresh(); // as it was, where that was refused
}

/// Whole paths only where there is no folder of the document's yet, or they lie elsewhere.
void RecordPanel::add_photographs(const QStringList &files) {
    const LogAtHand *now = at_hand_.log();
    if (now == nullptr || files.isEmpty()) return;
    const LogAtHand log = *now;
    std::vector<std::string> names;
    const QFileInfo document(desk_.path());
    for (const QString &file : files) {
        const QString beside = document.absoluteDir().relativeFilePath(file);
        const bool near = !desk_.path().isEmpty() && !beside.startsWith(QStringLiteral(".."));
        names.push_back((near ? beside : file).toStdString());
    }
    at_hand_.edit(tr("Photographs of log %1").arg(text(log.found.tag)), log, [&](FoundLog &found) {
        for (const std::string &name : names)
            if (std::ranges::find(found.photographs, name) == found.photographs.end())
                found.photographs.push_back(name);
    });
}

void RecordPanel::decide(const std::string &tag, Decision first) {
    const auto &logs = at_hand_.logs();
    const auto at = log_tagged(logs, tag);
    const ReadPtr read = desk_.reading();
    if (!at || !read->shell) return;
    const LogAtHand log = logs[*at];
    DecideDialog dialog(log.found, first, *read->shell, window());
    if (dialog.exec() != QDialog::Accepted) return;
    const FoundDecision decision = dialog.decision();
    at_hand_.edit(tr("Decide about log %1: %2").arg(text(tag), decision_word(decision.what)), log,
                  [&](FoundLog &found) { found.decisions.push_back(decision); });
}

} // namespace roundlay::window
