// The document on the desk: its text, what can be undone, where it is saved, and what follows from it.
//
// The text is the truth. Every change of it goes through here, has a name, and can be undone.
#pragma once

#include "kernel/design/fitted.h"
#include "modeler/window/desk/state.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <QUndoStack>
#include <deque>
#include <functional>
#include <optional>
#include <variant>

namespace roundlay::window {

class Search;
class Workshop;
struct Found;

/// What a document without a file is: somebody's own work, or a copy of what can be had again.
enum class Begun { made, copied };

class Desk : public QObject {
    Q_OBJECT
  public:
    explicit Desk(QObject *parent = nullptr);
    ~Desk() override;

    // Which document. A returned text is a sentence that says why it could not be done.
    std::optional<QString> open(const QString &path);
    /// `folder`: what its photographs lie beside until it is saved; may be empty.
    void begin(const QString &title, const std::string &text, Begun how = Begun::made,
               const QString &folder = {});
    /// Unsaved work of a session that ended badly. `path` is empty where it was never saved; `on_disk` is
    /// what the file held for that session.
    void recover(const QString &path, const QString &title, const std::string &text,
                 const std::optional<std::string> &on_disk);
    std::optional<QString> save_to(const QString &path);
    /// What the file holds now, as one more edit: what stood here before can be had back.
    std::optional<QString> reload();
    void close();

    bool is_open() const { return open_; }
    const QString &path() const { return path_; } ///< empty = never saved
    QString title() const;                        ///< for the window
    QString folder() const;                       ///< that photographs lie beside; empty while there is none
    bool unsaved() const;
    /// True where the file does not hold any more what was opened or saved last.
    bool changed_on_disk() const;
    bool gone_from_disk() const;      ///< there is no such file any more
    QString free_path_beside() const; ///< where what another wrote there can be kept
    void keep_mine();                 ///< over what is on the disk; asks no more
    /// What the file held when it was opened or saved last; nothing where there was none.
    const std::optional<std::string> &on_disk() const { return on_disk_; }

    // Edits
    const Document &document() const { return document_; }
    QUndoStack &history() { return history_; }
    using ShellEdit = std::function<Fitted(const Shell &)>;
    /// Changes the shell as the text states it; false where it cannot be, with refused() saying why.
    bool edit(const QString &name, const ShellEdit &change);
    using Searched = std::function<void(const QString &why)>; ///< why not; empty where it was made
    /// The same with a change that takes many layouts, looked for aside: `change` is called in another
    /// thread, and again where the text has changed meanwhile. One after the other. `then` is told here,
    /// unless its asker is gone.
    void search(const QString &name, const ShellEdit &change, QObject *asker, const Searched &then);
    bool replace_text(const QString &name, const std::string &text);
    using RecordEdit = std::function<std::optional<Record>(const Record &)>;
    /// Changes what the record says of the house that was found, whatever state is seen; false where it
    /// cannot be, with refused() saying why.
    bool edit_record(const QString &name, const RecordEdit &change);
    /// Puts states of a house that was found beside the document's own shell: as it was measured, and what it
    /// shall be. True where there are some already; false where it cannot be, with refused() saying why.
    bool begin_states();

    // Which state of the house is seen, and edited
    void see(const std::string &state); ///< by its name; the document's own for a name that it does not have
    const std::string &seen() const { return seen_; } ///< as it was asked for; empty: the document's own
    /// The text as it is now, in the state that is seen: newer than state(), which is worked out aside.
    ReadPtr reading() const { return read(document_); }
    /// While a hand drags: shows a changed shell without an entry in the history. Always from the state
    /// before the drag.
    void show(const ShellEdit &change);
    void settle(const QString &name);         ///< what is shown becomes an edit
    void cancel();                            ///< back to before the drag
    std::optional<Shell> before_drag() const; ///< as stated then; nothing where no hand drags
    bool dragging() const { return before_drag_.has_value(); }

    // What follows
    const StatePtr &state() const { return state_; }       ///< newest that is worked out; never null
    const StatePtr &standing() const { return standing_; } ///< newest that stands; may be null
    /// Newest of which walls can be drawn, standing or not; where the text cannot be read, what stood last.
    const StatePtr &drawn() const { return state_->can_be_drawn() ? state_ : standing_; }
    bool drawn_is_old() const { return drawn() && drawn() != state_; }        ///< the text cannot be read now
    bool standing_is_old() const { return standing_ && standing_ != state_; } ///< it cannot be built now
    bool is_current() const { return state_->revision == revision_ && wanted_.empty(); }
    UnitSystem units() const;
    void want_order(bool wanted); ///< of the raise: a panel is looked at that shows it

  signals:
    void began(); ///< another document lies on the desk, or none
    void text_changed();
    void file_changed(); ///< path, title or unsaved
    void disk_changed();
    void state_changed();
    void seen_changed();   ///< another state of the house is asked for
    void models_changed(); ///< and nothing else of the state
    void order_known();    ///< of the raise, of the newest state that stands
    void refused(const QString &why);
    void failed(const QString &what); ///< the program itself, working the text out
    void searching();                 ///< for so long that a person wonders
    void searched();

  private:
    friend class TextEdit;
    void set_text(const std::string &text); ///< by the history
    void start_over(const QString &path, const QString &title, Document document, bool loose = false,
                    const QString &folder = {});
    void work_out();
    void take(StatePtr state);
    void take_bores(StatePtr state);
    void watch();
    void look_at_disk();
    bool holds_less_on_disk() const;
    using Made = std::variant<Document, QString>;    ///< or why not
    bool put(const QString &name, const Made &made); ///< as an entry of the history, or refused() says why
    Made edited(const Document &from, const ShellEdit &change);
    Made recorded(const Document &from, const RecordEdit &change);
    Made with_states(const Document &from);
    static QString unreadable();
    Made stated(const Document &from, const ReadResult &before, const Fitted &after);
    Made taken(Document made);
    ReadPtr read(const Document &document) const;
    void search_next();
    void take_found(const Found &found);
    void end_search(const QString &why);

    bool open_ = false;
    QString path_, title_, begun_beside_;
    Document document_;
    std::optional<std::string> on_disk_;
    bool loose_ = false;     ///< what is here is nowhere on the disk, whatever the history says
    bool only_here_ = false; ///< its file is gone or is no document any more
    QUndoStack history_;
    std::optional<Document> before_drag_;
    std::string seen_;
    /// What was read last, and of what: an edit and what shows it ask for the same text over and over.
    mutable struct {
        std::string text, state;
        ReadPtr read;
    } known_;
    quint64 revision_ = 0;
    StatePtr state_, standing_;
    QFileSystemWatcher watcher_;
    QTimer looking_; ///< for what became of the file
    std::unique_ptr<Workshop> workshop_;
    struct Wanted {
        QString name;
        ShellEdit change;
        QPointer<QObject> asker;
        Searched then;
    };
    std::deque<Wanted> wanted_;           ///< the first is being looked for
    std::optional<std::string> searched_; ///< the text that it began from
    QTimer told_of_search_;
    std::unique_ptr<Search> search_;
};

} // namespace roundlay::window
