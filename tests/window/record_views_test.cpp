// A house that stands in the views: its states, decisions on a right click, what its record says in colour
// and pattern, zones drawn by hand.
#include "kernel/document/document.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/state_bar.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/decide_dialog.h"
#include "modeler/window/record/faces_view.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/record_marks.h"
#include "modeler/window/views/scene_view.h"
#include "modeler/window/views/zone_skins.h"
#include "tests/window/support/old_house_test.h"
#include "tests/window/support/recording.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSpinBox>
#include <QTest>
#include <QTimer>
#include <QTranslator>
#include <algorithm>

using namespace roundlay;
using namespace roundlay::window;

namespace {

/// What is chosen in the menu that is open, as a hand would; false where it does not offer that.
bool choose_in_menu(const char *name) {
    auto *menu = qobject_cast<QMenu *>(QApplication::activePopupWidget());
    if (menu == nullptr) return false;
    auto *action = menu->findChild<QAction *>(QLatin1String(name));
    if (action == nullptr || !action->isEnabled()) return false;
    menu->close();
    action->trigger();
    return true;
}

/// Fills in the question what becomes of a log, while it is asked.
void answer(const std::function<void(DecideDialog &)> &fill, bool agree = true) {
    QTimer::singleShot(50, qApp, [fill, agree] {
        auto *dialog = qobject_cast<DecideDialog *>(QApplication::activeModalWidget());
        if (dialog == nullptr) return;
        fill(*dialog);
        agree ? dialog->accept() : dialog->reject();
    });
}

FoundLog log_in(const char *tag, int round) {
    FoundLog log;
    log.tag = tag;
    log.place = {"A", round, {}};
    return log;
}

} // namespace

class RecordViewsTest : public OldHouseTest {
    Q_OBJECT

  private slots:
    void a_log_is_decided_about_on_a_right_click();
    void every_colouring_of_the_record_has_a_legend_and_patterns();
    void zones_lie_on_their_faces_in_the_model();
    void measured_is_what_the_report_calls_measured();
    void a_zone_is_drawn_by_hand_on_a_face();
    void all_of_it_is_seen_on_a_small_screen_in_both_languages();

  private:
    void open(MainWindow &window, const QString &path) {
        window.resize(1300, 800);
        window.show();
        QVERIFY(window.open(path));
        QVERIFY(settled(window));
    }
};

void RecordViewsTest::a_log_is_decided_about_on_a_right_click() {
    MainWindow window(kept());
    window.resize(1300, 800);
    QVERIFY(shown(window, a_room(), "Decided"));
    raise(window, "elevation");
    QTest::qWait(200);
    ElevationView &elevation = window.elevation();
    const QPoint on_log = elevation.to_screen({2000, 380}).toPoint(); // of the second round
    const auto decide = [&](const char *what) {
        QTest::mouseClick(&elevation, Qt::RightButton, Qt::NoModifier, on_log);
        return choose_in_menu(what);
    };
    const std::string before = window.desk().document().text();
    answer([](DecideDialog &dialog) {
        QTest::keyClicks(dialog.findChild<QLineEdit *>("decide_by"), "the carpenter");
        QTest::keyClicks(dialog.findChild<QLineEdit *>("decide_why"), "sound all over");
    });
    QVERIFY(decide("thing_decide_0"));
    Record now = record(window);
    QCOMPARE(now.logs.size(), std::size_t(1));
    QCOMPARE(now.logs[0].decisions.size(), std::size_t(1));
    QCOMPARE(now.logs[0].decisions[0].what, Decision::keep);
    QCOMPARE(now.logs[0].decisions[0].by, std::string("the carpenter"));
    QVERIFY(!now.logs[0].decisions[0].on.empty());
    const std::string tag = now.logs[0].tag;
    // A change of mind stands behind it; what was decided before stays.
    answer([](DecideDialog &dialog) {
        QCOMPARE(dialog.findChild<QLineEdit *>("decide_by")->text(), QString("the carpenter")); // as before
        dialog.findChild<QComboBox *>("decide_wall")->setCurrentText("C");
        dialog.findChild<QSpinBox *>("decide_round")->setValue(4);
    });
    QVERIFY(decide("thing_decide_4"));
    now = record(window);
    QCOMPARE(now.logs[0].decisions.size(), std::size_t(2));
    QCOMPARE(now.logs[0].decisions[1].what, Decision::use_elsewhere);
    QCOMPARE(now.logs[0].decisions[1].to.wall, std::string("C"));
    QCOMPARE(now.logs[0].decisions[1].to.round, std::optional(4));
    raise(window, "record");
    click(elevation, {2000, 380});
    const QString told = window.record().findChild<QLabel *>("record_decisions")->text();
    QVERIFY2(told.contains("use elsewhere") && told.contains("before that: keep"), qPrintable(told));
    answer([](DecideDialog &) {}, false);
    QVERIFY(decide("thing_decide_5"));
    QCOMPARE(record(window).logs[0].decisions.size(), std::size_t(2)); // nobody agreed
    QCOMPARE(window.desk().history().count(), 2);                      // one step each
    window.desk().history().undo();
    QCOMPARE(record(window).logs[0].decisions.size(), std::size_t(1));
    window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    for (const Decision each : all_decisions) { // each of them
        answer([](DecideDialog &) {});
        QVERIFY(decide(qPrintable(QStringLiteral("thing_decide_%1").arg(static_cast<int>(each)))));
        QCOMPARE(record(window).logs[0].decisions.back().what, each);
    }
    QCOMPARE(record(window).logs[0].tag, tag);
    keep_picture(window, "decided");
    window.close_document();
}

void RecordViewsTest::every_colouring_of_the_record_has_a_legend_and_patterns() {
    MainWindow window(kept());
    window.resize(1300, 800);
    QVERIFY(shown(window, a_room(), "Coloured"));
    QVERIFY(window.desk().edit_record("Record", [](const Record &before) {
        Record next = before;
        next.notation.unit = NoteUnit::mm;
        for (int i = 0; i < 6; ++i) {
            FoundLog log = log_in(qPrintable(QStringLiteral("L %1").arg(i)), i + 2);
            if (i < 5) log.zones.push_back({.what = all_soundnesses[i]});
            log.decisions.push_back({.what = all_decisions[i]});
            if (all_decisions[i] == Decision::use_elsewhere) log.decisions.back().to = {"C", 9, {}};
            log.length.written = "6000";
            log.length.certainty = static_cast<Certainty>(i % 3);
            next.logs.push_back(log);
        }
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    window.show_legend(true);
    raise(window, "elevation");
    QTest::qWait(200);
    ElevationView &elevation = window.elevation();
    const QImage plain = greys(elevation);
    std::vector<QImage> seen{plain};
    for (const auto &[action, colouring] : {std::pair("colour_condition", Colouring::condition),
                                            std::pair("colour_decision", Colouring::decision),
                                            std::pair("colour_certainty", Colouring::certainty)}) {
        window.action(action)->trigger();
        QTest::qWait(100);
        const auto marks = record_marks(colouring);
        for (std::size_t a = 0; a < marks.size(); ++a) // none is told by its colour alone
            for (std::size_t b = 0; b < a; ++b)
                QVERIFY(marks[a].pattern != marks[b].pattern && marks[a].words != marks[b].words);
        const auto &entries = elevation.legend_panel().entries();
        QVERIFY(elevation.legend_panel().isVisible());
        for (const RecordMark &mark : marks)
            QVERIFY(std::ranges::any_of(entries, [&](const LegendEntry &entry) {
                return entry.words == mark.words && entry.pattern == mark.pattern;
            }));
        if (window.model().view() != nullptr)
            QVERIFY(window.model().view()->legend_panel().entries().size() ==
                    record_legend(colouring).size() + 1);
        const QImage now = greys(elevation);
        const QRect logs(now.width() / 2, 0, now.width() / 2, now.height()); // the legend is elsewhere
        for (const QImage &before : seen)
            QVERIFY2(now.copy(logs) != before.copy(logs), action);
        seen.push_back(now);
        keep_picture(window, QString::fromLatin1(action));
    }
    window.action("colour_wall")->trigger();
    QTest::qWait(100);
    QVERIFY(elevation.legend_panel().entries().size() > 5);
    window.close_document();
}

void RecordViewsTest::zones_lie_on_their_faces_in_the_model() {
    MainWindow window(kept());
    window.resize(1300, 800);
    QVERIFY(shown(window, a_room(), "Zones"));
    if (window.model().view() == nullptr) QSKIP("no model is drawn here");
    const auto pieces = window.desk().standing()->job.layout.pieces.size();
    const auto in_round = [&](int round) {
        return *piece_tagged(window.desk().standing()->job.layout, "A-0" + std::to_string(round) + "-1");
    };
    const std::string left = window.desk().standing()->job.layout.pieces[in_round(2)].datum.at;
    const auto zone = [](Soundness what, const char *from, const char *to, std::vector<FoundFace> faces) {
        return ConditionZone{.what = what, .from = {.written = from}, .to = {.written = to}, .faces = faces};
    };
    QVERIFY(window.desk().edit_record("Record", [&](const Record &before) {
        Record next = before;
        for (int round = 2; round < 5; ++round) {
            next.logs.push_back(log_in(qPrintable(QStringLiteral("L %1").arg(round)), round));
            if (round < 4) next.logs.back().zero = left; // of the last nobody knows where its zone is
        }
        next.logs[0].zones = {zone(Soundness::rotten, "1000 mm", "2500 mm", {FoundFace::outside})};
        next.logs[1].zones = {
            zone(Soundness::missing, "0 mm", "700 mm", {FoundFace::inside, FoundFace::top})};
        next.logs[2].zones = {zone(Soundness::soft, "0 mm", "700 mm", {})};
        return std::optional(next);
    }));
    QVERIFY(settled(window));
    QCOMPARE(window.model().view()->scene().instances.size(), pieces);
    window.action("colour_condition")->trigger();
    const Scene &scene = window.model().view()->scene();
    const Layout &layout = window.desk().standing()->job.layout;
    QCOMPARE(scene.instances.size(), pieces + 2);
    const auto marks = record_marks(Colouring::condition);
    const auto has_fill = [&](const Instance &instance, Soundness what) {
        const QColor fill = soundness_mark(what).fill;
        return instance.colour == Colour{static_cast<std::uint8_t>(fill.red()),
                                         static_cast<std::uint8_t>(fill.green()),
                                         static_cast<std::uint8_t>(fill.blue())};
    };
    const auto skin_on = [&](int round) {
        const auto at =
            std::find_if(scene.instances.begin() + static_cast<std::ptrdiff_t>(pieces), scene.instances.end(),
                         [&](const Instance &i) { return i.id == in_round(round).number(); });
        return *at;
    };
    // On the outside alone, from 1000 to 2500 mm; of a band that is not whole as much as there is.
    const Instance rotten = skin_on(2);
    QVERIFY(has_fill(rotten, Soundness::rotten));
    const WallPlace &wall = layout.walls[layout.pieces[in_round(2)].wall];
    const ShadedMesh &skin = scene.models[rotten.model]->levels.front();
    double painted = 0;
    for (const ShadedCorner &corner : skin.corners) {
        QVERIFY(corner.position[0] > 999.9F && corner.position[0] < 2500.1F);
        const Vec3 at = rotten.frame.to_world({corner.position[0], corner.position[1], corner.position[2]});
        QVERIFY2(wall.frame.to_local(at).y < 1, qPrintable(QString::number(wall.frame.to_local(at).y)));
        painted = std::max(painted, static_cast<double>(corner.position[0]));
    }
    QVERIFY(painted > 2400);
    // Closed, so that a section through it is one: every side of a triangle has its other.
    QVERIFY(!skin.triangles.empty() && skin.triangles.size() % 3 == 0);
    const Instance missing = skin_on(3);
    QVERIFY(has_fill(missing, Soundness::missing));
    bool inside = false;
    for (const ShadedCorner &corner : scene.models[missing.model]->levels.front().corners) {
        const Vec3 at = missing.frame.to_world({corner.position[0], corner.position[1], corner.position[2]});
        inside = inside || wall.frame.to_local(at).y > 100;
        QVERIFY(corner.position[0] < 700.1F);
    }
    QVERIFY(inside);
    // Where the place is not known the whole log tells it; what lies under a zone is as if nothing was said.
    QVERIFY(has_fill(scene.instances[in_round(4).at()], Soundness::soft));
    const QColor none = marks.front().fill;
    QCOMPARE(static_cast<int>(scene.instances[in_round(2).at()].colour.r), none.red());
    for (std::size_t mark = 1; mark < marks.size(); ++mark) // by more than the colour
        QVERIFY(painted_share(mark) > painted_share(mark - 1));
    QVERIFY(std::ranges::any_of(window.model().view()->legend_panel().entries(),
                                [](const LegendEntry &entry) { return entry.words.contains("bands"); }));
    raise(window, "elevation");
    QTest::qWait(300);
    keep_picture(window, "zones-in-the-model");
    // On the elevation as on the model; what is on the inside alone is an outline.
    const QImage seen = greys(window.elevation());
    const auto patch = [&](double x, int round) {
        const double up = wall.frame.to_local(layout.pieces[in_round(round)].frame.to_world({0, 0, 0})).z +
                          layout.pieces[in_round(round)].blank.height / 2;
        const QPoint at = (window.elevation().to_screen({x, up}) * seen.devicePixelRatio()).toPoint();
        double sum = 0;
        for (int i = -8; i <= 8; ++i)
            for (int j = -2; j <= 2; ++j)
                sum += qGray(seen.pixel(at + QPoint(i, j)));
        return sum;
    };
    QVERIFY(std::abs(patch(1700, 2) - patch(4000, 2)) > 500);
    QVERIFY(std::abs(patch(3500, 2) - patch(4000, 2)) < 500);
    // A hand that points at a zone chooses its log, and the choice leaves the zones there.
    const Vec3 on_zone = wall.frame.to_world(
        {layout.pieces[in_round(2)].blank.length / 3, -2, wall.frame.to_local(rotten.frame.origin).z + 100});
    QTest::mouseClick(window.model().view(), Qt::LeftButton, {},
                      window.model().view()->on_screen(on_zone).toPoint());
    QVERIFY(window.selection().is_piece(layout.pieces[in_round(2)].tag));
    QCOMPARE(window.model().view()->scene().instances.size(), pieces + 2);
    window.action("colour_wall")->trigger();
    QCOMPARE(window.model().view()->scene().instances.size(), pieces);
    window.close_document();
}

/// Of its length alone nobody knows how large a log is; zones drawn by hand take nothing from what was
/// measured.
void RecordViewsTest::measured_is_what_the_report_calls_measured() {
    MainWindow window(kept());
    QVERIFY(shown(window, a_room(), "Certain"));
    const auto noted = [](const char *written, Certainty certainty = Certainty::measured) {
        return NotedLength{.written = written, .certainty = certainty};
    };
    std::vector<FoundLog> logs;
    for (int i = 0; i < 6; ++i)
        logs.push_back(log_in(qPrintable(QStringLiteral("L %1").arg(i)), i + 2));
    logs[1].ends = {{.corner = "AB", .height = noted("230 mm")}};
    logs[1].zones = {{.what = Soundness::soft, .from = noted("0 mm", Certainty::proposed)}};
    logs[2].length = noted("6 m");
    logs[3].ends = {
        {.corner = "AB", .height = noted("230 mm"), .width = noted("180 mm", Certainty::proposed)}};
    logs[4].ends = {{.corner = "AB", .height = noted("230 mm", Certainty::proposed)}};
    logs[5].length = noted("6 m", Certainty::contradicted);
    Record record;
    record.logs = logs;
    const ExportJob &job = window.desk().standing()->job;
    const auto marks = marked_pieces(record, job, Colouring::certainty);
    const QStringList words{"not recorded: by the plan alone",
                            "measured",
                            "partly measured",
                            "partly measured",
                            "proposed only",
                            "contradicted"};
    for (int i = 0; i < 6; ++i) {
        const auto piece = piece_tagged(job.layout, "A-0" + std::to_string(i + 2) + "-1");
        QVERIFY(piece.has_value());
        QCOMPARE(record_marks(Colouring::certainty)[marks[*piece]].words, words[i]);
    }
    window.close_document();
}

void RecordViewsTest::a_zone_is_drawn_by_hand_on_a_face() {
    MainWindow window(kept());
    window.resize(1300, 800);
    QVERIFY(shown(window, a_room(), "Zones"));
    const StatePtr state = window.desk().standing();
    window.selection().choose_piece(state->job.layout, *piece_tagged(state->job.layout, "A-02-1"));
    raise(window, "faces");
    QTest::qWait(150);
    FacesView &faces = window.faces();
    const auto drag_on = [&](FoundFace face, double from, double to) {
        const QPointF a = faces.place_of(face, from), b = faces.place_of(face, to);
        press(faces, a);
        move(faces, (a + b) / 2);
        move(faces, b);
        release(faces, b);
    };
    const std::string before = window.desk().document().text();
    drag_on(FoundFace::under, 0, 800);
    QVERIFY(choose_in_menu("zone_what_3"));
    Record now = record(window);
    QCOMPARE(now.logs.size(), std::size_t(1));
    QCOMPARE(now.logs[0].tag, std::string("A-02-1"));
    QCOMPARE(now.logs[0].zero, now.logs[0].ends[0].corner); // whence it is measured is said with it
    QCOMPARE(now.logs[0].zones.size(), std::size_t(1));
    const ConditionZone zone = now.logs[0].zones[0];
    QCOMPARE(zone.what, Soundness::rotten);
    QCOMPARE(zone.faces, std::vector<FoundFace>{FoundFace::under});
    QVERIFY(zone.from.value && zone.to.value);
    QVERIFY(zone.from.value->mm() <= 10 && std::abs(zone.to.value->mm() - 800) <= 15);
    QCOMPARE(zone.to.certainty, Certainty::proposed); // a hand is no tape
    QCOMPARE(window.desk().history().count(), 1);
    drag_on(FoundFace::outside, 2000, 1500); // from right to left as well
    QVERIFY(choose_in_menu("zone_what_1"));
    QVERIFY(std::abs(record(window).logs[0].zones[1].from.value->mm() - 1500) <= 15);
    keep_picture(window, "faces");
    drag_on(FoundFace::outside, 3000, 3500);
    QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_Escape); // thought better of it
    QCOMPARE(record(window).logs[0].zones.size(), std::size_t(2));
    QTest::mouseClick(&faces, Qt::RightButton, Qt::NoModifier,
                      faces.place_of(FoundFace::under, 400).toPoint());
    QVERIFY(choose_in_menu("zone_is_2"));
    QCOMPARE(record(window).logs[0].zones[0].what, Soundness::soft);
    QTest::mouseClick(&faces, Qt::RightButton, Qt::NoModifier,
                      faces.place_of(FoundFace::under, 400).toPoint());
    QVERIFY(choose_in_menu("zone_out"));
    QCOMPARE(record(window).logs[0].zones.size(), std::size_t(1));
    // Measured from the other end it lies mirrored.
    const double there = record(window).logs[0].zones[0].from.value->mm();
    const std::string other = record(window).logs[0].ends[1].corner;
    window.desk().edit_record("Turn", [&](const Record &record) {
        Record next = record;
        next.logs[0].zero = other;
        return std::optional(next);
    });
    QString hint; // while it is drawn: from the same corner as what comes to stand in the record
    connect(&faces, &FacesView::hinted, &faces, [&](const QString &words) {
        if (words.contains(QStringLiteral("measured from"))) hint = words;
    });
    drag_on(FoundFace::top, there, there + 500);
    QVERIFY(choose_in_menu("zone_what_4"));
    const ConditionZone turned = record(window).logs[0].zones[1];
    QVERIFY2(hint.contains(QStringLiteral("from %1 to %2, measured from %3")
                               .arg(text(turned.from.written), text(turned.to.written), text(other))),
             qPrintable(hint));
    QVERIFY(turned.from.value->mm() < turned.to.value->mm());
    QVERIFY(std::abs(turned.from.value->mm() - there) > 100);
    while (window.desk().history().canUndo())
        window.desk().history().undo();
    QCOMPARE(window.desk().document().text(), before);
    window.close_document();
}

/// Looked at in the pictures; what can be told by a program is told here.
void RecordViewsTest::all_of_it_is_seen_on_a_small_screen_in_both_languages() {
    for (const bool in_french : {false, true}) {
        const auto french = own_translator(QLocale(QLocale::French));
        if (in_french) QCoreApplication::installTranslator(french.get());
        MainWindow window(kept());
        open(
            window,
            old_house(
                "\n[record]\nnumbers_in = \"in\"\n\n[[found]]\ntag = \"A 3\"\nwall = \"A\"\n"
                "round = 3\npiece = 1\nzero = \"DA\"\ncondition = \"soft at the door\"\n"
                "photographs = [\"door-side.jpg\"]\nend = [\n"
                "  { corner = \"DA\", height = \"11\", width = { note = \"8\", is = "
                "\"contradicted\" } },\n]\n"
                "zone = [\n  { what = \"rotten\", from = \"0\", to = \"14\", faces = [\"under\"] },\n"
                "  { what = \"checked\", from = \"20\", to = \"60\", faces = [\"outside\", \"top\"] },\n]\n"
                "decision = [\n  { what = \"mend\", by = \"the carpenter\", why = \"one end only\" },\n]\n"));
        window.resize(1024, 700);
        const StatePtr state = window.desk().standing();
        window.selection().choose_piece(state->job.layout, *piece_tagged(state->job.layout, "A-03-1"));
        window.action("colour_condition")->trigger();
        raise(window, "record");
        raise(window, "faces");
        const QString suffix = in_french ? QStringLiteral("-french") : QString();
        keep_picture(window, QStringLiteral("record-small") + suffix);
        raise(window, "elevation");
        window.record().form().go_to("zone0_what");
        keep_picture(window, QStringLiteral("record-zones") + suffix);
        QVERIFY(window.width() <= 1024 && window.height() <= 700);
        window.resize(1390, 880);
        window.record().form().go_to("end0_height");
        keep_picture(window, QStringLiteral("record-large") + suffix);
        auto *what = qobject_cast<QComboBox *>(window.record().form().box("zone0_what"));
        QCOMPARE(what->currentText(), in_french ? QStringLiteral("pourri") : QStringLiteral("rotten"));
        window.desk().history().setClean();
        window.close_document();
        if (in_french) QCoreApplication::removeTranslator(french.get());
    }
}

int main(int argc, char **argv) {
    return run_test<RecordViewsTest>(argc, argv);
}

#include "record_views_test.moc"
