#include "modeler/window/frame/export_choices.h"

#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/export_memory.h"
#include "modeler/window/frame/option_fields.h"

#include <QCheckBox>
#include <QStyle>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

namespace roundlay::window {

ExportChoices::ExportChoices(const ExportJob &job, QWidget *parent)
    : QWidget(parent), looked_at_(job.options) {
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    for (const Exporter &exporter : all_exporters())
        add(exporter, job);
    add_shared(job);
    column->addStretch(1);
    show_fields();
}

/// What it alone asks stands below it.
void ExportChoices::add(const Exporter &exporter, const ExportJob &job) {
    auto *box = new QCheckBox(in_words(exporter.called) + QStringLiteral(": ") + in_words(exporter.makes));
    box->setObjectName(text(exporter.name));
    box->setChecked(exporter.usual(job));
    layout()->addWidget(box);
    std::vector<const ExportOption *> own = options_asked_by(exporter.name);
    std::erase_if(own, [](const ExportOption *option) { return option->asks.size() > 1; });
    OptionFields *fields = nullptr;
    if (!own.empty()) {
        fields = new OptionFields(own, job.shell.units);
        const int inward = style()->pixelMetric(QStyle::PM_IndicatorWidth) * 2;
        fields->layout()->setContentsMargins(inward, 0, 0, 0);
        layout()->addWidget(fields);
        connect(fields, &OptionFields::changed, this, [this] { check(looked_at_); });
    }
    choices_.push_back({&exporter, box, fields});
    connect(box, &QCheckBox::toggled, this, [this, fields](bool on) {
        show_fields();
        emit changed();
        if (on && fields != nullptr) QTimer::singleShot(0, fields, [this, fields] { emit opened(fields); });
    });
}

void ExportChoices::add_shared(const ExportJob &job) {
    for (const ExportOption &option : all_export_options()) {
        if (option.asks.size() < 2) continue;
        auto *fields = new OptionFields({&option}, job.shell.units);
        layout()->addWidget(fields);
        shared_.push_back(fields);
        connect(fields, &OptionFields::changed, this, [this] { check(looked_at_); });
    }
}

bool ExportChoices::is_wanted(const Choice &choice) const {
    return choice.box->isEnabled() && choice.box->isChecked();
}

std::vector<const Exporter *> ExportChoices::wanted() const {
    std::vector<const Exporter *> all;
    for (const Choice &choice : choices_)
        if (is_wanted(choice)) all.push_back(choice.exporter);
    return all;
}

void ExportChoices::offer(bool of_all_pieces) {
    for (const Choice &choice : choices_)
        choice.box->setEnabled(of_all_pieces || choice.exporter->of_pieces);
    show_fields();
}

bool ExportChoices::is_asked(const OptionFields &fields) const {
    return std::ranges::any_of(choices_, [&](const Choice &choice) {
        return is_wanted(choice) &&
               std::ranges::count(fields.options().front()->asks, choice.exporter->name) > 0;
    });
}

void ExportChoices::show_fields() {
    for (OptionFields *fields : all_fields())
        fields->setVisible(is_asked(*fields));
}

std::vector<OptionFields *> ExportChoices::all_fields() const {
    std::vector<OptionFields *> all = shared_;
    for (const Choice &choice : choices_)
        if (choice.fields != nullptr) all.push_back(choice.fields);
    return all;
}

QWidget *ExportChoices::take(ExportOptions &into) {
    asked_ = true;
    return check(into);
}

QWidget *ExportChoices::check(ExportOptions &into) {
    QWidget *first = nullptr;
    const auto note = [&](QWidget *wrong) {
        if (first == nullptr) first = wrong;
    };
    ExportOptions read = into;
    for (const ExportOption &option : all_export_options()) // what was stated before may be no more
        option.set(read, option.get({}));
    for (OptionFields *fields : all_fields())
        if (is_asked(*fields)) note(fields->take(read));
    for (OptionFields *fields : shared_)
        note(fields->tell({}, asked_));
    for (const Choice &choice : choices_)
        if (is_wanted(choice) && choice.fields != nullptr)
            note(choice.fields->tell(option_problems(choice.exporter->name, read), asked_));
    into = read;
    return first;
}

void ExportChoices::recall(const QString &document) {
    const ExportMemory memory(document);
    for (OptionFields *fields : all_fields())
        for (const ExportOption *option : fields->options())
            if (const QString stated = memory.stated(text(option->name)); !stated.isEmpty())
                fields->put(*option, stated);
}

void ExportChoices::keep(const QString &document) const {
    ExportMemory memory(document);
    for (const OptionFields *fields : all_fields())
        for (const ExportOption *option : fields->options())
            memory.keep(text(option->name), fields->stated(*option));
}

} // namespace roundlay::window
