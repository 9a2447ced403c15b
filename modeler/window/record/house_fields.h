// What the record says of the house itself: a wall, a corner, an opening, its level planes and diagonals,
// each in boxes of its own. Enter goes from box to box.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/record/record.h"
#include "modeler/window/desk/selection.h"

#include <QStringList>
#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

class QFormLayout;
class QLabel;

namespace roundlay::window {

class Desk;
class MeasureEdit;

/// The opening of the plan that is chosen.
struct OpeningAtHand {
    std::string name;    ///< as the record calls it
    QString title;       ///< for people
    std::string wall;    ///< where the plan has another of that name, else empty
    QStringList corners; ///< at the ends of its wall: what its jambs may be measured from
};

class HouseFields : public QWidget {
    Q_OBJECT
  public:
    explicit HouseFields(Desk &desk, QWidget *parent = nullptr);

    /// Of the wall, the corner or the opening that is chosen; where nothing is, planes and diagonals. `plan`
    /// says which walls meet in a corner.
    void show_of(const Record &record, const Chosen &chosen, const Plan &plan,
                 const std::optional<OpeningAtHand> &opening);
    void begin_typing(); ///< in the first of its boxes

  signals:
    void left(int step); ///< by Enter out of the last box, 1, or with Shift out of the first, -1

  protected:
    bool eventFilter(QObject *box, QEvent *event) override;

  private:
    using Number = std::function<NotedLength *(Record &, bool make)>;
    using Words = std::function<std::string *(Record &, bool make)>;
    using Change = std::function<void(Record &)>;

    QFormLayout &part(QWidget *&whole, QLabel *&title);
    void make_wall();
    void make_corner();
    void make_opening();
    RecordedOpening *opening(Record &record, bool make) const;
    void show_opening();
    std::vector<QWidget *> chain() const;
    void make_house();
    void add_plane();
    void add_diagonal();
    /// `waits`: for the part that it is of to be named in another box.
    void number(QFormLayout &form, const QString &name, const QString &label, const Number &at,
                bool waits = false);
    void words(QFormLayout &form, const QString &name, const QString &label, const Words &at);
    void between(QFormLayout &form, std::size_t at);
    void edit(const QString &label, const Change &change, MeasureEdit &field);
    void let_go();

    Desk &desk_;
    Chosen of_;
    std::vector<std::string> walls_; ///< that meet in the chosen corner
    std::optional<OpeningAtHand> opening_at_hand_;
    QWidget *wall_ = nullptr, *corner_ = nullptr, *opening_ = nullptr, *plane_ = nullptr,
            *diagonal_ = nullptr;
    QLabel *wall_title_ = nullptr, *corner_title_ = nullptr, *opening_title_ = nullptr,
           *plane_title_ = nullptr, *diagonal_title_ = nullptr;
    QFormLayout *plane_form_ = nullptr, *diagonal_form_ = nullptr;
    std::size_t planes_ = 0, diagonals_ = 0; ///< rows there are boxes for
    std::vector<std::function<void(Record &)>> shows_;
};

} // namespace roundlay::window
