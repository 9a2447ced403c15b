// The photographs of a log, by the file names that its record has: shown where they lie, never copied.
#pragma once

#include <QDateTime>
#include <QHash>
#include <QPixmap>
#include <QStringList>
#include <QWidget>

class QVBoxLayout;

namespace roundlay::window {

class Photographs : public QWidget {
    Q_OBJECT
  public:
    explicit Photographs(QWidget *parent = nullptr);

    /// Names relative to that folder, or whole paths. One that is not there, or is no picture, is told in its
    /// place. `folder` is empty for a document that was never saved.
    void show_files(const QStringList &names, const QString &folder);

    /// What is told of each: its name, or why it is not seen. In order.
    const QStringList &told() const { return told_; }
    int seen() const { return seen_; } ///< how many are shown as pictures

  private:
    struct Known {
        QDateTime changed;
        QPixmap picture;
        QString why_not;
    };
    const Known &looked_at(const QString &path);
    void add(const QString &name, const QString &folder);

    QVBoxLayout *column_;
    QHash<QString, Known> known_;
    QStringList names_, told_;
    QString folder_;
    int seen_ = 0;
};

} // namespace roundlay::window
