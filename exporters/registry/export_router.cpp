#include "exporters/registry/exporters.h"
#include "exporters/registry/paper.h"
#include "exporters/router/program.h"
#include "exporters/sheets/pattern/templates.h"
#include "kernel/compare/cuts_to_make.h"

namespace roundlay {

namespace {

std::vector<RouterMark> marks_of(const sheets::PatternFace &face) {
    std::vector<RouterMark> marks;
    for (const sheets::Path &path : face.marks)
        for (std::size_t i = 0; i + 1 < path.points.size(); ++i)
            marks.push_back({path.points[i], path.points[i + 1]});
    return marks;
}

std::vector<RouterHole> holes_of(const sheets::PatternFace &face) {
    std::vector<RouterHole> holes;
    for (const sheets::Circle &hole : face.holes)
        holes.push_back({hole.centre, 2 * hole.radius});
    return holes;
}

std::vector<RouterShape> shapes_of(const std::vector<sheets::Pattern> &patterns) {
    std::vector<RouterShape> shapes;
    for (const sheets::Pattern &pattern : patterns)
        for (const sheets::PatternFace &face : pattern.faces)
            shapes.push_back({face.name, face.outline, marks_of(face), holes_of(face)});
    return shapes;
}

std::string in_one(const RouterProblems &problems, const Voice &voice) {
    std::string all;
    for (const Said &problem : problems)
        all += (all.empty() ? "" : "; ") + voice.words(problem);
    return all;
}

/// Who typed nothing in a dialog is told by which word of the command line each is stated.
std::string with_options(const std::vector<RouterProblem> &problems, const Voice &voice) {
    std::string all;
    for (const RouterProblem &each : problems)
        all += (all.empty() ? "" : "; ") + voice.words(each.what) + " (--" + std::string(each.option) + ")";
    return all;
}

ExportFailure refused(const RouterProblems &problems, const Voice &voice) {
    return {Trouble::refused, voice.say("no router program was made: %1", in_one(problems, voice))};
}

std::optional<ExportFailure> add_programs(const RouterJob &router, const ExportJob &job, OutputFolder &folder,
                                          Progress &progress) {
    const Voice voice = voice_of(job);
    for (std::size_t board = 0; board < router.boards.size(); ++board) {
        if (progress.cancelled()) return stopped();
        progress.at("router", static_cast<int>(board), static_cast<int>(router.boards.size()));
        if (auto failure = add_file(
                folder, "router/board-" + std::to_string(board + 1) + ".nc",
                program_text(router, board, called(job.shell), voice),
                voice.say("a board of templates for a router, millimetres; to be tried in the air first")))
            return failure;
    }
    if (auto failure = add_file(folder, "router/places.csv", to_csv(places_of(router)),
                                voice.say("which template lies where on which board")))
        return failure;
    return add_file(folder, "router/corners.csv", to_csv(corners_of(router)),
                    voice.say("inner corners that keep the tool's radius"));
}

} // namespace

std::optional<ExportFailure> export_router(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const sheets::Words words(job.shell.units, 16, job.options.language);
    const auto patterns = sheets::patterns_to_cut(job.layout, cuts_to_make(found_layout(job), job.layout),
                                                  words, only_pieces(job));
    const Voice voice = voice_of(job);
    if (patterns.empty())
        return ExportFailure{Trouble::nothing,
                             voice.say("no router program was made: this shell has no templates")};
    if (const auto problems = against(job.options.router); !problems.empty())
        return ExportFailure{Trouble::refused,
                             voice.say("no router program was made: %1", with_options(problems, voice))};
    const auto made = router_job(shapes_of(patterns), job.options.router);
    if (const auto *problems = std::get_if<RouterProblems>(&made)) return refused(*problems, voice);
    const auto &router = std::get<RouterJob>(made);
    if (auto failure = add_programs(router, job, folder, progress)) return failure;
    if (router.left_out.empty()) return {};
    return ExportFailure{Trouble::refused, in_one(router.left_out, voice)};
}

} // namespace roundlay
