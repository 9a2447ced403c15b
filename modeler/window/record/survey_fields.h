// What is said of the survey as a whole: who, when, and how its numbers are to be read.
#pragma once

#include "kernel/record/record.h"

#include <QWidget>
#include <functional>

class QFormLayout;

namespace roundlay::window {

class ChoiceEdit;
class Desk;
class MeasureEdit;
class NameEdit;

class SurveyFields : public QWidget {
    Q_OBJECT
  public:
    explicit SurveyFields(Desk &desk, QWidget *parent = nullptr);

    void show_record(const Record &record);

  private:
    NameEdit *words_field(QFormLayout &form, const char *name, const QString &label,
                          std::string Record::*member);
    ChoiceEdit *choice_field(QFormLayout &form, const char *name, const QString &label,
                             const QStringList &words, const std::function<void(Record &, int)> &set);
    void edit(const QString &label, const std::function<void(Record &)> &change, MeasureEdit *field);

    Desk &desk_;
    NameEdit *by_, *on_, *exactness_, *not_seen_;
    ChoiceEdit *unit_, *denominator_, *two_fields_;
};

} // namespace roundlay::window
