// The wood of pieces is cut again only where an edit changes it, and bores come last.
#include "exporters/words/words.h"
#include "kernel/design/floor_edits.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/review/review.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/new_shell.h"
#include "modeler/window/panels/floor_panel.h"
#include "modeler/window/panels/length_edit.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/panels/message_bar.h"
#include "tests/window/support/window_test.h"

#include <QTest>

using namespace roundlay;
using namespace roundlay::window;

class ModelCacheTest : public WindowTest {
    Q_OBJECT

  private slots:
    void only_what_an_edit_changes_is_cut_anew_data();
    void only_what_an_edit_changes_is_cut_anew();
    void bores_come_when_the_hand_rests();
};

void ModelCacheTest::only_what_an_edit_changes_is_cut_anew_data() {
    QTest::addColumn<QString>("demo");
    for (const char *demo : {"one-room", "ell-house", "long-house", "round-cabin"})
        QTest::newRow(demo) << demo;
}

/// What is remembered is to the last digit what would be worked out anew.
void ModelCacheTest::only_what_an_edit_changes_is_cut_anew() {
    QFETCH(const QString, demo);
    Shell shell = *Document(text_of(demo_file(demo)), "demo").read().shell;
    ModelCache cache;
    const auto work_out = [&] {
        const Layout layout = lay_out(shell);
        QVERIFY(!has_errors(layout.findings));
        const Bodies anew = bodies_of(layout), bodies = cache.bodies(layout);
        QCOMPARE(bodies.size(), anew.size());
        for (const auto i : anew.indices()) {
            QVERIFY(bodies[i].hewn.vertices == anew[i].hewn.vertices);
            QCOMPARE(bodies[i].volume, anew[i].volume);
            QCOMPARE(bodies[i].bores.size(), anew[i].bores.size());
            for (std::size_t k = 0; k < anew[i].bores.size(); ++k)
                QVERIFY(bodies[i].bores[k].peg == anew[i].bores[k].peg);
        }
        const Findings known = review(shell, layout, bodies, &cache.meetings()),
                       fresh = review(shell, layout, anew);
        QCOMPARE(known.size(), fresh.size());
        for (std::size_t i = 0; i < fresh.size(); ++i)
            QCOMPARE(sentence_of(known[i], in_english(UnitSystem::metric)),
                     sentence_of(fresh[i], in_english(UnitSystem::metric)));
        QCOMPARE(overlaps(layout, bodies, &cache.meetings()).size(), overlaps(layout, anew).size());
        cache.models();
        QVERIFY(cache.models_with_bores([] { return true; }).empty()); // told to stop
        const SceneModels models = cache.models_with_bores([] { return false; }), all = models_of(anew);
        for (std::size_t i = 0; i < all.size(); ++i)
            QVERIFY(models[i]->levels[0].triangles.size() == all[i]->levels[0].triangles.size());
    };
    work_out();
    const int at_first = cache.cut();
    QVERIFY(at_first > 0);
    work_out(); // nothing has changed
    QCOMPARE(cache.cut(), 0);
    shell.openings.front().from_left = shell.openings.front().from_left + Length::mm(10);
    work_out();
    QVERIFY2(cache.cut() > 0 && cache.cut() < at_first, qPrintable(QString::number(cache.cut())));
    shell.openings.front().name = "another name"; // the same wood
    work_out();
    QCOMPARE(cache.cut(), 0);
}

void ModelCacheTest::bores_come_when_the_hand_rests() {
    Workshop workshop;
    std::vector<StatePtr> states;
    connect(
        &workshop, &Workshop::worked, this, [&](const StatePtr &s) { states.push_back(s); },
        Qt::QueuedConnection);
    const Document document(text_of(demo_file("round-cabin")), "round");
    workshop.ask_for(document, 1);
    QTRY_COMPARE_WITH_TIMEOUT(states.size(), std::size_t(2), 60'000);
    QVERIFY(states[0]->lacks_bores && states[0]->stands());
    QVERIFY(!states[1]->lacks_bores && states[1]->revision == 1);
    const SceneModels all = models_of(states[1]->job.bodies);
    bool fewer = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto triangles = [i](const StatePtr &s) { return s->models[i]->levels[0].triangles.size(); };
        fewer = fewer || triangles(states[0]) < all[i]->levels[0].triangles.size();
        QCOMPARE(triangles(states[1]), all[i]->levels[0].triangles.size());
    }
    QVERIFY(fewer);
    workshop.ask_for(document, 2); // all of it is known: nothing is carved again
    QTRY_COMPARE_WITH_TIMEOUT(states.size(), std::size_t(3), 60'000);
    QVERIFY(!states[2]->lacks_bores);
}

int main(int argc, char **argv) {
    return run_test<ModelCacheTest>(argc, argv);
}

#include "model_cache_test.moc"
