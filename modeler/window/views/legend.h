// What the colours and patterns of a view mean: a slip in its lower left corner, shown or hidden by the
// person.
#pragma once

#include <QColor>
#include <QString>
#include <QWidget>
#include <vector>

class QKeyEvent;

namespace roundlay::window {

struct LegendEntry {
    QColor colour, edge;
    Qt::BrushStyle pattern = Qt::NoBrush; ///< over the colour
    QColor lines;                         ///< of the pattern
    QString words;
    bool operator==(const LegendEntry &) const = default;
};

/// What every view says alike: how the choice and faults are marked.
LegendEntry chosen_entry();
LegendEntry fault_entry();

class Legend : public QWidget {
    Q_OBJECT
  public:
    explicit Legend(QWidget *view);

    void want(bool on);
    bool is_wanted() const { return wanted_; }
    void tell(const std::vector<LegendEntry> &entries);
    const std::vector<LegendEntry> &entries() const { return entries_; }
    void paint(QPainter &painter) const; ///< its corner lies at the origin

  protected:
    bool eventFilter(QObject *view, QEvent *event) override;
    void paintEvent(QPaintEvent *) override;

  private:
    void lay_in_the_corner();

    bool wanted_ = false;
    std::vector<LegendEntry> entries_;
};

/// The menu key, or what stands for it on keyboards that have none.
bool is_menu_key(const QKeyEvent &event);

} // namespace roundlay::window
