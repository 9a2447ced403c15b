#include "modeler/window/desk/workshop.h"

#include "kernel/design/stated_plan.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/review/review.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/mishaps.h"

#include <QElapsedTimer>
#include <algorithm>

namespace roundlay::window {

namespace {

class Stopwatch {
  public:
    Stopwatch() { timer_.start(); }
    /// Milliseconds since the last call.
    double lap() {
        constexpr double per_ms = 1e6;
        const double ms = static_cast<double>(timer_.nsecsElapsed()) / per_ms;
        timer_.restart();
        return ms;
    }

  private:
    QElapsedTimer timer_;
};

bool may_be_advised(const Finding &finding) {
    return finding.weight != Weight::note;
}

void work_out_shell(State &state, ModelCache &cache, Stopwatch &watch, bool in_drag) {
    ExportJob &job = state.job;
    job.shell = *state.read.shell;
    job.options.language = language();
    job.layout = in_drag ? lay_out_to_try(job.shell) : lay_out(job.shell);
    job.findings = job.layout.findings;
    state.lacks_advice = in_drag && std::ranges::any_of(job.findings, may_be_advised);
    state.times.layout = watch.lap();
    if (job.layout.walls.empty()) state.as_stated = stated_plan(job.shell);
    if (has_errors(job.findings)) return;
    job.bodies = cache.bodies(job.layout);
    state.times.bodies = watch.lap();
    const Findings reviewed = review(job.shell, job.layout, job.bodies, &cache.meetings());
    job.findings.insert(job.findings.end(), reviewed.begin(), reviewed.end());
    state.times.review = watch.lap();
    state.models = cache.models();
    state.lacks_bores = cache.lacks_bores();
    state.times.models = watch.lap();
}

StatePtr worked_out_so(const Document &document, quint64 revision, ModelCache &cache, bool in_drag) {
    auto state = std::make_shared<State>();
    state->revision = revision;
    state->document = document;
    Stopwatch watch;
    state->read = document.read();
    state->times.read = watch.lap();
    if (state->read.shell) work_out_shell(*state, cache, watch, in_drag);
    return state;
}

/// Layout finds the same with advice and without.
StatePtr with_advice(const StatePtr &state) {
    auto whole = std::make_shared<State>(*state);
    Findings &all = whole->job.findings, &laid = whole->job.layout.findings;
    Findings advised = lay_out(whole->job.shell).findings;
    all.erase(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(laid.size()));
    all.insert(all.begin(), advised.begin(), advised.end());
    laid = std::move(advised);
    whole->lacks_advice = false;
    return whole;
}

constexpr std::chrono::milliseconds rest{120}; ///< longer than between the steps of a drag

} // namespace

StatePtr worked_out(const Document &document, quint64 revision, ModelCache &cache) {
    return worked_out_so(document, revision, cache, false);
}

StatePtr worked_out_in_drag(const Document &document, quint64 revision, ModelCache &cache) {
    return worked_out_so(document, revision, cache, true);
}

/// The same with all its bores: they are carved out of round wood when everything else can be seen. Null
/// where it is to stop before that.
StatePtr with_bores(const StatePtr &state, ModelCache &cache, const std::function<bool()> &stop) {
    Stopwatch watch;
    SceneModels models = cache.models_with_bores(stop);
    if (models.empty()) return nullptr;
    auto whole = std::make_shared<State>(*state);
    whole->models = std::move(models);
    whole->lacks_bores = false;
    whole->times.bores = watch.lap();
    return whole;
}

namespace {

StatePtr failed_state(const Document &document, quint64 revision, const std::string &what) {
    auto state = std::make_shared<State>();
    state->revision = revision;
    state->document = document;
    state->failure = what;
    return state;
}

} // namespace

StatePtr worked_out_safely(const Worker &worker, const Document &document, quint64 revision,
                           ModelCache &cache) {
    try {
        return worker(document, revision, cache);
    } catch (...) {
        const QString what = words_of_what_is_thrown();
        note_mishap(QStringLiteral("working the document out"), what);
        return failed_state(document, revision, what.toStdString());
    }
}

Workshop::Workshop(Worker worker, Worker in_drag)
    : worker_(std::move(worker)), in_drag_(std::move(in_drag)), thread_([this] { run(); }) {}

Workshop::~Workshop() {
    {
        const std::lock_guard lock(mutex_);
        closing_ = true;
    }
    ordered_.notify_one();
    thread_.join();
}

void Workshop::ask_for(const Document &document, quint64 revision, bool in_drag) {
    {
        const std::lock_guard lock(mutex_);
        order_ = Order{document, revision, in_drag};
    }
    ordered_.notify_one();
}

std::optional<Workshop::Order> Workshop::next() {
    std::unique_lock lock(mutex_);
    ordered_.wait(lock, [this] { return closing_ || order_; });
    if (closing_) return {};
    return std::exchange(order_, std::nullopt);
}

bool Workshop::is_asked_for_more(std::chrono::milliseconds within) {
    std::unique_lock lock(mutex_);
    return ordered_.wait_for(lock, within, [this] { return closing_ || order_; });
}

void Workshop::run() {
    while (const auto order = next()) {
        StatePtr state =
            worked_out_safely(order->in_drag ? in_drag_ : worker_, order->document, order->revision, cache_);
        emit worked(state);
        if (state->lacks_advice) state = advised(*order, state);
        if (state && state->lacks_bores) carve_bores(*order, state);
    }
}

/// When the drag rests. Null where something else is asked for.
StatePtr Workshop::advised(const Order &order, const StatePtr &state) {
    if (is_asked_for_more(rest)) return nullptr;
    const Worker advise = [&](const Document &, quint64, ModelCache &) { return with_advice(state); };
    StatePtr whole = worked_out_safely(advise, order.document, order.revision, cache_);
    emit worked(whole);
    return whole;
}

/// Not between the steps of a drag, and never in the way of what is asked for next.
void Workshop::carve_bores(const Order &order, const StatePtr &state) {
    if (is_asked_for_more(rest)) return;
    const Worker carve = [&](const Document &, quint64, ModelCache &cache) {
        return with_bores(state, cache, [this] { return is_asked_for_more({}); });
    };
    if (const StatePtr whole = worked_out_safely(carve, order.document, order.revision, cache_))
        emit worked(whole);
}

} // namespace roundlay::window
