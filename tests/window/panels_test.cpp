// What the panels tell, take and say, in words and by the keyboard, on a machine that draws no model.
#include "exporters/registry/paper.h"
#include "exporters/words/words.h"
#include "kernel/design/floor_edits.h"
#include "kernel/design/opening_edits.h"
#include "kernel/design/round_figures.h"
#include "kernel/design/shell_edits.h"
#include "kernel/document/restate.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "kernel/trade/species.h"
#include "kernel/trade/weight.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/recovery.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/snap.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/cut_list_panel.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_fields.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/log_words.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "tests/window/support/typing.h"

#include <QAction>
#include <QClipboard>
#include <QComboBox>
#include <QDockWidget>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QProcess>
#include <QSignalSpy>
#include <QRegularExpression>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QTranslator>
#include <QTreeWidget>

using namespace roundlay;
using namespace roundlay::window;

class PanelsTest : public QObject {
    Q_OBJECT

  private slots:
    void nonsense_in_a_length_field_keeps_the_old_value();
    void the_keyboard_alone_is_enough();
    void the_tab_key_goes_everywhere_and_comes_back();
    void the_cut_list_is_sorted_filtered_and_copied();
    void a_log_is_stated_and_what_has_no_field_stays();
    void one_of_the_logs_that_an_opening_parts_is_stated_alone();
    void what_can_hurt_is_said_with_its_caution();
    void a_joist_is_chosen_like_a_log();
    void the_window_speaks_french();
    void a_language_is_chosen_and_remembered();
    void problems_of_a_text_are_told_in_french();
    void nothing_of_the_document_before_stays_in_the_panels();
    void steps_of_the_foundation_come_change_and_go_data();
    void steps_of_the_foundation_come_change_and_go();
    void what_the_window_quotes_is_told_in_french();
    void places_of_findings_leave_room_for_their_sentences();
    void findings_that_an_edit_does_not_change_stay();
    void without_opengl_a_sentence_stands_where_the_model_would_be();

  private:
    QTemporaryDir folder_;
    QString kept() const { return folder_.filePath(QStringLiteral("unsaved")); }
};

void PanelsTest::nonsense_in_a_length_field_keeps_the_old_value() {
    LengthEdit edit;
    edit.set_length(Length::mm(230), UnitSystem::metric);
    edit.selectAll();
    QTest::keyClicks(&edit, "about a foot");
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.length(), Length::mm(230));
    QVERIFY(edit.complaint().contains("expected"));
    edit.selectAll();
    QTest::keyClicks(&edit, "8 1/2 in");
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.length(), Length::inches(8.5));
    QVERIFY(edit.complaint().isEmpty());
}

void PanelsTest::the_keyboard_alone_is_enough() {
    MainWindow window(kept());
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.plan().setFocus();
    QTest::keyClick(&window.plan(), Qt::Key_PageDown);
    QCOMPARE(window.selection().wall(), std::string("A"));
    const double before = window.desk().standing()->job.shell.walls[1].length.mm();
    QTest::keyClick(&window.plan(), Qt::Key_Up);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.walls[1].length.mm(),
             before + grid_step(UnitSystem::imperial));
    window.elevation().setFocus();
    QTest::keyClick(&window.elevation(), Qt::Key_PageDown);
    QVERIFY(window.selection().is_opening(0));
    const double left = window.desk().standing()->job.shell.openings[0].from_left.mm();
    QTest::keyClick(&window.elevation(), Qt::Key_Right);
    QTest::keyClick(&window.elevation(), Qt::Key_Right, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings[0].from_left.mm(),
             left + grid_step(UnitSystem::imperial));
    const auto openings = window.desk().standing()->job.shell.openings.size();
    QTest::keyClick(&window, Qt::Key_Delete);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), openings - 1);
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(settled(window));
    QCOMPARE(window.desk().standing()->job.shell.openings.size(), openings);
    QTest::keyClick(&window, Qt::Key_Period, Qt::ControlModifier);
    QCOMPARE(window.selection().chosen().kind, Chosen::Kind::piece);
    window.close_document();
}

void PanelsTest::the_tab_key_goes_everywhere_and_comes_back() {
    MainWindow window(kept());
    window.show();
    window.begin_demo(1);
    QVERIFY(settled(window));
    QVERIFY(QTest::qWaitForWindowActive(&window));
    window.findChild<QWidget *>("text")->raise(); // a field for text must let the tab key go
    window.plan().setFocus();
    QSet<const QWidget *> seen;
    constexpr int most = 200;
    for (int i = 0; i < most; ++i) {
        const QWidget *now = QApplication::focusWidget();
        QVERIFY(now != nullptr);
        if (now == &window.plan() && i > 0) break;
        seen.insert(now);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    QCOMPARE(QApplication::focusWidget(), &window.plan()); // round once
    QStringList missed;
    for (const QWidget *w : window.findChildren<QWidget *>())
        if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) &&
            w->focusProxy() == nullptr && !seen.contains(w))
            missed << QString::fromLatin1(w->metaObject()->className()) + u' ' + w->accessibleName();
    QCOMPARE(missed, QStringList());
    window.close_document();
}

void PanelsTest::the_cut_list_is_sorted_filtered_and_copied() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    window.cut_list().show();
    window.show();
    window.findChild<QWidget *>("cut_list")->raise();
    QTRY_VERIFY(window.cut_list().isVisible());
    QTableView &table = *window.cut_list().table();
    const int all = table.model()->rowCount();
    QCOMPARE(all, static_cast<int>(window.desk().standing()->job.layout.pieces.size()));
    window.cut_list().filter()->setText("C-0");
    QVERIFY(table.model()->rowCount() > 0 && table.model()->rowCount() < all);
    window.cut_list().copy();
    const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split('\n');
    QCOMPARE(lines.size(), table.model()->rowCount() + 1);
    QVERIFY(lines[1].contains('\t'));
    window.close_document();
}

void PanelsTest::a_log_is_stated_and_what_has_no_field_stays() {
    MainWindow window(kept());
    Shell shell = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    OwnLog stated;
    stated.wall = shell.walls[1].name;
    stated.round = 2;
    stated.notch.overhang_left = Length::mm(80);
    shell.own_logs.push_back(stated);
    window.begin(shell, "A log");
    QVERIFY(settled(window));
    QVERIFY(window.desk().standing() != nullptr);
    const Layout &layout = window.desk().standing()->job.layout;
    window.selection().choose_piece(layout, *piece_tagged(layout, shell.walls[1].name + "-02-1"));
    auto *mark = window.log().findChild<QLineEdit *>("mark");
    QVERIFY(mark != nullptr);
    QTest::keyClicks(mark, "IX");
    QTest::keyClick(mark, Qt::Key_Return);
    QVERIFY(settled(window));
    stated.mark = "IX";
    auto *note = window.log().findChild<NameEdit *>("note");
    QVERIFY(note != nullptr);
    QTest::keyClicks(note, "rot at the sill");
    QTest::keyClick(note, Qt::Key_Return);
    QVERIFY(settled(window));
    stated.note = "rot at the sill";
    QCOMPARE(window.desk().standing()->job.shell.own_logs.size(), std::size_t(1));
    QVERIFY(window.desk().standing()->job.shell.own_logs[0] == stated);
    window.close_document();
}

/// A round that a door parts is one straight stick in its sizes; mark, finish, bow, fabric and note are
/// each log's own.
void PanelsTest::one_of_the_logs_that_an_opening_parts_is_stated_alone() {
    MainWindow window(kept());
    window.resize(1300, 800);
    window.show();
    window.begin_demo(0); // its wall A has a door in round 1
    QVERIFY(settled(window));
    raise(window, "log");
    const auto choose = [&](const char *tag) {
        const Layout &layout = window.desk().standing()->job.layout;
        window.selection().choose_piece(layout, *piece_tagged(layout, tag));
    };
    auto *fields = window.log().findChild<LogFields *>();
    auto *meant = window.log().findChild<QComboBox *>("meant");
    auto *mark = window.log().findChild<NameEdit *>("mark");
    choose("B-02-1");
    QVERIFY(!meant->isVisible()); // nothing parts it
    QCOMPARE(fields->title(), QString("Stated of the whole log"));
    choose("A-01-2");
    QVERIFY(meant->isVisible());
    QCOMPARE(fields->title(), QString("Stated of all logs of this round"));
    QVERIFY(window.log().field("butt_height")->isVisible());
    meant->setCurrentIndex(1);
    emit meant->activated(1);
    QCOMPARE(fields->title(), QString("Stated of log A-01-2 alone"));
    QVERIFY(!window.log().field("butt_height")->isVisible());
    auto *note = window.log().findChild<NameEdit *>("note");
    QVERIFY(mark->isVisible() && note->isVisible() && window.log().field("bow")->isVisible());
    mark->setFocus();
    QTest::keyClicks(mark, "right of the door");
    QTest::keyClick(mark, Qt::Key_Return);
    QVERIFY(settled(window));
    QVERIFY(window.desk().state()->stands());
    const Shell &shell = window.desk().state()->job.shell;
    QCOMPARE(own_log(shell, {"A", 1, 2}).mark, std::string("right of the door"));
    QVERIFY(!says_something_of(shell, {"A", 1, {}}) && !says_something_of(shell, {"A", 1, 1}));
    QCOMPARE(fields->title(), QString("Stated of log A-01-2 alone")); // it stays what the person meant
    note->setFocus();
    QTest::keyClicks(note, "of the barn");
    QTest::keyClick(note, Qt::Key_Return);
    QVERIFY(settled(window));
    QCOMPARE(own_log(window.desk().state()->job.shell, {"A", 1, 2}).note, std::string("of the barn"));
    choose("A-01-1");
    QCOMPARE(fields->title(), QString("Stated of all logs of this round"));
    QVERIFY(mark->name().isEmpty() && note->name().isEmpty());
    choose("A-01-2"); // something is stated of it alone: that is what is met
    QCOMPARE(fields->title(), QString("Stated of log A-01-2 alone"));
    QCOMPARE(mark->name(), QString("right of the door"));
    keep_picture(window, "log-alone");
    window.close_document();
}

void PanelsTest::what_can_hurt_is_said_with_its_caution() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const State &state = *window.desk().standing();
    QVERIFY(!words_of_piece(state, Index<Piece>(0)).contains("Screened span")); // a log of a wall
    QVERIFY(words_of_piece(state, Index<Piece>(0)).contains("no lift plan"));
    QVERIFY(words_of_opening(state, 0).contains("Ontario Building Code"));
    QVERIFY(words_of_opening(state, 0).contains("by 6 percent it would be"));
    QVERIFY(words_of_opening(state, 0).contains("licensed professional"));
    // the low end down, the high end up
    QCOMPARE(weight_text(320.2 * 0.45359237, 321.5 * 0.45359237, UnitSystem::imperial),
             QString("320 to 325 lb"));
    window.close_document();
}

void PanelsTest::a_joist_is_chosen_like_a_log() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    const Layout &layout = window.desk().standing()->job.layout;
    QVERIFY(!layout.timbers.empty());
    const std::string corner = window.selection().corner();
    for (const Timber &timber : layout.timbers) {
        window.selection().choose_piece(layout, timber.piece);
        QCOMPARE(window.selection().corner(), corner); // none of its ends is at one
        QVERIFY(!window.log().words().isEmpty());
        QVERIFY(!window.log().field("butt_height")->isVisibleTo(&window.log()));
        const QString words = words_of_piece(*window.desk().standing(), timber.piece);
        for (const char *told : {"Screened span", "Bends under the live load", "no design value",
                                 "never an approval", "Its round log", "no lift plan"})
            QVERIFY2(words.contains(told), told);
    }
    window.grab();
    window.close_document();
}

void PanelsTest::the_window_speaks_french() {
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

void PanelsTest::a_language_is_chosen_and_remembered() {
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

void PanelsTest::problems_of_a_text_are_told_in_french() {
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

/// Words of the reader of TOML, and sources of weights: no English stands inside the French.
void PanelsTest::what_the_window_quotes_is_told_in_french() {
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

void PanelsTest::steps_of_the_foundation_come_change_and_go_data() {
    QTest::addColumn<UnitSystem>("units");
    QTest::addColumn<NotchKind>("notch");
    QTest::newRow("hewn, metric") << UnitSystem::metric << NotchKind::full_dovetail;
    QTest::newRow("round, imperial") << UnitSystem::imperial << NotchKind::saddle;
}

void PanelsTest::steps_of_the_foundation_come_change_and_go() {
    QFETCH(UnitSystem, units);
    QFETCH(NotchKind, notch);
    MainWindow window(kept());
    window.show();
    window.begin(*shell_of(usual_shell(Shape::rectangle, units, notch)), "Slope");
    QVERIFY(settled(window));
    raise(window, "log");
    const auto steps = [&] { return window.desk().state()->read.shell->steps; };
    const auto press = [&](const char *name) {
        window.log().findChild<QToolButton *>(QLatin1String(name))->click();
        return settled(window);
    };
    const auto field = [&](const char *name) { return window.log().field(QLatin1String(name)); };
    window.selection().choose_wall("B");
    QVERIFY(field("step_left")->isVisible() && !field("step_left")->isEnabled());
    QVERIFY(field("step_left")->text().isEmpty());
    QVERIFY(press("more_steps"));
    QVERIFY(steps().size() == 1 && steps()[0].wall == "B");
    QVERIFY(!has_error(window));
    QVERIFY(field("step_left")->isEnabled());
    QCOMPARE(field("step_rise")->length(), steps()[0].rise);
    const Length narrow = units == UnitSystem::metric ? Length::mm(800) : Length::inches(32);
    enter(*field("step_width"), units == UnitSystem::metric ? "800" : "32");
    QVERIFY(settled(window));
    QCOMPARE(steps()[0].width, narrow);
    enter(*field("step_rise"), "500 m"); // over what the format takes
    QVERIFY(!told_beside(*field("step_rise")).isEmpty());
    QTest::keyClick(field("step_rise"), Qt::Key_Escape);
    QVERIFY(press("more_steps")); // beside the first
    QVERIFY(steps().size() == 2 && !has_error(window));
    QVERIFY(field("step_left")->length() == steps()[1].from_left);
    window.selection().choose_wall("A"); // which has none
    QVERIFY(field("step_left")->text().isEmpty());
    window.selection().choose_wall("B");
    QVERIFY(press("less_steps") && press("less_steps"));
    QVERIFY(steps().empty());
    window.desk().history().undo();
    QVERIFY(settled(window));
    QCOMPARE(steps().size(), std::size_t(1));
    for (int i = 0; i < 8; ++i) // until there is no room: it says why
        QVERIFY(press("more_steps"));
    QVERIFY(!has_error(window));
    bool says = false;
    for (const QLabel *label : window.log().findChildren<QLabel *>())
        says = says || (label->isVisible() && label->text().contains("fit there. "));
    QVERIFY(says);
    window.close_document();
}

namespace {

/// All that fields, boxes and lists below it show.
QStringList shown_in(const QWidget &panel) {
    QStringList all;
    for (const QLineEdit *edit : panel.findChildren<QLineEdit *>())
        all << edit->text();
    for (const QComboBox *box : panel.findChildren<QComboBox *>())
        all << box->currentText();
    for (const QLabel *label : panel.findChildren<QLabel *>())
        if (label->buddy() == nullptr) all << label->text();
    for (const QTableView *table : panel.findChildren<QTableView *>())
        for (int row = 0; row < table->model()->rowCount(); ++row)
            all << table->model()->index(row, 0).data().toString();
    if (const auto *text = panel.findChild<QPlainTextEdit *>(); text->isVisible())
        all << text->toPlainText(); // else it is filled when it is seen
    return all;
}

} // namespace

/// A text that cannot be read takes the place of one that could, with each panel in front once.
void PanelsTest::nothing_of_the_document_before_stays_in_the_panels() {
    Shell first = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric));
    first.name = "Zebrawood";
    first.thickness = Length::mm(187);
    first.notch.slope = Slope::rise_per_run(1.0 / 11);
    first.openings.push_back(usual_opening(OpeningKind::door, "A", UnitSystem::metric));
    first.openings.back().from_left = Length::mm(2000);
    first.openings.back().name = "zebra door";
    Fitted floor = with_fitting_floor(first);
    QVERIFY(floor);
    floor.shell->floors[0].name = "Z9";
    for (const char *front : {"shell", "floors", "joint", "log", "text", "cut_list"}) {
        MainWindow window(kept());
        window.show();
        window.begin(*floor.shell, "Zebrawood");
        QVERIFY(settled(window));
        window.selection().choose_corner("AB");
        raise(window, front);
        auto *joint = window.findChild<QDockWidget *>("joint");
        window.desk().begin("Other", "roundlay = 1\n[shell\n");
        QVERIFY(settled(window));
        for (const char *dock : {"shell", "floors", "joint", "log", "text", "cut_list"}) {
            raise(window, dock);
            auto *panel = window.findChild<QDockWidget *>(QLatin1String(dock));
            for (QString words : shown_in(window)) {
                const QString where = QString("%1 in front, then %2: %3").arg(front, dock, words.left(60));
                for (const char *old : {"ebra", "187", "1:11", "Z9"})
                    QVERIFY2(!words.contains(QLatin1String(old)), qPrintable(where));
            }
            for (const QComboBox *box : panel->findChildren<QComboBox *>())
                if (QLatin1String(dock) != QLatin1String("cut_list"))
                    QVERIFY2(!box->isVisible() || !box->isEnabled(), dock);
        }
        window.desk().begin("Third", write_document(*floor.shell)); // and all of it comes again
        QVERIFY(settled(window));
        raise(window, "shell");
        QVERIFY(shown_in(window).contains("Zebrawood"));
        raise(window, "joint");
        QVERIFY(shown_in(*window.findChild<QDockWidget *>("joint")->parentWidget()).contains("1:11"));
        QVERIFY(joint->findChild<QComboBox *>()->isEnabled());
        window.close_document();
    }
}

void PanelsTest::findings_that_an_edit_does_not_change_stay() {
    MainWindow window(kept());
    window.begin_demo(0);
    QTRY_VERIFY(window.desk().is_current());
    auto *tree = window.findings().tree();
    QVERIFY(tree->topLevelItemCount() > 0);
    const QSignalSpy told(tree->model(), &QAbstractItemModel::rowsInserted);
    QVERIFY(window.desk().edit("Name", [](const Shell &s) {
        Shell next = s;
        next.name = "another name";
        return std::optional(next);
    }));
    QTRY_VERIFY(window.desk().is_current());
    QCOMPARE(told.count(), 0); // nothing was laid out again for it
    window.close_document();
}

void PanelsTest::places_of_findings_leave_room_for_their_sentences() {
    const auto french = own_translator(QLocale(QLocale::French));
    QCoreApplication::installTranslator(french.get());
    MainWindow window(kept());
    window.resize(1300, 800);
    window.show();
    window.begin_demo(1);
    QVERIFY(settled(window));
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

void PanelsTest::without_opengl_a_sentence_stands_where_the_model_would_be() {
    MainWindow window(kept());
    QVERIFY(window.model().view() == nullptr);
    const auto *sentence = window.findChild<QLabel *>("no-model");
    QVERIFY(sentence != nullptr && sentence->text().contains("OpenGL"));
}

int main(int argc, char **argv) {
    const TestProgram program(argc, argv);
    PanelsTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "panels_test.moc"
