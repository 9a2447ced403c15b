// One corner alone, its logs lifting apart: what a teacher shows a class. Slopes are dragged by handles on a
// tail, or stated beside it, of the corner, the whole shell or one log.
#pragma once

#include "kernel/design/shell_edits.h"
#include "modeler/window/desk/selection.h"

#include <QTimer>
#include <QWidget>

class QFormLayout;
class QLabel;
class QSlider;
class QComboBox;
class QToolButton;

namespace roundlay {
struct CornerPlace;
struct Piece;
} // namespace roundlay

namespace roundlay::window {

class Desk;
class SceneView;
class SlopeEdit;

class JointPage : public QWidget {
    Q_OBJECT
  public:
    JointPage(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    SlopeEdit *slope() const { return slope_; }
    QComboBox *kind() const { return kind_; }
    SceneView *view() const { return view_; } ///< null where there is no OpenGL
    QComboBox *scope() const { return scope_; }
    void peep(const std::string &corner); ///< shows that one for the while; empty: the chosen one again
    void lift_apart(bool on);             ///< by itself, as the play button does

  signals:
    void hinted(const QString &words);
    void asked_for_menu(const Chosen &thing, const QPoint &on_screen);

  protected:
    void showEvent(QShowEvent *event) override;

  private:
    void make_view();
    void connect_handles();
    Chosen thing_under(int id) const;
    void begin();
    void follow_selection();
    QWidget *fields();
    QWidget *lift_row();
    void connect_fields();
    SlopeEdit *slope_field(QFormLayout *form, const QString &label);
    void refresh();
    void show_nothing();
    void show_view(const CornerPlace &corner);
    void show_handles(const CornerPlace &corner);
    void show_notch();
    void offer_kinds(NotchKind now);
    void show_words(const CornerPlace &corner, const NotchRule &rule);
    void list_corners();
    void take_kind();
    void take_slopes();
    void drag_slope(int handle, double up, bool free);
    void let_go();
    NotchRule rule() const; ///< that is shown
    NotchScope chosen_scope() const;
    NotchPlace place() const;
    const std::string &corner_name() const;
    std::optional<Index<CornerPlace>> corner() const;
    std::optional<Index<Piece>> chosen_log() const; ///< piece of this corner that is chosen
    std::optional<Index<Piece>> held_log() const;   ///< piece whose tail has the handles
    int first_round() const;
    bool is_shown(const Piece &piece, const CornerPlace &corner) const;
    double lift() const;                     ///< mm, of each log over the one below it
    double lifted(Index<Piece> piece) const; ///< mm
    QString deed(const NotchPlace &at) const;

    Desk &desk_;
    Selection &selection_;
    SceneView *view_ = nullptr;
    QWidget *fields_ = nullptr;
    QLabel *title_;
    QSlider *lift_;
    QToolButton *play_;
    QTimer playing_;
    QComboBox *corners_, *scope_, *kind_;
    SlopeEdit *slope_, *along_, *across_;
    QFormLayout *form_ = nullptr;
    std::string peeped_; ///< corner that is shown for the while
    std::string shown_;  ///< corner that is looked at
    int first_ = 1;      ///< lowest round that is shown
    std::vector<bool> handle_is_along_;
    double along_arm_ = 1, across_arm_ = 1;
    NotchRule grabbed_; ///< before the drag
    NotchPlace grabbed_place_;
    bool dragging_ = false;
};

} // namespace roundlay::window
