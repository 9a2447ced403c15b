// Fields that a person types into: a length in either system, a slope, a load, a name. What cannot be read,
// or what the document does not take, stays to be put right, with a sentence that says why; the old value
// holds until then.
#pragma once

#include "kernel/measure/measure.h"

#include <QLineEdit>
#include <optional>

namespace roundlay::window {

/// What all fields share: typed text becomes a value, or a sentence.
class MeasureEdit : public QLineEdit {
    Q_OBJECT
  public:
    explicit MeasureEdit(QWidget *parent = nullptr);

    void finish(); ///< takes what was typed, as Enter does
    /// Called by whoever hears committed() and cannot do it: the old value holds, what was typed stays.
    void refuse(const QString &why) { refused_ = why; }
    void let_go(); ///< forgets what was typed and not taken: the field is of something else now
    void blank();  ///< tells nothing, until something is shown again
    const QString &complaint() const { return complaint_; } ///< empty = what stands there is right
    /// By whoever knows what the value is for: it is taken, but may not be what was meant.
    void doubt(const QString &remark);
    const QString &remark() const { return remark_; }

  signals:
    void committed();                         ///< by the person; the field has the new value
    void complained(const QString &sentence); ///< empty when it is right again
    void remarked();
    void mended(); ///< what was complained of is no more
    void
    dropped(const QString &typed); ///< what could not be taken is gone: the field is of something else now

  protected:
    /// Reads the text into the value that waits, or returns why not.
    virtual std::optional<MeasureError> read(const QString &typed) = 0;
    virtual bool differs() const = 0;  ///< the value that waits from the one that holds
    virtual void exchange() = 0;       ///< the two
    virtual QString shown() const = 0; ///< the value that holds, as text
    void take_waiting();               ///< by the person, otherwise than by typing
    void show_value();
    void show_other(); ///< a value that comes from elsewhere
    void focusOutEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

  private:
    void take(const QString &typed);
    void put(const QString &value);
    void complain(const QString &sentence);
    bool is_told_beside() const;

    QString complaint_, refused_, remark_;
};

/// The value that holds, and the one that waits to be taken.
template <typename Value> class ValueEdit : public MeasureEdit {
  public:
    using MeasureEdit::MeasureEdit;

  protected:
    bool differs() const override { return !(waiting_ == value_); }
    void exchange() override { std::swap(waiting_, value_); }
    /// By the program. What is typed at the moment goes on unless it was of another value.
    void set_value(const Value &value, bool same_looks = true) {
        const bool same = same_looks && value == value_;
        value_ = value;
        if (!same || !isModified()) show_other();
    }

    Value value_{}, waiting_{};
};

class LengthEdit : public ValueEdit<std::optional<Length>> {
    Q_OBJECT
  public:
    using ValueEdit::ValueEdit;

    Length length() const { return value_.value_or(Length()); }
    std::optional<Length> stated() const { return value_; }
    void set_length(std::optional<Length> length, UnitSystem units); ///< nothing = empty field
    void set_optional(bool may_be_empty) { optional_ = may_be_empty; }

  protected:
    /// A bare number is of the units that the field shows: millimetres or inches.
    std::optional<MeasureError> read(const QString &typed) override;
    QString shown() const override;

  private:
    UnitSystem units_ = UnitSystem::metric;
    bool optional_ = false;
};

class SlopeEdit : public ValueEdit<Slope> {
    Q_OBJECT
  public:
    using ValueEdit::ValueEdit;

    Slope slope() const { return value_; }
    void set_slope(Slope slope) { set_value(slope); }

  protected:
    std::optional<MeasureError> read(const QString &typed) override;
    QString shown() const override;
};

/// A load on a floor, in kPa; shown in the unit that the shell uses, typed with its unit, or in kPa without
/// one where a document may state it so.
class LoadEdit : public ValueEdit<std::optional<double>> {
    Q_OBJECT
  public:
    using ValueEdit::ValueEdit;

    std::optional<double> load() const { return value_; }
    void set_load(std::optional<double> kpa, UnitSystem units) {
        units_ = units;
        set_value(kpa);
    }

  protected:
    std::optional<MeasureError> read(const QString &typed) override;
    QString shown() const override;

  private:
    std::optional<MeasureError> bare(double number);
    std::optional<MeasureError> taken();

    UnitSystem units_ = UnitSystem::metric;
};

/// Words, as they are typed.
class NameEdit : public ValueEdit<QString> {
    Q_OBJECT
  public:
    using ValueEdit::ValueEdit;

    const QString &name() const { return value_; }
    void set_name(const QString &name) { set_value(name); }

  protected:
    std::optional<MeasureError> read(const QString &typed) override;
    QString shown() const override { return value_; }
};

} // namespace roundlay::window
