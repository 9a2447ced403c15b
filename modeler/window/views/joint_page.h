// One corner alone, its logs lifting apart: what a teacher shows a class. The slope is stated beside it.
#pragma once

#include <QWidget>

class QLabel;
class QSlider;
class QComboBox;

namespace roundlay::window {

class Desk;
class Selection;
class SceneView;
class SlopeEdit;

class JointPage : public QWidget {
    Q_OBJECT
  public:
    JointPage(Desk &desk, Selection &selection, QWidget *parent = nullptr);

    SlopeEdit *slope() const { return slope_; }

  private:
    QWidget *fields();
    void refresh();
    void show_notch();
    void take_notch();
    int corner() const; ///< index into the layout's corners, -1 = none

    Desk &desk_;
    Selection &selection_;
    SceneView *view_ = nullptr;
    QLabel *title_;
    QSlider *lift_;
    QComboBox *corners_, *kind_;
    SlopeEdit *slope_;
    std::string shown_;
};

} // namespace roundlay::window
