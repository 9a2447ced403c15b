// The program as a whole, for main and for whoever drives the window.
#pragma once

#include <memory>

class QApplication;
class QLocale;
class QTranslator;

namespace roundlay::window {

/// Before the QApplication is made.
void prepare_application();

/// Name, language, fonts and appearance.
void dress(QApplication &application);

/// The window's own strings in that language; null where it is not shipped, or is English.
std::unique_ptr<QTranslator> own_translator(const QLocale &locale);
/// The library's: its file dialogs and standard buttons; null where they are not installed.
std::unique_ptr<QTranslator> library_translator(const QLocale &locale);

int run(int argc, char **argv);

} // namespace roundlay::window
