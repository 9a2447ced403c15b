// Who has a key while somebody types: the field, or the menu.
#pragma once

#include <QObject>

class QKeyEvent;
class QLineEdit;

namespace roundlay::window {

class MainWindow;

/// The line that is typed into, of a field or of a box that counts; null elsewhere.
QLineEdit *line_of(QWidget *widget);

/// Undo is one history. In a field it takes back what was typed and not taken yet, letter by letter, then
/// goes on in the document; the text of the document has no other. Keys of the menu are the menu's in every
/// field.
class FieldKeys : public QObject {
  public:
    explicit FieldKeys(MainWindow &window);

  protected:
    bool eventFilter(QObject *object, QEvent *event) override;

  private:
    bool is_deed(const QKeyEvent &key) const;
    bool is_of(const char *action, const QKeyEvent &key) const;

    MainWindow &window_;
};

} // namespace roundlay::window
