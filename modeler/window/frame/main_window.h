// The window: one document, all its views, and everything that can be done to it.
#pragma once

#include "kernel/shell/shell.h"

#include <QMainWindow>
#include <QPointer>
#include <QTimer>
#include <functional>
#include <memory>
#include <vector>

class QAction;
class QLabel;
class QMenu;
class QStackedWidget;

namespace roundlay::window {

class AtHand;
class CutListPanel;
class DemoFiles;
class Desk;
class ElevationView;
class FacesView;
class FindingsPanel;
class FloorPanel;
class JointPage;
class Legend;
class LogPanel;
class MessageBar;
class ModelPage;
class PlanView;
class RaisingPanel;
class RecordPanel;
class Recovery;
struct Rescued;
class Selection;
struct Chosen;
struct Spot;
class SheetView;
class ShellPanel;
class StartPage;
class StateBar;
class TextPanel;

class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    explicit MainWindow(const QString &recovery_folder = {}, QWidget *parent = nullptr);
    ~MainWindow() override;

    // What the menus do, without asking anything
    bool open(const QString &path); ///< false, with a message, where it cannot be
    void begin(const Shell &shell, const QString &title);
    void begin_demo(int number);
    bool save_to(const QString &path);
    void close_document();
    /// Work that sessions which ended badly left behind: of the document that lies here first, then of
    /// others.
    void offer_recovery();
    /// The session of the person's desktop ends. False where work is in the way of it.
    bool end_session(bool may_ask);
    /// Something in the program went wrong: says so, with the work kept aside.
    void tell_failure(const QString &what);

    Desk &desk() { return *desk_; }
    Selection &selection() { return *selection_; }
    MessageBar &message() { return *message_; }
    PlanView &plan() { return *plan_; }
    ElevationView &elevation() { return *elevation_; }
    ModelPage &model() { return *model_; }
    FindingsPanel &findings() { return *findings_; }
    CutListPanel &cut_list() { return *cut_list_; }
    LogPanel &log() { return *log_; }
    FloorPanel &floors() { return *floors_; }
    JointPage &joint() { return *joint_; }
    SheetView &sheet() { return *sheet_; }
    TextPanel &text_panel() { return *text_; }
    AtHand &at_hand() { return *at_hand_; }
    FacesView &faces() { return *faces_; }
    RecordPanel &record() { return *record_; }
    RaisingPanel &raising() { return *raising_; }
    StateBar &states() { return *states_; }
    QAction *action(const QString &name) const;              ///< by its object name
    void show_legend(bool on, const Legend *only = nullptr); ///< of every view, or of one

  protected:
    void closeEvent(QCloseEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dragMoveEvent(QDragMoveEvent *event) override;
    void dropEvent(QDropEvent *event) override;
    void changeEvent(QEvent *event) override;

  private:
    // main_window.cpp
    void make_views();
    void make_centre();
    void make_status();
    void connect_views();
    void connect_desk();
    void connect_refusals();
    void go_to_text(int line, int column);
    void show_document();
    void show_state();
    void show_summary(const QString &words);

    // main_window_panels.cpp
    QDockWidget *dock(const QString &name, const QString &title, QWidget *content, Qt::DockWidgetArea area);
    void make_docks();
    void raise_usual_panels();
    void arrange();
    void show_panels(bool on);
    void put_panels_back();
    void restore_size();
    void remember_size() const;
    void next_panel(int step);
    void bring_to_front(const QString &panel); ///< by the object name of its dock
    void show_or_close(QDockWidget &dock);

    // main_window_menus.cpp
    using Deed = std::function<void()>;
    QAction *add(QMenu *menu, const QString &name, const QString &words, const QKeySequence &keys,
                 const Deed &deed, bool needs_document = true);
    void make_menus();
    void make_file_menu();
    void add_beginnings(QMenu *file);
    void add_outputs(QMenu *file);
    void make_edit_menu();
    void make_history_actions(QMenu *edit);
    void follow_history(QAction *undo, QAction *redo);
    void take_back();
    void do_again();
    void make_shell_menu();
    void add_parts(QMenu *shell);
    void make_view_menu();
    void make_look_menu(QMenu *menu);
    void make_colour_menu(QMenu *menu);
    void make_panel_menu(QMenu *menu);
    void make_appearance_menu(QMenu *menu);
    void make_language_menu(QMenu *menu);
    void make_help_menu();
    void show_recent();
    void enable_actions();

    // main_window_files.cpp
    bool may_leave(); ///< asks where there is unsaved work
    void let_go_of_typed();
    void take_typed();    ///< what stands in a field or the text and was not taken yet
    void tell_left_out(); ///< fields whose words the file does not have, for they could not be taken
    void show_field(QWidget &field);
    void begin_record();
    bool save();
    bool save_as();
    void offer_demo_files();
    void ask_new(bool drawn = false);
    void ask_open();
    void ask_export();
    void print_preview();
    void keep_aside(); ///< autosave
    void tell_changed_on_disk();
    bool save_over_change();
    bool overwrite();
    void clear_message();
    void load_changed();
    bool offer(const std::function<bool(const Rescued &)> &wanted);
    void recover(const Rescued &work);
    bool is_of_this(const Rescued &work) const;

    // main_window_things.cpp
    void connect_menus();
    void show_menu(const Chosen &thing, const QPoint &on_screen, Legend *legend, const Spot &spot);
    void drop_menu();
    void hint(const QString &words);
    void tell(const QString &words); ///< what was done or refused: it stays to be read
    void tell_dropped(const QString &field, const QString &typed);
    void forget_told();
    void enable_legend();
    std::vector<std::pair<QString, Legend *>> legends() const;
    void save_this_picture();
    void print_this_sheet();

    // main_window_deeds.cpp
    void switch_units();
    void show_shortcuts();
    void show_about();
    void choose_next_piece(int step);

    std::unique_ptr<Desk> desk_;
    Selection *selection_;
    AtHand *at_hand_;
    std::unique_ptr<Recovery> recovery_;
    std::unique_ptr<DemoFiles> demo_files_;
    QTimer keeping_, told_;
    QStackedWidget *pages_;
    StartPage *start_;
    MessageBar *message_;
    ModelPage *model_;
    PlanView *plan_;
    ElevationView *elevation_;
    JointPage *joint_;
    SheetView *sheet_;
    FindingsPanel *findings_;
    CutListPanel *cut_list_;
    LogPanel *log_;
    ShellPanel *shell_;
    FloorPanel *floors_;
    TextPanel *text_;
    RecordPanel *record_;
    RaisingPanel *raising_;
    FacesView *faces_;
    StateBar *states_;
    QLabel *hint_, *summary_;
    QString refusal_;          ///< of the last edit, while it holds
    QString told_words_;       ///< the last
    bool offers_left_ = false; ///< of recovery, that were not put off
    QMenu *recent_ = nullptr;
    QPointer<QMenu> thing_menu_; ///< that was shown last
    std::vector<QDockWidget *> docks_;
    QByteArray usual_panels_, panels_; ///< where they stand: at first, and as the person left them
    bool are_panels_shown_ = false;
    std::vector<QAction *> need_document_;
};

} // namespace roundlay::window
