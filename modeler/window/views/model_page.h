// The model with its controls, or a sentence where this machine draws none.
#pragma once

#include "modeler/window/views/scene_colours.h"

#include <QTimer>
#include <QWidget>
#include <memory>

class QBoxLayout;
class QComboBox;
class QSlider;
class QToolButton;
class QVBoxLayout;
class QCheckBox;
class QLabel;

namespace roundlay::window {

class Desk;
class ReasonsPage;
class SceneView;

class ModelPage : public QWidget {
    Q_OBJECT
  public:
    ModelPage(Desk &desk, Selection &selection, QWidget *parent = nullptr);
    ~ModelPage() override;

    SceneView *view() const { return view_; } ///< null where there is no OpenGL
    void play(bool on);
    bool is_playing() const { return playing_.isActive(); }
    QSlider *spread_slider() const { return spread_; }
    QSlider *raise_slider() const { return raise_; }
    void set_colouring(Colouring colouring);
    void show_labels(bool on);
    ReasonsPage &reasons() { return *reasons_; } ///< instead of the view where nothing ever stood

  signals:
    void hinted(const QString &words);
    void coloured(roundlay::window::Colouring colouring); ///< otherwise than before
    void asked_for_menu(const Chosen &thing, const QPoint &on_screen);

  protected:
    void resizeEvent(QResizeEvent *event) override;

  private:
    QWidget *controls();
    QBoxLayout *raise_controls();
    QBoxLayout *section_controls();
    QBoxLayout *colour_controls();
    void connect_controls();
    QSlider *slider(const QString &name, int most);
    void show_state();
    void show_section();
    void refresh();
    void raise_one_more();
    void use_no_view(const QString &sentence);
    void make_view(QVBoxLayout *column);
    void choose_page();
    void put_labels(const Scene &scene);
    const ZoneSkins *skins(Colouring colouring);
    Chosen thing_of(int id) const;
    int pieces() const;

    Desk &desk_;
    Selection &selection_;
    SceneView *view_ = nullptr;
    QLabel *instead_ = nullptr;
    ReasonsPage *reasons_;
    QSlider *spread_, *raise_, *cut_;
    QToolButton *play_;
    QComboBox *colouring_, *section_;
    QCheckBox *labels_;
    QBoxLayout *bar_ = nullptr;       ///< two halves of the fields below the view, beside or below each other
    QBoxLayout *right_ = nullptr;     ///< of the right half its two parts
    int whole_ = 0, right_whole_ = 0; ///< pixels that both halves take, and the right one
    std::unique_ptr<ZoneSkins> skins_;
    std::shared_ptr<const void> skins_of_; ///< the state that they are of
    Box3 seen_;                            ///< of the scene that the view was last fitted to
    QTimer playing_;
};

} // namespace roundlay::window
