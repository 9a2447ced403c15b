// What a hand waits for: a step of a drag with its parts, a frame of an orbit, and the start. Reported with
// ratios to the plain way in the same process; no gate.
//
//   bench_window [--once | --live | --round]     --once: few runs, without the shell of 1,000 pieces; --live:
//   the drag alone, long; --round: of round logs alone
#include "exporters/picture/renderer.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/solid/solid.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/workshop.h"
#include "modeler/window/frame/application.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/views/elevation_scene.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/model_page.h"
#include "modeler/window/views/plan_view.h"
#include "modeler/window/views/scene_view.h"
#include "tests/bench/shells.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QOpenGLWidget>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <functional>
#include <optional>

using namespace roundlay;
using namespace roundlay::window;

namespace {

double milliseconds(const QElapsedTimer &timer) {
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

double median(std::vector<double> all) {
    std::sort(all.begin(), all.end());
    return all.empty() ? 0 : all[all.size() / 2];
}

template <typename Deed> double timed(Deed deed) {
    QElapsedTimer timer;
    timer.start();
    deed();
    return milliseconds(timer);
}

void wait_for(MainWindow &window) {
    if (!QTest::qWaitFor([&] { return window.desk().is_current(); }))
        std::puts("  (the shell was not worked out in time)");
}

/// A view that can be told to draw at once, to the last pixel.
double frame(SceneView &view) {
    QElapsedTimer timer;
    timer.start();
    view.grabFramebuffer(); // draws, and waits for the pixels
    return milliseconds(timer);
}

Shell dragged(Shell shell, int step) {
    shell.openings.front().from_left = shell.openings.front().from_left + Length::mm(step); // stays buildable
    return shell;
}

void report_drag(MainWindow &window, int steps) {
    const Shell shell = bench::house();
    window.begin(shell, "bench");
    wait_for(window);
    ModelCache cache;
    std::vector<double> read, layout, bodies, review, models, views, all, model_view;
    window.model().view()->set_hurried(true); // as while an opening is dragged
    for (int step = 0; step <= steps; ++step) {
        const Document document(write_document(dragged(shell, step)), "bench");
        const StatePtr state = worked_out(document, static_cast<quint64>(step) + 1, cache);
        if (state->models.empty()) {
            std::puts("  (a step gives a shell that cannot be built: nothing is measured by it)");
            continue;
        }
        const Times &t = state->times;
        const double drawn = timed([&] {
            elevation_of(*state, "A");
            window.elevation().grab();
            window.plan().grab();
        });
        const double shown = timed([&] {
            window.model().view()->set_scene(scene_of(state->job.layout, state->models));
            frame(*window.model().view());
        });
        if (step == 0) continue; // everything is new to the first
        read.push_back(t.read);
        layout.push_back(t.layout);
        bodies.push_back(t.bodies);
        review.push_back(t.review);
        models.push_back(t.models);
        views.push_back(drawn);
        all.push_back(t.all() + drawn);
        model_view.push_back(shown);
    }
    window.model().view()->set_hurried(false);
    std::printf("drag step, %zu pieces (median of %d): read %.1f, layout %.1f, bodies %.1f, review %.1f, "
                "meshes %.1f, "
                "plan and elevation %.1f: together %.1f ms\n",
                lay_out(shell).pieces.size(), steps, median(read), median(layout), median(bodies),
                median(review), median(models), median(views), median(all));
    std::printf("  the model with its changed pieces: %.1f ms\n", median(model_view));
    const Layout plain = lay_out(shell);
    const double plainly = timed([&] {
        for (const Piece &piece : plain.pieces)
            build_plainly(piece);
    });
    std::printf("  RATIO plain solids : whole step %.0f (plain %.0f ms)\n", plainly / median(all), plainly);
}

/// Draws the triangles of a scene and nothing else.
class BareView : public QOpenGLWidget {
  public:
    BareView(Scene scene, Camera camera) : scene_(std::move(scene)), camera_(camera) {}
    ~BareView() override {
        makeCurrent();
        renderer_.reset();
        doneCurrent();
    }
    void orbit(double angle) { camera_ = orbited(camera_, angle, 0); }

  protected:
    void initializeGL() override {
        renderer_ = std::move(std::get<0>(Renderer::create()));
        renderer_->show(scene_);
    }
    void paintGL() override {
        Look bare;
        bare.samples = 0;
        bare.ambient = Ambient::none;
        bare.edges = bare.ground = false;
        renderer_->draw(camera_, bare, width(), height(), defaultFramebufferObject());
    }

  private:
    Scene scene_;
    Camera camera_;
    std::unique_ptr<Renderer> renderer_;
};

/// Milliseconds of a frame in which a view turns a little.
template <typename View> double orbit_frame(View &view, const std::function<void()> &turn, int frames) {
    std::vector<double> all;
    for (int i = 0; i < frames; ++i) {
        turn();
        all.push_back(timed([&] { view.grabFramebuffer(); })); // draws, and waits for the pixels
    }
    return median(all);
}

template <typename View> void put_up(View &view) {
    view.resize(1280, 800);
    view.show();
    QTest::qWait(100);
}

/// Milliseconds of each step of a drag, from the hand on.
struct LiveSteps {
    std::vector<double> asked, known, told, painted, commands, bodies, reviewed, meshes, processor;

    void work(const Times &times) {
        known.push_back(times.all());
        bodies.push_back(times.bodies);
        reviewed.push_back(times.review);
        meshes.push_back(times.models);
    }
    void print(std::size_t pieces, int steps, double anew) const {
        std::printf(
            "  RATIO processor's time of a step until all is painted : all worked out anew %.2f (%.0f : "
            "%.0f ms)\n",
            median(processor) / anew, median(processor), anew);
        std::printf(
            "  live, %zu pieces, %d steps: edit and restate %.1f, worked out aside %.1f (of it bodies %.1f, "
            "review %.1f, "
            "meshes %.1f), all views told after %.1f, all painted after %.1f ms (of it the model's frame "
            "%.1f)\n",
            pieces, steps, median(asked), median(known), median(bodies), median(reviewed), median(meshes),
            median(told), median(painted), median(commands));
    }
};

/// The plain way: everything cut, meshed and held against everything anew. Milliseconds of the processor.
double all_anew(const Shell &shell) {
    ModelCache none;
    const Document stated(write_document(shell), "bench");
    const std::clock_t before = std::clock();
    worked_out(stated, 1, none);
    none.models_with_bores([] { return false; });
    return 1000.0 * static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC;
}

/// As a hand does it: each step goes by the desk, the workshop's thread, the event loop and every view that
/// is open, and the clock stops when the last view has painted.
class LiveDrag : public QObject {
  public:
    explicit LiveDrag(MainWindow &window) : window_(window), view_(*window.model().view()) {
        // The first listener and the last one: all panels and views are asked between them.
        connect(&window.desk(), &Desk::state_changed, this, [this] {
            at_told_ = milliseconds(timer_);
            told_of_it_ = true; // what was on its way before is no picture of this step
        });
        connect(&view_, &QOpenGLWidget::frameSwapped, this, [this] {
            if (!told_of_it_) return;
            swapped_ = milliseconds(timer_);
            spent_ = 1000.0 * static_cast<double>(std::clock() - before_) / CLOCKS_PER_SEC;
        });
    }

    void step(int step) {
        told_of_it_ = false;
        swapped_ = spent_ = {};
        timer_.start();
        before_ = std::clock();
        constexpr int far = 40; // there and back: further along the shell could not be built
        const int at = step % (2 * far) < far ? step % far : far - step % far;
        window_.desk().show([at](const Shell &s) { return std::optional(dragged(s, at)); });
        steps.asked.push_back(milliseconds(timer_));
        while (!window_.desk().is_current())
            QCoreApplication::processEvents(
                QEventLoop::WaitForMoreEvents); // sleeps: the processor's time is counted
        steps.work(window_.desk().state()->times);
        constexpr double at_rest = 60; // ms without a frame: the last one shows everything
        if (!QTest::qWaitFor([&] { return swapped_ && milliseconds(timer_) > *swapped_ + at_rest; }, 2000))
            std::puts("  (a step was not painted in time)");
        steps.painted.push_back(swapped_.value_or(2000));
        steps.processor.push_back(spent_.value_or(2000));
        steps.told.push_back(at_told_);
        steps.commands.push_back(view_.last_frame_ms());
    }

    LiveSteps steps;

  private:
    MainWindow &window_;
    SceneView &view_;
    QElapsedTimer timer_;
    std::clock_t before_ = 0;
    double at_told_ = 0;
    bool told_of_it_ = false;
    std::optional<double> swapped_, spent_;
};

void report_live_drag(MainWindow &window, const Shell &shell, int steps) {
    window.begin(shell, "bench");
    wait_for(window);
    window.selection().choose_opening(window.desk().standing()->job.shell, 0);
    QTest::qWait(500);
    LiveDrag drag(window);
    for (int step = 1; step <= steps; ++step)
        drag.step(step);
    window.desk().cancel();
    drag.steps.print(lay_out(shell).pieces.size(), steps, all_anew(shell));
}

void report_orbit(const Shell &shell, int frames) {
    const Layout layout = lay_out(shell);
    SceneView view, empty; // the second goes the same way to the pixels, with nothing drawn
    put_up(view);
    view.set_scene(scene_of(layout, bodies_of(layout)));
    frame(view);
    const double whole = orbit_frame(
        view, [&] { view.orbit(0.05, 0); }, frames);
    BareView bare(view.scene(), view.camera());
    put_up(bare);
    const double triangles = orbit_frame(
        bare, [&] { bare.orbit(0.05); }, frames);
    put_up(empty);
    const double nothing = orbit_frame(
        empty, [&] { empty.orbit(0.05, 0); }, frames);
    std::printf(
        "orbit, %zu pieces, 1280x800, its pixels read back: %.0f ms a frame; the same triangles with nothing "
        "else %.0f ms; an empty scene %.0f ms\n",
        layout.pieces.size(), whole, triangles, nothing);
    std::printf("  RATIO frame : bare triangles %.1f\n", whole / triangles);
}

double start_of(const std::function<std::unique_ptr<QWidget>()> &make) {
    return timed([&] {
        const auto window = make();
        window->show();
        window->grab();
    });
}

void report_start(const QString &folder) {
    const auto plain = [] {
        auto window = std::make_unique<QMainWindow>();
        window->resize(1360, 860);
        window->setCentralWidget(new SceneView);
        return window;
    };
    start_of(plain); // the driver is loaded once
    const double empty = start_of(plain);
    const double start = start_of([&] { return std::make_unique<MainWindow>(folder); });
    const double demo = start_of([&] {
        auto window = std::make_unique<MainWindow>(folder);
        window->begin_demo(1);
        wait_for(*window);
        return window;
    });
    std::printf(
        "start: start page %.0f ms, house on screen %.0f ms; an empty window with the same viewer %.0f ms\n",
        start, demo, empty);
    std::printf("  RATIO start page : empty window %.2f, house : empty window %.2f\n", start / empty,
                demo / empty);
}

} // namespace

int main(int argc, char **argv) {
    const bool live = argc > 1 && std::strcmp(argv[1], "--live") == 0; // for a profiler
    const bool round = argc > 1 && std::strcmp(argv[1], "--round") == 0;
    const bool once = argc > 1 && std::strcmp(argv[1], "--once") == 0;
    QStandardPaths::setTestModeEnabled(true);
    prepare_application();
    QApplication application(argc, argv);
    dress(application);
    const QTemporaryDir folder;
    {
        MainWindow window(folder.path());
        window.show();
        if (window.model().view() == nullptr) {
            std::fputs("bench_window: this machine draws no OpenGL 3.3; nothing was measured.\n", stderr);
            return 1;
        }
        constexpr int few = 5, usual = 40, many = 200;
        if (!live && !round) report_drag(window, once ? few : usual);
        if (!round) report_live_drag(window, bench::house(), live ? many : once ? few : usual);
        report_live_drag(window, bench::cabin(), live ? many : few);
        if (live || round) return 0;
    }
    report_orbit(bench::house(), once ? 3 : 20);
    if (!once) report_orbit(bench::hall(), 20);
    report_start(folder.path());
    return 0;
}
