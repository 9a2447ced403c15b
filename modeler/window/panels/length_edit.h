// A field for a length in either system, and one for a slope. Nonsense is answered with what would be right,
// and the old value stays.
#pragma once

#include "kernel/measure/measure.h"

#include <QLineEdit>
#include <optional>

namespace roundlay::window {

/// The part that both fields share: typed text becomes a value or a sentence.
class MeasureEdit : public QLineEdit {
    Q_OBJECT
  public:
    explicit MeasureEdit(QWidget *parent = nullptr);

    void finish(); ///< takes what was typed, as Enter does
    const QString &complaint() const { return complaint_; } ///< empty = what stands there is right

  signals:
    void complained(const QString &sentence); ///< empty when it is right again

  protected:
    /// Takes the text over, or returns why not.
    virtual std::optional<MeasureError> take() = 0;
    virtual QString shown() const = 0; ///< the value as text
    void show_value();
    void focusOutEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

  private:
    void complain(const QString &sentence);

    QString complaint_;
};

class LengthEdit : public MeasureEdit {
    Q_OBJECT
  public:
    using MeasureEdit::MeasureEdit;

    Length length() const { return length_.value_or(Length()); }
    std::optional<Length> stated() const { return length_; }
    void set_length(std::optional<Length> length, UnitSystem units); ///< nothing = empty field
    void set_optional(bool may_be_empty) { optional_ = may_be_empty; }

  signals:
    void committed(); ///< by the person; length() has the new value

  protected:
    std::optional<MeasureError> take() override;
    QString shown() const override;

  private:
    std::optional<Length> length_;
    UnitSystem units_ = UnitSystem::metric;
    bool optional_ = false;
};

class SlopeEdit : public MeasureEdit {
    Q_OBJECT
  public:
    using MeasureEdit::MeasureEdit;

    Slope slope() const { return slope_; }
    void set_slope(Slope slope);

  signals:
    void committed();

  protected:
    std::optional<MeasureError> take() override;
    QString shown() const override;

  private:
    Slope slope_;
};

/// A plain number that may be left out.
class NumberEdit : public MeasureEdit {
    Q_OBJECT
  public:
    using MeasureEdit::MeasureEdit;

    std::optional<double> number() const { return number_; }
    void set_number(std::optional<double> number);

  signals:
    void committed();

  protected:
    std::optional<MeasureError> take() override;
    QString shown() const override;

  private:
    std::optional<double> number_;
};

} // namespace roundlay::window
