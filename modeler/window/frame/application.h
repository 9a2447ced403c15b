// The program as a whole, for main and for whoever drives the window.
#pragma once

#include <QApplication>
#include <memory>

class QLocale;
class QTranslator;

namespace roundlay::window {

/// Nothing that an event throws ends it: it is told instead, and the session goes on.
class Application : public QApplication {
    Q_OBJECT
  public:
    using QApplication::QApplication;
    bool notify(QObject *receiver, QEvent *event) override;

  signals:
    void failed(const QString &what);

  private:
    bool tell_of(const QString &what);
};

/// Before the Application is made.
void prepare_application();

/// Name, language, fonts and appearance.
void dress(QApplication &application);

/// The person's choice in the menu, "en" or "fr"; empty: as the system. It counts from the next start on.
QString language_choice();
void choose_language(const QString &code);
QLocale chosen_locale();

/// The window's own strings in that language; null where it is not shipped, or is English.
std::unique_ptr<QTranslator> own_translator(const QLocale &locale);
/// The library's: its file dialogs and standard buttons; null where they are not installed.
std::unique_ptr<QTranslator> library_translator(const QLocale &locale);

int run(int argc, char **argv);

} // namespace roundlay::window
