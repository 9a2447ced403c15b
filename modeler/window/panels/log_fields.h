// The fields for what a person states of one log alone.
#pragma once

#include "kernel/shell/shell.h"

#include <QGroupBox>

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace roundlay::window {

class LengthEdit;

class LogFields : public QGroupBox {
    Q_OBJECT
  public:
    explicit LogFields(QWidget *parent = nullptr);

    void show_log(const OwnLog &log, UnitSystem units);
    /// The log with what stands in the fields; what has no field stays.
    OwnLog stated_over(OwnLog log) const;

  signals:
    void stated();                            ///< something, by the person
    void complained(const QString &sentence); ///< of a field; empty when it is right again

  private:
    LengthEdit *length_field(QFormLayout *form, const QString &name, const QString &label,
                             const QString &when_empty);
    QComboBox *choice(QFormLayout *form, const QString &label, const QStringList &words);

    QLineEdit *mark_;
    LengthEdit *butt_height_, *tip_height_, *butt_width_, *tip_width_, *bow_;
    QComboBox *butt_, *finish_, *fabric_;
};

} // namespace roundlay::window
