// The form for a new shell: what is typed stays, what is made can be built, and it says what it asks for.
#include "kernel/document/edit.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/frame/start_page.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/message_bar.h"
#include "modeler/window/views/plan_sketch.h"
#include "tests/window/support/window_test.h"

#include <QApplication>
#include <QComboBox>
#include <QCommandLinkButton>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QTranslator>

using namespace roundlay;
using namespace roundlay::window;

namespace {

template <typename Widget> Widget *called(QWidget &dialog, const QString &words) {
    for (QLabel *label : dialog.findChildren<QLabel *>())
        if (label->text().remove(u'&') == words) return qobject_cast<Widget *>(label->buddy());
    return nullptr;
}

void type(QLineEdit &edit, const char *words) {
    edit.selectAll();
    QTest::keyClicks(&edit, words);
    QTest::keyClick(&edit, Qt::Key_Return);
}

QPushButton *make_button(NewShellDialog &dialog) {
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (button->isDefault()) return button;
    return nullptr;
}

} // namespace

class NewShellTest : public QObject {
    Q_OBJECT

  private slots:
    void typed_sizes_survive_other_units_logs_and_shapes();
    void every_shape_and_notch_makes_a_shell_that_stands();
    void what_the_document_does_not_take_is_not_made();
    void it_says_what_it_asks_for();
    void it_starts_with_the_wood_that_is_taken();
    void a_drawn_plan_is_not_thrown_away_unasked();
    void drawing_is_offered_at_the_start();
    void a_hand_a_few_pixels_off_does_not_draw_a_crooked_house();
    void it_says_what_a_bare_number_means();
    void standard_buttons_speak_french();
    void a_narrow_message_can_be_read();
    void the_start_page_makes_no_window_high();
};

void NewShellTest::typed_sizes_survive_other_units_logs_and_shapes() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    auto *width = called<LengthEdit>(dialog, "Width, west to east");
    auto *thickness = called<LengthEdit>(dialog, "Thickness");
    auto *depth = called<LengthEdit>(dialog, "Depth, south to north");
    auto *units = called<QComboBox>(dialog, "Units");
    auto *logs = called<QComboBox>(dialog, "Logs and notches");
    type(*width, "8765"); // a bare number is in millimetres here
    type(*thickness, "200 mm");
    QCOMPARE(width->length(), Length::mm(8765));
    units->setCurrentIndex(1);
    QCOMPARE(width->length(), Length::mm(8765)); // exactly, although it shows sixteenths
    QVERIFY(width->text().contains(u'\''));
    QCOMPARE(thickness->length(), Length::mm(200));
    QCOMPARE(depth->length(), Length::feet(24)); // nobody typed it: in round feet
    dialog.choose(Shape::ell);
    QCOMPARE(width->length(), Length::mm(8765));
    logs->setCurrentIndex(1);
    QCOMPARE(width->length(), Length::mm(8765));
    units->setCurrentIndex(0);
    QCOMPARE(width->text(), QString("8765 mm"));
    QCOMPARE(depth->length(), Length::mm(7200));
    QCOMPARE(dialog.shell().thickness, Length::mm(200));
    QCOMPARE(dialog.shell().walls.front().length, Length::mm(8765));
}

void NewShellTest::every_shape_and_notch_makes_a_shell_that_stands() {
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
        NewShellDialog dialog(system);
        auto *logs = called<QComboBox>(dialog, "Logs and notches");
        auto *wood = called<QComboBox>(dialog, "Wood");
        wood->setCurrentIndex(wood->findData(QStringLiteral("western redcedar")));
        QVERIFY(wood->currentIndex() >= 0);
        QCOMPARE(logs->count(), 4);
        for (const Shape shape :
             {Shape::rectangle, Shape::ell, Shape::inset, Shape::tee, Shape::u_shape, Shape::cross})
            for (int kind = 0; kind < logs->count(); ++kind) {
                dialog.choose(shape);
                logs->setCurrentIndex(kind);
                QVERIFY(make_button(dialog)->isEnabled());
                const Shell &shell = dialog.shell();
                QVERIFY(!has_errors(lay_out(shell).findings));
                const auto read = Document(write_document(shell), "new").read();
                QVERIFY(read.shell.has_value());
                QCOMPARE(read.shell->wood.species, std::string("western redcedar"));
                QCOMPARE(read.shell->notch.kind == NotchKind::saddle, kind == 3);
            }
    }
}

/// The format's limit for a pitch is 2 m (FORMAT.md).
void NewShellTest::what_the_document_does_not_take_is_not_made() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    auto *pitch = called<LengthEdit>(dialog, "Pitch");
    type(*pitch, "5 m");
    QVERIFY(!make_button(dialog)->isEnabled());
    type(*pitch, "260 mm");
    QVERIFY(make_button(dialog)->isEnabled());
    type(*pitch, "a hand");
    QVERIFY(!make_button(dialog)->isEnabled()); // not while another size is read than is taken
    QTest::keyClick(pitch, Qt::Key_Escape);
    QVERIFY(make_button(dialog)->isEnabled());
    auto *name = called<QLineEdit>(dialog, "Name");
    name->setText(QString(201, u'x'));
    QVERIFY(!make_button(dialog)->isEnabled());
}

void NewShellTest::it_says_what_it_asks_for() {
    NewShellDialog dialog(UnitSystem::metric);
    dialog.choose(Shape::ell);
    auto *wing = called<LengthEdit>(dialog, "Width of the wing, at its north end");
    auto *main = called<LengthEdit>(dialog, "Depth of the main part, at its east end");
    QVERIFY(wing != nullptr && main != nullptr);
    type(*wing, "4 m");
    type(*main, "3 m");
    // Counter-clockwise from the south-west corner: A south, B east, C north of the main part, D, E north of
    // the wing.
    QCOMPARE(dialog.shell().walls[1].length, Length::metres(3));
    QCOMPARE(dialog.shell().walls[4].length, Length::metres(4));
    called<QComboBox>(dialog, "Logs and notches")->setCurrentIndex(3);
    QVERIFY(called<LengthEdit>(dialog, "Diameter of the logs") != nullptr);
}

void NewShellTest::it_starts_with_the_wood_that_is_taken() {
    NewShellDialog dialog(UnitSystem::metric);
    auto *wood = called<QComboBox>(dialog, "Wood");
    QVERIFY(wood != nullptr);
    QVERIFY2(wood->currentText().contains("hemlock"), qPrintable(wood->currentText())); // not blank
    dialog.accept();
    QCOMPARE(QString::fromStdString(dialog.shell().wood.species), wood->currentData().toString());
    wood->setCurrentIndex(wood->count() - 1);
    QCOMPARE(QString::fromStdString(dialog.shell().wood.species), wood->currentData().toString());
    QVERIFY(!dialog.shell().wood.species.empty());
}

void NewShellTest::a_drawn_plan_is_not_thrown_away_unasked() {
    const auto leave = [](NewShellDialog &dialog, QMessageBox::ButtonRole role) {
        bool asked = false;
        QTimer::singleShot(100, &dialog, [&] {
            auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
            if (box == nullptr) return;
            asked = true;
            for (QAbstractButton *button : box->buttons())
                if (box->buttonRole(button) == role) return button->click();
        });
        dialog.close();
        QTest::qWait(150);
        return asked;
    };
    NewShellDialog dialog(UnitSystem::metric);
    dialog.show();
    dialog.choose(Shape::drawn);
    for (const Vec2 corner : {Vec2{0, 0}, Vec2{6000, 0}, Vec2{6000, 5000}, Vec2{0, 5000}})
        dialog.sketch().add_corner(corner);
    QVERIFY(leave(dialog, QMessageBox::RejectRole));
    QVERIFY(dialog.isVisible());
    QCOMPARE(dialog.sketch().corners().size(), std::size_t(4));
    QVERIFY(leave(dialog, QMessageBox::DestructiveRole));
    QVERIFY(!dialog.isVisible());
    NewShellDialog other(UnitSystem::metric);
    other.show();
    QVERIFY(!leave(other, QMessageBox::RejectRole)); // nothing was drawn
    QVERIFY(!other.isVisible());
}

void NewShellTest::drawing_is_offered_at_the_start() {
    StartPage page;
    bool drawn = false;
    connect(&page, &StartPage::asked_for_new, this, [&](bool by_hand) { drawn = by_hand; });
    for (auto *link : page.findChildren<QCommandLinkButton *>())
        if (link->text().startsWith("Draw")) link->click();
    QVERIFY(drawn);
}

/// A hand misses a corner's line by a few pixels, whatever the scale of the sheet.
void NewShellTest::a_hand_a_few_pixels_off_does_not_draw_a_crooked_house() {
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial})
        for (const double pixels : {-6.0, -2.0, 2.0, 6.0}) {
            NewShellDialog dialog(system);
            dialog.show();
            dialog.choose(Shape::drawn);
            PlanSketch &sketch = dialog.sketch();
            const double off = pixels / sketch.scale();
            QVERIFY(std::abs(off) > 60 || std::abs(pixels) < 6); // more than a round length at this scale
            const double wide = Length::feet(28).mm(), deep = Length::feet(20).mm();
            for (const Vec2 corner :
                 {Vec2{0, 0}, Vec2{wide, 0}, Vec2{wide, deep}, Vec2{off, deep}, Vec2{0, 0}})
                sketch.add_corner(corner, {});
            QCOMPARE(sketch.corners().size(), std::size_t(4));
            QCOMPARE(sketch.corners().back().east.mm(), 0.0);
        }
}

void NewShellTest::it_says_what_a_bare_number_means() {
    NewShellDialog feet(UnitSystem::imperial), metric(UnitSystem::metric);
    QVERIFY(feet.sketch().accessibleDescription().contains("inches"));
    QVERIFY(metric.sketch().accessibleDescription().contains("millimetres"));
}

/// The words are Qt's own, in the package qt6-translations-l10n.
void NewShellTest::standard_buttons_speak_french() {
    const auto library = library_translator(QLocale(QLocale::French));
    QVERIFY2(library != nullptr, "qt6-translations-l10n is not installed");
    QApplication::installTranslator(library.get());
    NewShellDialog dialog(UnitSystem::metric);
    QStringList buttons;
    for (const QPushButton *button : dialog.findChildren<QPushButton *>())
        buttons << button->text().remove(u'&');
    QApplication::removeTranslator(library.get());
    QVERIFY2(buttons.contains(QStringLiteral("Annuler")), qPrintable(buttons.join(u' ')));
}

/// As wide as the middle of a screen of 683 points.
void NewShellTest::a_narrow_message_can_be_read() {
    constexpr int narrow = 280, wide = 800;
    MessageBar bar;
    bar.resize(narrow, 100);
    bar.say("roundlay ended badly while a shell had unsaved changes.",
            {{"Recover", {}}, {"Throw away", {}}, {"Later", {}}});
    auto *words = bar.findChild<QLabel *>();
    QTRY_VERIFY2(words->width() > narrow * 3 / 4, qPrintable(QString::number(words->width())));
    bar.resize(wide, 100);
    QTRY_VERIFY(words->geometry().right() < bar.findChild<QPushButton *>()->geometry().left()); // beside them
}

/// A screen of 1366 x 768 at twice the size has 384 points, some of them for the desktop, menu and status
/// line.
void NewShellTest::the_start_page_makes_no_window_high() {
    constexpr int room = 384 - 100;
    StartPage page;
    page.show_recent({"/a/one.roundlay", "/a/two.roundlay"});
    QVERIFY2(page.minimumSizeHint().height() <= room,
             qPrintable(QString::number(page.minimumSizeHint().height())));
}

int main(int argc, char **argv) {
    return run_test<NewShellTest>(argc, argv);
}

#include "new_shell_test.moc"
