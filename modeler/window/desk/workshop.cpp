#include "modeler/window/desk/workshop.h"

#include "exporters/registry/shared_order.h"
#include "kernel/design/stated_plan.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/unrecorded.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/review/review.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/found_house.h"
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

constexpr const char *decision_code = "decision";

/// The house as it was measured, where that is the state that is seen or what it stands on.
MeasuredShell as_asked(const ReadResult &read) {
    MeasuredShell asked;
    asked.shell = *read.shell;
    if (!read.measured_on) return asked;
    asked = house_as_asked({*read.measured_on, read.levelled_on, read.record}, *read.shell);
    asked.findings.push_back(
        {Weight::note,
         "as-measured",
         {about::All::logs},
         said("%1 numbers of the record are in the model, %2 more are proposed by the rules of the plan",
              asked.taken, asked.proposed.size()),
         {},
         ""});
    return asked;
}

/// Decisions are of the house as it shall stand: against its own shell, as it was found, nothing is held.
void add_decisions(State &state) {
    std::erase_if(state.job.findings, [](const Finding &finding) { return finding.code == decision_code; });
    const auto tell = [&](const std::vector<DecisionProblem> &problems) {
        for (const DecisionProblem &problem : problems)
            state.job.findings.push_back(
                {problem.weight, decision_code, {about::All::logs}, problem.what, {}, problem.path});
    };
    const Record &record = state.read.record;
    const Layout &now = state.job.layout, &found = found_layout(state.job);
    tell(places_past_log(record, found));
    const auto &measured = state.read.measured_on;
    if (state.seen.empty() || now.pieces.empty() || measured == state.read.shell) return;
    if (const auto once = stood_once(record, measured, *state.read.shell)) return tell({*once});
    tell(decision_problems(record, now, &found));
    if (const auto anew = kept_and_cut_anew(record, now, found)) tell({*anew});
    if (const auto unknown = unrecorded_and_ordered(record, now)) tell({*unknown});
    tell(harm_that_stays(record, state.job.shell, now, found));
}

constexpr const char *tick_code = "tick";

std::vector<std::string> names_of(const std::vector<HouseState> &states) {
    std::vector<std::string> names;
    for (const HouseState &state : states)
        names.push_back(state.name);
    return names;
}

/// The piece whose tick it is, by which its sentences begin; where the shell has none, all of them.
About about_tick(const TickProblem &problem, const Layout &layout) {
    const auto *tag = problem.what.amounts.empty()
                          ? nullptr
                          : std::get_if<std::string>(&problem.what.amounts.front().value());
    const bool is_there =
        tag != nullptr && std::ranges::find(layout.pieces, *tag, &Piece::tag) != layout.pieces.end();
    return is_there ? About{about::Piece{*tag}} : About{about::All::logs};
}

/// What was ticked and cannot be: told, never refused, for who ticks it sees the house.
void add_ticks(State &state) {
    std::erase_if(state.job.findings, [](const Finding &finding) { return finding.code == tick_code; });
    if (state.read.record.done.empty() || !state.stands()) return;
    for (const TickProblem &problem : tick_problems(state.read.record, state.job.shell, state.job.layout,
                                                    raising_order_of(state.job), names_of(state.read.states)))
        state.job.findings.push_back({Weight::warning,
                                      tick_code,
                                      about_tick(problem, state.job.layout),
                                      problem.what,
                                      {},
                                      problem.path});
}

void work_out_shell(State &state, ModelCache &cache, Stopwatch &watch, MeasuredShell asked, bool in_drag) {
    ExportJob &job = state.job;
    job.shell = std::move(asked.shell);
    job.options.language = language();
    job.layout = in_drag ? lay_out_to_try(job.shell) : lay_out(job.shell);
    job.findings = job.layout.findings;
    state.lacks_advice = in_drag && (std::ranges::any_of(job.findings, may_be_advised) ||
                                     (!state.read.record.logs.empty() && !state.read.states.empty()));
    job.findings.insert(job.findings.end(), asked.findings.begin(), asked.findings.end());
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
    if (state.read.measured_on) point_at_record(job.findings, state.read.record, *state.read.shell);
    if (!in_drag) job.found = found_house(state.document, state.read);
}

Record without_ticks(Record record) {
    record.done.clear();
    return record;
}

/// What the model takes from the record, and from other states, is as it was.
bool measures_the_same(const ReadResult &before, const ReadResult &now) {
    return before.measured_on == now.measured_on && before.levelled_on == now.levelled_on &&
           before.shell == now.shell && without_ticks(before.record) == without_ticks(now.record);
}

/// What was worked out before is of the same shell: only what is said of it beside that is new.
bool is_worked_out(const StatePtr &before, const State &state, const Shell &shell, bool in_drag) {
    return before && !in_drag && before->stands() && !before->lacks_bores && !before->lacks_advice &&
           before->job.shell == shell && before->job.options.language == language() &&
           (!state.read.measured_on || measures_the_same(before->read, state.read));
}

std::shared_ptr<State> state_of(const SeenDocument &document, quint64 revision) {
    auto state = std::make_shared<State>();
    state->revision = revision;
    state->document = document;
    state->read = *(document.already ? document.already : read_as_seen(document));
    state->seen = state_seen(document, state->read);
    return state;
}

StatePtr worked_out_so(const SeenDocument &document, quint64 revision, ModelCache &cache, bool in_drag) {
    Stopwatch watch;
    auto state = state_of(document, revision);
    state->times.read = watch.lap();
    if (!state->read.shell) return state;
    MeasuredShell asked = as_asked(state->read);
    const StatePtr &before = document.before;
    if (is_worked_out(before, *state, asked.shell, in_drag)) {
        state->job = before->job;
        state->models = before->models;
        state->as_stated = before->as_stated;
    } else {
        work_out_shell(*state, cache, watch, std::move(asked), in_drag);
    }
    if (!(*state->job.record == state->read.record)) {
        state->job.record = std::make_shared<const Record>(state->read.record);
        state->job.composed = no_sheets(); // forms are of the record
    }
    add_decisions(*state);
    if (!in_drag) add_ticks(*state);
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
    whole->job.found = found_house(whole->document, whole->read);
    add_decisions(*whole);
    add_ticks(*whole);
    whole->lacks_advice = false;
    return whole;
}

constexpr std::chrono::milliseconds rest{120}; ///< longer than between the steps of a drag

} // namespace

StatePtr worked_out(const SeenDocument &document, quint64 revision, ModelCache &cache) {
    return worked_out_so(document, revision, cache, false);
}

StatePtr worked_out_in_drag(const SeenDocument &document, quint64 revision, ModelCache &cache) {
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

StatePtr failed_state(const SeenDocument &document, quint64 revision, const std::string &what) {
    auto state = std::make_shared<State>();
    state->revision = revision;
    state->document = document;
    state->failure = what;
    return state;
}

} // namespace

StatePtr worked_out_safely(const Worker &worker, const SeenDocument &document, quint64 revision,
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

void Workshop::ask_for(const SeenDocument &document, quint64 revision, bool in_drag) {
    {
        const std::lock_guard lock(mutex_);
        order_ = Order{document, revision, in_drag};
    }
    ordered_.notify_one();
}

void Workshop::want_order(bool wanted) {
    {
        const std::lock_guard lock(mutex_);
        wants_order_ = wanted;
        to_order_ = wanted ? last_ : nullptr;
    }
    ordered_.notify_one();
}

std::optional<Workshop::Task> Workshop::next() {
    std::unique_lock lock(mutex_);
    ordered_.wait(lock, [this] { return closing_ || order_ || to_order_; });
    if (closing_) return {};
    return Task{std::exchange(order_, std::nullopt), std::exchange(to_order_, nullptr)};
}

bool Workshop::is_asked_for_more(std::chrono::milliseconds within) {
    std::unique_lock lock(mutex_);
    return ordered_.wait_for(lock, within, [this] { return closing_ || order_; });
}

void Workshop::run() {
    while (const auto task = next())
        if (task->order)
            work_out(*task->order);
        else
            order_the_raise(*task->to_order, false);
}

void Workshop::work_out(const Order &order) {
    StatePtr state =
        worked_out_safely(order.in_drag ? in_drag_ : worker_, order.document, order.revision, cache_);
    emit worked(state);
    if (state->lacks_advice) state = advised(order, state);
    if (!state) return;
    bool wanted = false;
    {
        const std::lock_guard lock(mutex_);
        last_ = state;
        wanted = wants_order_;
    }
    if (wanted) order_the_raise(*state, order.in_drag);
    if (state->lacks_bores) carve_bores(order, state);
}

/// When the drag rests. Null where something else is asked for.
StatePtr Workshop::advised(const Order &order, const StatePtr &state) {
    if (is_asked_for_more(rest)) return nullptr;
    const Worker advise = [&](const SeenDocument &, quint64, ModelCache &) { return with_advice(state); };
    StatePtr whole = worked_out_safely(advise, order.document, order.revision, cache_);
    emit worked(whole);
    return whole;
}

/// Shown by a panel alone, so that nobody waits for it who sees something else.
void Workshop::order_the_raise(const State &state, bool in_drag) {
    if (!state.stands() || state.job.order->is_known()) return;
    if (is_asked_for_more(in_drag ? rest : std::chrono::milliseconds())) return;
    if (!what_it_throws(QStringLiteral("working the order of the raise out"),
                        [&] { (void)raising_order_of(state.job); }))
        emit ordered();
}

/// Not between the steps of a drag, and never in the way of what is asked for next.
void Workshop::carve_bores(const Order &order, const StatePtr &state) {
    if (is_asked_for_more(rest)) return;
    const Worker carve = [&](const SeenDocument &, quint64, ModelCache &cache) {
        return with_bores(state, cache, [this] { return is_asked_for_more({}); });
    };
    if (const StatePtr whole = worked_out_safely(carve, order.document, order.revision, cache_))
        emit worked(whole);
}

} // namespace roundlay::window
