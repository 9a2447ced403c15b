// What stands in the window before there is a document: a new shell, a demo, or a recent file.
#pragma once

#include <QStringList>
#include <QWidget>
#include <vector>

class QLabel;
class QListWidget;
class QVBoxLayout;

namespace roundlay::window {

struct Demo {
    QString name; ///< for people
    QString file; ///< inside the program
    QString more; ///< of it, in a line
};
std::vector<Demo> demos();

class StartPage : public QWidget {
    Q_OBJECT
  public:
    explicit StartPage(QWidget *parent = nullptr);

    void show_recent(const QStringList &paths);

  signals:
    void asked_for_new(bool drawn);
    void asked_for_open();
    void asked_for_demo(int number);
    void asked_for(const QString &path);

  private:
    void add_title(QVBoxLayout &column);
    void add_links(QVBoxLayout &column);
    void add_recent(QVBoxLayout &column);

    QLabel *recent_label_;
    QListWidget *recent_;
};

} // namespace roundlay::window
