// All boxes of one log's record, in the order in which a person types: Enter goes to the next one.
#pragma once

#include "modeler/window/record/log_at_hand.h"
#include "modeler/window/record/record_boxes.h"

#include <QHash>
#include <QWidget>
#include <functional>

class QBoxLayout;
class QGridLayout;
class QLabel;
class QToolButton;

namespace roundlay::window {

class NoteEdit;

class RecordForm : public QWidget {
    Q_OBJECT
  public:
    explicit RecordForm(QWidget *parent = nullptr);

    void show_log(const LogAtHand &log);
    void let_go(); ///< of what is typed and not taken: another log is shown

    /// The first box, or the last, or the one of that name.
    void go_to(const QString &name = {});
    void go_to_last();
    QWidget *box(const QString &name) const { return boxes_.value(name).widget; }

    using Change = std::function<void(FoundLog &log)>;

  signals:
    /// By the person: what is to be stated. Whoever hears it calls refuse() where it cannot be.
    void stated(const QString &box, const roundlay::window::RecordForm::Change &change, QWidget *field);
    /// Past the last box, or before the first; with `box` the same one of another log is meant.
    void left(int step, const QString &box);
    void complained(const QString &sentences); ///< of boxes by their labels, a line for each; empty: no more
    void dropped(const QString &box, const QString &typed); ///< what could not be taken is gone

  protected:
    bool eventFilter(QObject *object, QEvent *event) override;

  private:
    struct Shown {
        RecordBox box;
        QWidget *widget = nullptr;
        QString group;
    };
    struct Part { ///< of a list: one that was found, or the blank one behind them
        QWidget *whole = nullptr;
        std::vector<QString> boxes;
    };
    struct List {
        RecordList list;
        QBoxLayout *column = nullptr;
        std::vector<Part> parts;
    };

    QWidget *add_group(const QString &name, const QString &title);
    void add_ends();
    void add_list(const RecordList &list);
    Part add_part(List &list, std::size_t at);
    QWidget *make_box(const RecordBox &box, const QString &group);
    QWidget *make_number(const RecordBox &box);
    QWidget *make_words(const RecordBox &box);
    QWidget *make_faces(const RecordBox &box);
    QWidget *make_choice(const RecordBox &box);
    void fill(QGridLayout &grid, const std::vector<RecordBox> &boxes, const QString &group);
    void follow(class MeasureEdit &edit, const RecordBox &box);
    QString complaints() const;
    void fold(const QString &group, bool away);
    void show_box(const Shown &shown, FoundLog &log) const;
    void show_list(List &list, FoundLog &log);
    void show_ends(const LogAtHand &log);
    std::vector<QWidget *> chain() const;
    bool go_on(QWidget &from, int step, bool same_box);
    void go_to_head(const QString &group, int step);
    bool key_on_head(QToolButton &head, int key);
    QString name_of(const QWidget &widget) const;

    QHash<QString, Shown> boxes_;
    std::vector<QString> order_;
    std::vector<List> lists_;
    QHash<QString, QWidget *> groups_;
    QHash<QString, QToolButton *> heads_;
    std::vector<QString> head_order_;
    QLabel *end_names_[2];
    EndNames ends_;
    QBoxLayout *column_;
};

} // namespace roundlay::window
