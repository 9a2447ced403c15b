// The program as a whole, for main and for whoever drives the window.
#pragma once

class QApplication;

namespace roundlay::window {

/// Before the QApplication is made.
void prepare_application();

/// Name, language, fonts and appearance.
void dress(QApplication &application);

int run(int argc, char **argv);

} // namespace roundlay::window
