#include "modeler/window/frame/option_fields.h"

#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/panels/wrapped_label.h"
#include "modeler/window/views/tints.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>

namespace roundlay::window {

namespace {

enum Column { label_column, field_column, unit_column, words_column, columns };

/// What a bare number is of; empty where lengths are not asked for.
QString unit_sign(const ExportOption &option, UnitSystem units) {
    if (!std::holds_alternative<LengthsOption>(option.kind)) return {};
    return units_of(option, units) == UnitSystem::metric ? QStringLiteral("mm") : QStringLiteral("in");
}

/// "length x width x thickness: what is cut".
QString explained(const ExportOption &option, UnitSystem units) {
    QString parts;
    if (const auto *lengths = std::get_if<LengthsOption>(&option.kind))
        parts = in_words(lengths->parts, units);
    if (const auto *numbers = std::get_if<NumbersOption>(&option.kind))
        parts = in_words(numbers->parts, units);
    const QString what = in_words(option.explained, units);
    return parts.isEmpty() ? what : parts + QStringLiteral(" – ") + what;
}

} // namespace

OptionFields::OptionFields(std::vector<const ExportOption *> options, UnitSystem units, QWidget *parent)
    : QWidget(parent), options_(std::move(options)), units_(units) {
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(words_column, 1);
    for (const ExportOption *option : options_)
        add_row(*grid, *option);
}

void OptionFields::add_row(QGridLayout &grid, const ExportOption &option) {
    const int at = grid.rowCount();
    QWidget *field = field_of(option);
    field->setObjectName(text(option.name));
    field->setToolTip(explained(option, units_));
    field->setAccessibleName(in_words(option.called, units_));
    field->setAccessibleDescription(explained(option, units_));
    auto *why = new WrappedLabel;
    why->setObjectName(QStringLiteral("why"));
    why->setVisible(false);
    if (auto *box = qobject_cast<QCheckBox *>(field)) {
        box->setText(in_words(option.called, units_));
        grid.addWidget(field, at, label_column, 1, words_column - label_column);
    } else {
        auto *label = new QLabel(in_words(option.called, units_));
        label->setBuddy(field);
        grid.addWidget(label, at, label_column);
        grid.addWidget(field, at, field_column);
        grid.addWidget(new QLabel(unit_sign(option, units_)), at, unit_column);
    }
    grid.addWidget(new WrappedLabel(explained(option, units_)), at, words_column);
    grid.addWidget(why, at + 1, field_column, 1, columns - field_column);
    rows_.push_back({&option, field, why});
}

QWidget *OptionFields::field_of(const ExportOption &option) {
    if (const auto *choice = std::get_if<ChoiceOption>(&option.kind)) return choice_of(option, *choice);
    if (!std::holds_alternative<YesNoOption>(option.kind)) return line_of(option);
    auto *box = new QCheckBox;
    box->setChecked(option.get({}).front() > 0);
    connect(box, &QCheckBox::toggled, this, &OptionFields::changed);
    return box;
}

QWidget *OptionFields::choice_of(const ExportOption &option, const ChoiceOption &kind) {
    auto *box = new QComboBox;
    const OptionValue usual = option.get({});
    if (usual.empty()) box->addItem(in_words(option.otherwise, units_), QString());
    for (const OptionWord &each : kind.words)
        box->addItem(in_words(each.called, units_), text(each.word));
    if (!usual.empty()) box->setCurrentIndex(static_cast<int>(usual.front()));
    connect(box, &QComboBox::currentIndexChanged, this, &OptionFields::changed);
    return box;
}

/// Empty means what the program has; that is shown faintly.
QWidget *OptionFields::line_of(const ExportOption &option) {
    constexpr int letters = 18;
    auto *line = new QLineEdit;
    const QString usual = text(print_option(option, option.get({}), units_));
    line->setPlaceholderText(usual.isEmpty() ? in_words(option.otherwise, units_) : usual);
    line->setMinimumWidth(letters * line->fontMetrics().averageCharWidth());
    connect(line, &QLineEdit::editingFinished, this, &OptionFields::changed);
    return line;
}

QString OptionFields::typed(const Row &row) const {
    if (const auto *box = qobject_cast<const QCheckBox *>(row.field))
        return box->isChecked() ? QStringLiteral("yes") : QStringLiteral("no");
    if (const auto *choice = qobject_cast<const QComboBox *>(row.field))
        return choice->currentData().toString();
    return qobject_cast<const QLineEdit *>(row.field)->text().trimmed();
}

QWidget *OptionFields::take(ExportOptions &into) {
    QWidget *first = nullptr;
    for (Row &row : rows_) {
        row.wrong = false;
        const QString words = typed(row);
        if (words.isEmpty()) continue;
        const auto read = read_option(*row.option, words.toStdString(), units_);
        if (const auto *value = std::get_if<OptionValue>(&read)) {
            row.option->set(into, *value);
            continue;
        }
        row.wrong = true;
        say_below(row, in_words(std::get<Said>(read), units_of(*row.option, units_)));
        if (first == nullptr) first = row.field;
    }
    return first;
}

QWidget *OptionFields::tell(const std::vector<OptionProblem> &problems, bool asked) {
    QWidget *first = nullptr;
    for (Row &row : rows_) {
        if (row.wrong) continue;
        const auto against = std::ranges::find_if(problems, [&](const OptionProblem &each) {
            return each.option == row.option->name && (asked || !each.missing);
        });
        const bool right = against == problems.end();
        say_below(row, right ? QString() : in_words(against->what, units_));
        if (!right && first == nullptr) first = row.field;
    }
    return first;
}

void OptionFields::say_below(Row &row, const QString &sentence) {
    QPalette ink = row.why->palette();
    ink.setColor(QPalette::WindowText, tints().error);
    row.why->setPalette(ink);
    row.why->setText(sentence);
    row.why->setVisible(!sentence.isEmpty());
    row.field->setAccessibleDescription(sentence.isEmpty() ? explained(*row.option, units_) : sentence);
}

const OptionFields::Row &OptionFields::row_of(const ExportOption &option) const {
    return *std::ranges::find_if(rows_, [&](const Row &row) { return row.option == &option; });
}

QString OptionFields::stated(const ExportOption &option) const {
    const QString words = typed(row_of(option));
    if (words.isEmpty()) return {};
    const auto read = read_option(option, words.toStdString(), units_);
    const auto *value = std::get_if<OptionValue>(&read);
    if (value == nullptr || *value == option.get({})) return {};
    return text(print_option(option, *value, UnitSystem::metric));
}

void OptionFields::put(const ExportOption &option, const QString &stated) {
    const auto read = read_option(option, stated.toStdString(), UnitSystem::metric);
    const auto *value = std::get_if<OptionValue>(&read);
    if (value == nullptr) return; // of another version of the program
    QWidget *field = row_of(option).field;
    const QString words = text(print_option(option, *value, units_));
    if (auto *box = qobject_cast<QCheckBox *>(field)) return box->setChecked(value->front() > 0);
    if (auto *choice = qobject_cast<QComboBox *>(field))
        return choice->setCurrentIndex(choice->findData(words));
    qobject_cast<QLineEdit *>(field)->setText(words);
}

} // namespace roundlay::window
