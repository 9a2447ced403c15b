// Fields of what an export can be told: a row for each option, with what is wrong below it.
#pragma once

#include "exporters/registry/export_option.h"

#include <QWidget>
#include <vector>

class QGridLayout;
class QLabel;

namespace roundlay::window {

class WrappedLabel;

class OptionFields : public QWidget {
    Q_OBJECT
  public:
    /// `units`: of the shell; bare numbers are in them.
    OptionFields(std::vector<const ExportOption *> options, UnitSystem units, QWidget *parent = nullptr);

    /// Takes what can be read. Below each field stands what cannot, or what is against it in `problems` of
    /// all together; what is only missing is not told before `asked`. Null, or the first field that is wrong.
    QWidget *take(ExportOptions &into);
    QWidget *tell(const std::vector<OptionProblem> &problems, bool asked);

    /// As text with its unit, whatever the shell is in: what is stated otherwise than the program has it.
    QString stated(const ExportOption &option) const;
    void put(const ExportOption &option, const QString &stated);
    const std::vector<const ExportOption *> &options() const { return options_; }

  signals:
    void changed();

  private:
    struct Row {
        const ExportOption *option;
        QWidget *field;
        WrappedLabel *why;
        bool wrong = false; ///< it cannot be read
    };
    void add_row(QGridLayout &grid, const ExportOption &option);
    QWidget *field_of(const ExportOption &option);
    QWidget *choice_of(const ExportOption &option, const ChoiceOption &kind);
    QWidget *line_of(const ExportOption &option);
    const Row &row_of(const ExportOption &option) const;
    QString typed(const Row &row) const;
    void say_below(Row &row, const QString &sentence);

    std::vector<const ExportOption *> options_;
    UnitSystem units_;
    std::vector<Row> rows_;
};

} // namespace roundlay::window
