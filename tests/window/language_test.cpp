// The window in French: its words, the kernel's, the reader's, and the room that they need.
#include "exporters/registry/paper.h"
#include "exporters/words/words.h"
#include "kernel/design/floor_edits.h"
#include "kernel/trade/species.h"
#include "kernel/trade/weight.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/problem_words.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/window_test.h"

#include <QAction>
#include <QDockWidget>
#include <QLocale>
#include <QMenuBar>
#include <QRegularExpression>
#include <QSettings>
#include <QTest>
#include <QTranslator>
#include <QTreeWidget>

using namespace roundlay;
using namespace roundlay::window;

class LanguageTest : public WindowTest {
    Q_OBJECT

  private slots:
    void the_window_speaks_french();
    void a_language_is_chosen_and_remembered();
    void problems_of_a_text_are_told_in_french();
    void problems_of_a_record_are_told_in_french();
    void what_the_window_quotes_is_told_in_french();
    void places_of_findings_leave_room_for_their_sentences();
};

void LanguageTest::the_window_speaks_french() {
    const auto translator = own_translator(QLocale(QLocale::French, QLocale::France));
    QVERIFY(translator != nullptr);
    QApplication::installTranslator(translator.get());
    MainWindow window(kept());
    const auto menus = window.menuBar()->actions();
    QCOMPARE(menus.front()->text(), QStringLiteral("&Fichier"));
    // What the kernel says, too, down to what stands in its sentences.
    QVERIFY(language() == Language::french);
    QCOMPARE(kernel_words(QStringLiteral("tamarack")), QStringLiteral("mélèze laricin"));
    QCOMPARE(
        kernel_words(
            QStringLiteral("cannot use \"hall %1 pair\": the name is too long; choose a shorter one")),
        QStringLiteral(
            "impossible d’utiliser « hall %1 pair » : le nom est trop long ; choisissez-en un plus court"));
    window.begin_demo(1);
    QVERIFY(settled(window));
    // Its sheets and exports speak as it does.
    const ExportJob &job = window.desk().state()->job;
    QVERIFY(job.options.language == Language::french);
    const auto sheet = cut_sheet_of(job, Index<Model>(0));
    QCOMPARE(sheet->front().chapter, std::string("Fiches de taille"));
    window.desk().edit("wide", [](const Shell &s) {
        Shell next = s;
        next.openings[0].width = Length::feet(90);
        next.units = UnitSystem::metric;
        return std::optional(next);
    });
    QVERIFY(settled(window));
    const QTreeWidgetItem *item = window.findings().tree()->topLevelItem(0)->child(0);
    QCOMPARE(item->text(0), QStringLiteral("mur A, front pair, left"));
    QVERIFY2(item->text(1).startsWith("elle est large de 27432 mm ; une largeur de "),
             qPrintable(item->text(1)));
    window.close_document();
    QApplication::removeTranslator(translator.get());
}

void LanguageTest::a_language_is_chosen_and_remembered() {
    QVERIFY(language_choice().isEmpty());
    {
        MainWindow window(kept());
        window.action("language_fr")->trigger();
        QVERIFY(window.message().sentence().contains("next start"));
    }
    QCOMPARE(language_choice(), QString("fr"));
    QCOMPARE(chosen_locale().language(), QLocale::French);
    QVERIFY(own_translator(chosen_locale()) != nullptr);
    MainWindow next(kept());
    QVERIFY(next.action("language_fr")->isChecked());
    next.action("language_en")->trigger();
    QCOMPARE(chosen_locale().language(), QLocale::English);
    QVERIFY(own_translator(chosen_locale()) == nullptr); // it is written in it
    QSettings().setValue("language", "a language that is none");
    QVERIFY(language_choice().isEmpty());
    next.action("language_system")->trigger();
    QVERIFY(language_choice().isEmpty());
}

void LanguageTest::problems_of_a_text_are_told_in_french() {
    const std::string good = text_of(demo_file("one-room"));
    const auto with = [&](const std::string &old, const std::string &now) {
        std::string text = good;
        return text.replace(text.find(old), old.size(), now);
    };
    const std::string texts[] = {with("toward = \"east\"", "toward = \"up\""),
                                 with("pitch = \"9 in\"", "pitch = 9"),
                                 with("pitch = ", "pich = "),
                                 with("count = 5", "count = 5.5"),
                                 with("name = \"B\"", "name = \"A\""),
                                 with("[rounds]", "[[rounds]]"),
                                 with("wall = \"A\"", "wall = \"Q\""),
                                 with("sill = \"0 in\"\n", ""),
                                 with("kind = \"door\"", "kind = \"hole\"")};
    const auto french = own_translator(QLocale(QLocale::French));
    QCoreApplication::installTranslator(french.get());
    for (const std::string &text : texts) {
        const Problems problems = Document(text, "t").read().problems;
        QVERIFY2(!problems.empty(), text.substr(0, 300).c_str());
        for (const Problem &p : problems)
            for (const std::string &english : {p.message, p.expected}) {
                const bool same = kernel_words(english) == QString::fromStdString(english);
                const bool code = english.find('=') != std::string::npos &&
                                  english.find(' ') == english.find(" ="); // as it is written
                QVERIFY2(english.empty() || code || !same, english.c_str());
            }
    }
    QCoreApplication::removeTranslator(french.get());
}

/// By the catalogue that lists and sheets have: the record says them as values.
void LanguageTest::problems_of_a_record_are_told_in_french() {
    const std::string twice = "\n[[found]]\ntag = \"A 1.1\"\n";
    const Problems problems = Document(text_of(demo_file("one-room")) + twice + twice, "t").read().problems;
    const Problem *error = first_error_of(problems);
    QVERIFY(error != nullptr);
    QVERIFY(problem_text(*error).startsWith(QStringLiteral("two logs have the tag \"A 1.1\": ")));
    const auto french = own_translator(QLocale(QLocale::French));
    QCoreApplication::installTranslator(french.get());
    QCOMPARE(problem_text(*error), QStringLiteral("deux pièces ont le repère \"A 1.1\" : donnez à chacune le "
                                                  "sien, qu’elle garde pour toujours"));
    QCOMPARE(soundness_word(Soundness::checked), QStringLiteral("fissuré")); // as the report says it
    QCoreApplication::removeTranslator(french.get());
}

/// Words of the reader of TOML, and sources of weights: no English stands inside the French.
void LanguageTest::what_the_window_quotes_is_told_in_french() {
    const std::string good = text_of(demo_file("one-room"));
    const auto french = own_translator(QLocale(QLocale::French));
    QCoreApplication::installTranslator(french.get());
    const QRegularExpression english(QStringLiteral(
        R"(\b(though|from|expected|saw|cannot|redefine|existing|encountered|unknown|table of|gives|could not)\b)"));
    for (const char *line :
         {"x", "[shell]", "a b = 1", "= 3", "name = ", "x = 1.", "x = 01", "y = tru", "z = \"\\q\"",
          "k = [1,", "[a.b", "x = {a=1,}", "x = 3 4", "s = \"\"\"", "\"", "z = \"a\001b\""}) {
        const Problems problems = Document(good + '\n' + line + '\n', "t").read().problems;
        QVERIFY2(!problems.empty(), line);
        const QString told = kernel_words(problems.front().message);
        QVERIFY2(!told.contains(english), qPrintable(told));
    }
    for (const Species &species : all_species())
        for (const std::optional<double> moisture : {std::optional<double>(), std::optional(15.0)}) {
            const QString told = QString::fromStdString(words_of(
                weigh(1e9, {std::string(species.name), moisture}).basis, {language(), UnitSystem::metric}));
            QVERIFY2(!told.isEmpty() && !told.contains(english), qPrintable(told));
        }
    QVERIFY(volume_text(1e9, UnitSystem::imperial).endsWith(QStringLiteral("pi\u00b3")));
    QCoreApplication::removeTranslator(french.get());
}

void LanguageTest::places_of_findings_leave_room_for_their_sentences() {
    const auto french = own_translator(QLocale(QLocale::French));
    QCoreApplication::installTranslator(french.get());
    MainWindow window(kept());
    window.resize(1300, 800);
    QVERIFY(shown_demo(window, 1));
    raise(window, "findings");
    auto *tree = window.findings().findChild<QTreeWidget *>();
    QVERIFY(window.findings().count() > 0);
    for (const int wide : {220, 300, 600}) {
        window.resizeDocks({window.findChild<QDockWidget *>("findings")}, {wide}, Qt::Horizontal);
        QTest::qWait(50);
        const int whole = tree->viewport()->width();
        QVERIFY2(tree->columnWidth(1) >= whole * 55 / 100, qPrintable(QString::number(tree->columnWidth(1))));
        for (QTreeWidgetItemIterator it(tree); *it != nullptr;
             ++it) { // what does not fit in one line has more
            if ((*it)->parent() == nullptr) continue;
            const int lines = tree->visualItemRect(*it).height() / tree->fontMetrics().height();
            const int needed = tree->fontMetrics().horizontalAdvance((*it)->text(0)) / tree->columnWidth(0);
            QVERIFY2(lines > needed || lines == 0, qPrintable((*it)->text(0)));
        }
    }
    keep_picture(window, "findings-french");
    window.close_document();
    QCoreApplication::removeTranslator(french.get());
}

int main(int argc, char **argv) {
    return run_test<LanguageTest>(argc, argv);
}

#include "language_test.moc"
