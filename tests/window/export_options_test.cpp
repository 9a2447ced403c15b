// What an export can be told, in its dialog: by mouse and keyboard, in both languages, kept for the next
// time.
#include "exporters/registry/export_option.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/export_dialog.h"
#include "modeler/window/frame/option_fields.h"
#include "tests/window/support/sight.h"
#include "tests/window/support/window_test.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QTest>
#include <QTranslator>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// Records what is exported instead of doing so.
struct Told {
    std::vector<ExportOptions> options;
    ExportDialog::Exporting exporting() {
        return [this](const ExportJob &job, const std::vector<const Exporter *> &,
                      const std::filesystem::path &, Progress &, IfThere) -> ExportDialog::Outcome {
            options.push_back(job.options);
            return ExportReport{};
        };
    }
};

QLineEdit &line(const ExportDialog &dialog, const char *name) {
    return *dialog.findChild<QLineEdit *>(name);
}

QString below(const ExportDialog &dialog, const char *name) {
    auto *fields = qobject_cast<OptionFields *>(line(dialog, name).parentWidget());
    const auto lines = fields->findChildren<QLabel *>("why");
    for (const QLabel *why : lines)
        if (why->isVisible() && why->y() > line(dialog, name).y() &&
            why->y() < line(dialog, name).y() + 2 * line(dialog, name).height())
            return why->text();
    return {};
}

void choose_only(const ExportDialog &dialog, const QString &name) {
    for (const Exporter &exporter : all_exporters()) {
        const QString each = QString::fromUtf8(exporter.name.data());
        dialog.findChild<QCheckBox *>(each)->setChecked(each == name);
    }
}

void click_on(QWidget &widget) {
    QTest::mouseClick(&widget, Qt::LeftButton, {}, QPoint(8, widget.height() / 2));
}

ExportJob job_called(MainWindow &window, const std::string &document) {
    ExportJob job = window.desk().state()->job;
    job.document = document;
    job.folder = "/somewhere";
    return job;
}

} // namespace

class ExportOptionsTest : public WindowTest {
    Q_OBJECT

  private slots:
    void fields_come_with_what_asks_for_them();
    void a_router_is_told_by_keyboard_and_what_is_wrong_stands_below();
    void what_was_stated_is_kept_for_the_document();
    void choices_are_taken_by_mouse();
    void it_is_told_in_french();
};

void ExportOptionsTest::fields_come_with_what_asks_for_them() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    ExportDialog dialog(window.desk().state()->job, folder_.filePath("x"));
    dialog.show();
    for (const ExportOption &option : all_export_options()) {
        const QString name = QString::fromUtf8(option.name.data());
        auto *field = dialog.findChild<QWidget *>(name);
        QVERIFY2(field != nullptr, qPrintable(name));
        for (const std::string_view asks : option.asks) {
            choose_only(dialog, QString::fromUtf8(asks.data()));
            QVERIFY2(field->isVisible(), qPrintable(name));
        }
        choose_only(dialog, "mesh");
        QVERIFY2(!field->isVisible(), qPrintable(name));
    }
    window.close_document();
}

void ExportOptionsTest::a_router_is_told_by_keyboard_and_what_is_wrong_stands_below() {
    MainWindow window(kept());
    window.begin_demo(1); // in feet and inches
    QVERIFY(settled(window));
    Told told;
    ExportDialog dialog(window.desk().state()->job, folder_.filePath("x"), nullptr, told.exporting());
    dialog.show();
    QApplication::setActiveWindow(&dialog);
    choose_only(dialog, "mesh");
    auto *router = dialog.findChild<QCheckBox *>("router");
    dialog.findChild<QCheckBox *>("mesh")->setChecked(false);
    router->setFocus();
    QTest::keyClick(router, Qt::Key_Space);
    QTRY_VERIFY(line(dialog, "board").isVisible());
    QTRY_VERIFY(in_sight(line(dialog, "board")));
    QTest::keyClick(router, Qt::Key_Tab);
    QCOMPARE(QApplication::focusWidget(), &line(dialog, "board"));
    QVERIFY(below(dialog, "board").isEmpty()); // nobody was asked yet
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QVERIFY(told.options.empty() && !dialog.is_running());
    QVERIFY2(below(dialog, "board").startsWith("no board is stated"), qPrintable(below(dialog, "board")));
    QVERIFY2(!below(dialog, "tool").contains("--"), qPrintable(below(dialog, "tool")));
    QTest::qWait(100);
    keep_picture(dialog, "export-options-missing");
    for (const char *typed : {"96x48", "0.25", "60 in", "20", "18000", "0.125"}) {
        QTest::keyClicks(QApplication::focusWidget(), typed);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    QVERIFY2(below(dialog, "board").startsWith("expected length x width x thickness, each 0.0197 in"),
             qPrintable(below(dialog, "board")));
    QVERIFY(below(dialog, "tool").isEmpty());
    QTest::qWait(100);
    keep_picture(dialog, "export-options-wrong");
    line(dialog, "board").setFocus();
    QTest::keyClicks(&line(dialog, "board"), "x0.5");
    QTest::keyClick(&line(dialog, "board"), Qt::Key_Tab);
    QVERIFY(below(dialog, "board").isEmpty());
    line(dialog, "spacing").setFocus(); // may be, but not beside this tool
    QTest::keyClicks(&line(dialog, "spacing"), "0.1");
    QTest::keyClick(&line(dialog, "spacing"), Qt::Key_Tab);
    QVERIFY2(below(dialog, "spacing").contains("leave no board"), qPrintable(below(dialog, "spacing")));
    line(dialog, "spacing").clear();
    QTest::keyClick(&line(dialog, "board"), Qt::Key_Return);
    QTRY_COMPARE(told.options.size(), std::size_t(1));
    QTRY_VERIFY(!dialog.is_running());
    const RouterOptions &router_told = told.options.front().router;
    QCOMPARE(router_told.board->length, 96 * 25.4);
    QCOMPARE(*router_told.tool, 6.35);
    QCOMPARE(*router_told.feed, 60 * 25.4);
    QCOMPARE(*router_told.depth_step, 3.175);
    QVERIFY(!router_told.spacing);
    window.close_document();
}

void ExportOptionsTest::what_was_stated_is_kept_for_the_document() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    Told told;
    const auto export_with = [&](const std::string &document, const char *scale) {
        ExportDialog dialog(job_called(window, document), folder_.filePath("x"), nullptr, told.exporting());
        dialog.show();
        choose_only(dialog, "print");
        if (scale != nullptr) line(dialog, "scale").setText(scale);
        dialog.start();
        return QTest::qWaitFor([&] { return !dialog.is_running(); });
    };
    QVERIFY(export_with("a.roundlay", "1:25"));
    QVERIFY(export_with("a.roundlay", nullptr));
    QVERIFY(export_with("b.roundlay", nullptr)); // another document's own
    QVERIFY(export_with("a.roundlay", ""));      // as the program has it, again
    QVERIFY(export_with("a.roundlay", nullptr));
    QVERIFY(export_with("", "1:5")); // never saved: nothing is kept
    QVERIFY(export_with("", nullptr));
    std::vector<double> scales;
    for (const ExportOptions &each : told.options)
        scales.push_back(each.print.scale);
    QVERIFY(scales == std::vector<double>({25, 25, 10, 10, 10, 5, 10}));
    // In inches a length was typed, in millimetres it is shown: it stays as long.
    const auto tool_in = [&](UnitSystem units, const QString &typed) {
        ExportJob job = job_called(window, "c.roundlay");
        job.shell.units = units;
        ExportDialog dialog(job, folder_.filePath("x"), nullptr, told.exporting());
        dialog.show();
        choose_only(dialog, "router");
        if (!typed.isEmpty()) {
            const char *values[] = {"96x48x1/2", "60", "20", "18000", "1/8"};
            const char **value = values;
            for (const char *name : {"board", "feed", "plunge", "spindle", "depth-step"})
                line(dialog, name).setText(*value++);
            line(dialog, "tool").setText(typed);
            dialog.start();
        }
        return QTest::qWaitFor([&] { return !dialog.is_running(); }) ? line(dialog, "tool").text() : "";
    };
    QCOMPARE(tool_in(UnitSystem::imperial, "1/4"), QString("1/4"));
    QCOMPARE(tool_in(UnitSystem::metric, {}), QString("6.35 mm"));
    QCOMPARE(tool_in(UnitSystem::imperial, {}), QString("0.25 in"));
    window.close_document();
}

void ExportOptionsTest::choices_are_taken_by_mouse() {
    MainWindow window(kept());
    window.begin_demo(1);
    QVERIFY(settled(window));
    Told told;
    ExportDialog dialog(window.desk().state()->job, folder_.filePath("x"), nullptr, told.exporting());
    dialog.show();
    QApplication::setActiveWindow(&dialog);
    choose_only(dialog, "step");
    QTest::qWait(100);
    auto *stock = dialog.findChild<QCheckBox *>("step-stock");
    auto *schema = dialog.findChild<QComboBox *>("step-schema");
    QCOMPARE(schema->currentText(), QString("AP214, which shops ask for"));
    click_on(*stock);
    QVERIFY(stock->isChecked());
    schema->setFocus();
    QTest::keyClick(schema, Qt::Key_Down);
    keep_picture(dialog, "export-options-step");
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (button->isDefault()) QTest::mouseClick(button, Qt::LeftButton);
    QTRY_COMPARE(told.options.size(), std::size_t(1));
    QTRY_VERIFY(!dialog.is_running());
    QVERIFY(told.options.front().step.with_stock && told.options.front().step.schema == StepSchema::ap242);
    QVERIFY(told.options.front().step.unit == StepUnit::millimetre);
    window.close_document();
}

void ExportOptionsTest::it_is_told_in_french() {
    const auto translator = own_translator(QLocale(QLocale::French, QLocale::France));
    QVERIFY(translator != nullptr);
    QApplication::installTranslator(translator.get());
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Chambre"));
    ExportDialog dialog(window.desk().state()->job, folder_.filePath("x"));
    dialog.show();
    choose_only(dialog, "router");
    line(dialog, "tool").setText("60");
    dialog.start();
    QTest::qWait(100);
    QVERIFY(!dialog.is_running() && dialog.result().startsWith("Rien n’a été exporté"));
    QCOMPARE(below(dialog, "tool"), QStringLiteral("il faut une longueur de 1 mm à 50 mm"));
    QVERIFY(below(dialog, "board").startsWith("aucun panneau n’est indiqué"));
    QVERIFY(line(dialog, "board").placeholderText() == QStringLiteral("à indiquer"));
    keep_picture(dialog, "export-options-french");
    const QString wrong = covered(dialog);
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong));
    window.close_document();
    QApplication::removeTranslator(translator.get());
}

int main(int argc, char **argv) {
    return run_test<ExportOptionsTest>(argc, argv);
}

#include "export_options_test.moc"
