// A field for the next wall of a sketch: its length, and its direction where one is typed behind it.
#pragma once

#include "modeler/window/panels/length_edit.h"

namespace roundlay::window {

/// `4500 mm`, `4500 mm at 135` (degrees of the compass, clockwise from north), `14' 9" at south-east`.
class WayEdit : public LengthEdit {
    Q_OBJECT
  public:
    explicit WayEdit(QWidget *parent = nullptr);

    /// Degrees counter-clockwise from east, as walls have it; nothing where none was typed.
    std::optional<double> heading() const { return heading_; }

  protected:
    std::optional<MeasureError> read(const QString &typed) override;

  private:
    std::optional<double> heading_;
};

} // namespace roundlay::window
