// The cut sheet of the chosen log, drawn live from the same drawing that goes to paper.
#pragma once

#include "exporters/sheets/drawing/sheet.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/state.h"

#include <QFutureWatcher>
#include <QWidget>
#include <functional>
#include <optional>
#include <vector>

namespace roundlay::window {

class Desk;

/// All cut sheets of one model.
std::vector<sheets::Sheet> sheets_of(const ExportJob &job, Index<Model> model);

class SheetView : public QWidget {
    Q_OBJECT
  public:
    SheetView(Desk &desk, Selection &selection, QWidget *parent = nullptr);
    ~SheetView() override;

    int pages() const { return static_cast<int>(pages_.size()); }
    const QString &tag() const { return tag_; }
    const std::vector<sheets::Sheet> &drawn() const { return pages_; }
    QString words() const;
    QRectF room_of_sheet() const;
    void paint_page(QPainter &painter, const QRectF &room); ///< in place of pages; empty where there are some
    void turn_page(int by);
    using Drawing = std::function<std::vector<sheets::Sheet>(const ExportJob &, Index<Model> model)>;
    void draw_by(Drawing drawing) {
        draw_ = std::move(drawing);
    } ///< in place of sheets_of; in a thread of its own

  signals:
    void asked_for_menu(const Chosen &thing, const QPoint &on_screen);
    void failed(const QString &what); ///< the program itself, drawing a sheet

  protected:
    void contextMenuEvent(QContextMenuEvent *event) override;
    void paintEvent(QPaintEvent *) override;
    void wheelEvent(QWheelEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void showEvent(QShowEvent *event) override;

  private:
    struct Drawn {
        QString tag;
        std::vector<sheets::Sheet> pages;
        std::optional<QString> failure;
    };
    void refresh();
    void take();
    void zoom(double factor, QPointF at);
    void show_whole_sheet();

    Desk &desk_;
    Selection &selection_;
    Drawing draw_ = sheets_of;
    std::vector<sheets::Sheet> pages_;
    QString tag_;
    int page_ = 0;
    double zoom_ = 1; ///< 1 = the whole sheet fits
    QPointF offset_, last_;
    QFutureWatcher<Drawn> drawing_;
    bool is_drawing_ = false; ///< until what was drawn is taken, which is later than the thread ends
    bool again_ = false;      ///< something newer is wanted
    bool failed_ = false;     ///< to draw the last one
};

} // namespace roundlay::window
