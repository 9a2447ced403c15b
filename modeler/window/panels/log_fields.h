// The fields for what a person states of one log alone.
#pragma once

#include "kernel/shell/shell.h"

#include <QGroupBox>

class QComboBox;
class QFormLayout;

namespace roundlay::window {

class LengthEdit;
class MeasureEdit;
class NameEdit;

class LogFields : public QGroupBox {
    Q_OBJECT
  public:
    explicit LogFields(QWidget *parent = nullptr);

    /// Of a log that openings part, `alone` is the tag of the one that is chosen: the person says whether the
    /// whole round is meant or that one. Empty: there is no other in the round.
    void offer_parts(const QString &alone, bool says_something_alone);
    bool is_alone() const; ///< the fields tell of one of several logs in the round
    /// `all`: what is stated of all logs, and holds where nothing is stated of this one.
    void show_log(const OwnLog &log, const LogSizes &all, UnitSystem units, bool scoped);
    /// The log with what stands in the fields; what has no field stays.
    OwnLog stated_over(OwnLog log) const;
    void let_go(); ///< of what was typed of another log

  signals:
    void meant_another(); ///< the whole round, or the one log
    void
    stated(roundlay::window::MeasureEdit *field); ///< something, by the person; null where it was a choice

  private:
    LengthEdit *length_field(QFormLayout *form, const QString &name, const QString &label,
                             const QString &when_empty);
    void show_what_holds(const LogSizes &all, UnitSystem units);
    QComboBox *choice(QFormLayout *form, const QString &label, const QStringList &words);

    QComboBox *meant_;
    QString alone_;
    NameEdit *mark_, *note_;
    LengthEdit *butt_height_, *tip_height_, *butt_width_, *tip_width_, *diameter_, *bow_;
    QComboBox *butt_, *finish_, *fabric_, *species_;
};

} // namespace roundlay::window
